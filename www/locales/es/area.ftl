# Margen de error: el tiro lanzado una y otra vez, y adónde llegan los lanzamientos.

area-name = Margen de error
area-stopped = Detenido.
area-again = Lanzar otra vez
area-throwing = Lanzándolo una y otra vez…
area-stop = Detener
area-table = Por dónde entran los lanzamientos, de cada 100: el <pocket>bolsillo</pocket> y a su lado
area-comes-in = Entra
area-of-map = Del mapa
area-of-hand = De una mano firme
area-pocket = Bolsillo
area-pocket-says = tablas 17 a 18,5 con 4° a 6°
area-shallow = Demasiado plano
area-shallow-says = esas tablas, menos de 4°
area-steep = Demasiado inclinado
area-steep-says = esas tablas, más de 6°
area-light = Se queda corto
area-light-says = por debajo de la tabla 17
area-high = Se pasa
area-high-says = por encima de la tabla 18,5
area-lost = Canaleta
area-lost-says = no llega a los pinos
area-on-boards = La tabla
area-on-boards-says = 17 a 18,5, con cualquier ángulo
area-at-angles = El ángulo
area-at-angles-says = 4° a 6°, por cualquier tabla
# El tramo que sirve mientras lo otro queda igual.
area-board-room =
    { $room ->
        [reaches] Tabla en la línea de falta: llega al bolsillo desde la { $from } hasta la { $to }.
        [reaches-further] Tabla en la línea de falta: llega al bolsillo desde la { $from } hasta la { $to }, y más allá de donde acaba el mapa.
        [would-reach] Tabla en la línea de falta: llegaría al bolsillo desde la { $from } hasta la { $to }.
        [would-reach-further] Tabla en la línea de falta: llegaría al bolsillo desde la { $from } hasta la { $to }, y más allá de donde acaba el mapa.
       *[none] Tabla en la línea de falta: ninguna cercana llega al bolsillo mientras el ángulo queda igual.
    }
area-angle-room =
    { $room ->
        [reaches] Ángulo de salida: llega al bolsillo de { $from } a { $to }.
        [reaches-further] Ángulo de salida: llega al bolsillo de { $from } a { $to }, y más allá de donde acaba el mapa.
        [would-reach] Ángulo de salida: llegaría al bolsillo de { $from } a { $to }.
        [would-reach-further] Ángulo de salida: llegaría al bolsillo de { $from } a { $to }, y más allá de donde acaba el mapa.
       *[none] Ángulo de salida: ninguno cercano llega al bolsillo mientras la tabla queda igual.
    }
area-how = { $throws } lanzamientos. El mapa: tablas { $from-board } a { $to-board } por ángulos de salida de { $from-angle } a { $to-angle }, repartidos por igual. Una mano firme: tabla, ángulo, velocidad y revoluciones varían a la vez con desviaciones típicas de { $boards }, { $angle }, { $speed } y { $revs } (elección del modelo). La ventana: { $window }.
area-map = Mapa de lanzamientos alrededor de este
area-map-board = tabla { $board }
area-map-boards = tabla en la línea de falta
area-map-says = Cada punto es un lanzamiento desde esa tabla con ese ángulo de salida (hacia arriba, más a la derecha); la cruz es este tiro.
