# Qué hay en la pista: aceite, o fricción por distancia; la fricción; el aceite según pasan los juegos.

## El desplegable y lo que se elige en él

oil-none = Aceite
oil-summary = Aceite: { $name }, { $length }, { $volume }
oil-summary-ratio = Aceite: { $name }, { $length }, { $volume }, { $ratio }:1
oil-zones-summary = Pista: fricción { $zones }
oil-zone-until = { $friction } hasta { $end }
oil-zone-then = luego { $friction }
oil-choose = <pattern>Patrón</pattern>
oil-by-distance = Fricción por distancia
oil-by-distance-says = La fricción dada así es la de esta bola en esta pista: la cubierta y el acabado de la bola no la cambian. Con un patrón de aceite sí.
oil-length = <pattern>Largo</pattern>
oil-volume = <pattern>Volumen</pattern>
oil-ratio = <ratio>Afuera : adentro</ratio>
oil-thickest = Mayor <film>película</film>
oil-no-number = ninguno
oil-drawn = Dibujado a mano, celda por celda. Para volver a un patrón en números, deshaz o elige uno arriba.
oil-name = Nombre
oil-save = Guardar el aceite
oil-open = Abrir aceite…
oil-open-label = Aceite que abrir
# El nombre de lo que se hizo a partir de un patrón con este nombre.
oil-changed = { $name }, cambiado

## Fricción por distancia

oil-zones = <friction>Fricción</friction> por distancia
oil-zone-end =
    { $zone ->
        [oil] Largo del aceite
        [full] Fin del aceite pleno
        [thin] Fin del aceite fino
       *[other] Fin de la zona { $number }
    }
oil-zone-friction =
    { $zone ->
        [oil] <friction>Fricción</friction> en aceite
        [full] <friction>Fricción</friction> en aceite
        [thin] <friction>Fricción</friction> en aceite fino
        [beyond] <friction>Fricción</friction> más allá
       *[other] <friction>Fricción</friction> en la zona { $number }
    }

## La película a lo ancho de la pista

oil-across = A lo ancho de la pista a { $distance }
oil-across-distance = <pattern>Distancia</pattern>
oil-across-title = La película a lo ancho de la pista
oil-across-says = La película en cada tabla a { $distance }: de { $least } a { $most }. La tabla 1 está a la derecha. Lo mismo está en la tabla de números.
oil-across-ends = Película a lo ancho, a { $distance }: de { $least } a { $most }
oil-across-tables = Lo mismo en tablas
oil-across-table = Película a { $distance }
oil-across-board = Tabla desde la derecha
oil-across-film = <film>Película</film>, { $unit }
oil-down-table = A lo largo de la pista, media de todas las tablas
oil-down-to = Hasta, { $unit }

## El dibujo, y dibujar sobre él

oil-map = El aceite desde arriba
oil-map-says = { $name }: el aceite por tablas, contadas desde el borde derecho de la pista, y por distancia, { $length } de largo y { $thickest } donde es más grueso. La línea de trazos es el recorrido de la bola. Lo mismo está en las tablas de números.
oil-map-hint = Líneas y tinte: película de 0,1, 0,5, 1, 2, 4, 8 µm y así. Las tablas, desde el borde derecho de la pista, sea cual sea la mano. A trazos: el recorrido de la bola.
oil-draw = Dibujar sobre el aceite
oil-look-only = Solo mirar
oil-pencil-more = Lápiz: más aceite
oil-pencil-less = Lápiz: menos aceite
oil-boards-wide = Tablas de ancho
oil-feet-long = De largo
oil-each-time = Cada vez
oil-both-sides = Lo mismo en los dos lados
oil-part = Una parte, en números
oil-part-from-board = <board>Desde la tabla</board>
oil-part-to-board = <board>Hasta la tabla</board>
oil-part-from = <pattern>Desde</pattern>
oil-part-to = <pattern>Hasta</pattern>
oil-part-film = <film>Película</film>
oil-part-set = Poner ese valor
oil-part-add = Sumarlo
oil-part-take = Restarlo

## El patrón en números

oil-pattern = El <pattern>patrón</pattern> en números
oil-pattern-length = Largo
oil-pattern-volume = Volumen
oil-pattern-ratio = <ratio>Adentro : afuera</ratio>
oil-pattern-thin = Fino hasta la tabla
oil-pattern-full = Pleno desde la tabla
oil-pattern-front = Pleno hasta
oil-pattern-end = <taper>Queda al final</taper>
oil-pattern-buff = Cepillado a lo largo de
oil-pattern-says = Tablas desde cada borde: fino hasta la primera, luego cada vez más, pleno desde la segunda hasta el medio. A lo largo de la pista: pleno al principio, luego cada vez menos hasta lo que queda, y cepillado hasta nada. Esa forma es una elección del modelo.

## De la película a la fricción

oil-friction = Fricción: { $oil } en aceite grueso, { $dry } en seco
oil-friction-table = Lo mismo en una tabla
oil-plain-cover = <friction>Fricción</friction> de una cubierta corriente
oil-mu-oil = En aceite grueso
oil-mu-oil-source = El valor que se suele citar de la literatura de física (C. Frohlich, American Journal of Physics 72, 1170, 2004); de memoria, sin comprobar.
oil-mu-dry = En tablas secas
oil-mu-dry-source = El valor que se suele citar de la literatura de física (C. Frohlich, American Journal of Physics 72, 1170, 2004); de memoria, sin comprobar. El límite publicado para una bola es 0,32.
oil-film-half = Película intermedia
oil-film-half-source = La película con la que la fricción queda a medio camino entre las dos; una elección del modelo, no hay cifra publicada.
oil-with-cover = { $value } con esta cubierta; <source>de dónde viene</source>
oil-with-cover-choice = { $value } con esta cubierta; <source>elección del modelo</source>
oil-form = Cómo se hace la curva
oil-form-says = La forma es la de la lubricación mixta: cuanto más fina es la película al lado de la rugosidad, más parte de la carga roza en seco (A. V. Olver y H. A. Spikes, Proc. Inst. Mech. Eng. J 212, 321, 1998; de memoria). Que valga para una bola en una pista, y los factores de familia y acabado, son elecciones del modelo; que una superficie más áspera agarra más es práctica común, sin fuente.
oil-usual = Las cifras habituales
oil-curve = Fricción por película
oil-met = Este tiro encuentra películas de { $most } a { $least }.
oil-curve-says =
    { $met ->
        [yes] Con esta cubierta, de { $dry } en seco a { $oil } en aceite grueso; con una corriente, de { $plain-dry } en seco a { $plain-oil } en aceite grueso. { oil-met }
       *[no] Con esta cubierta, de { $dry } en seco a { $oil } en aceite grueso; con una corriente, de { $plain-dry } en seco a { $plain-oil } en aceite grueso.
    }
oil-curve-hint =
    { $met ->
        [yes] Línea continua: esta cubierta. A trazos: una corriente. Marcas bajo la línea: películas que encuentra este tiro. { oil-met }
       *[no] Línea continua: esta cubierta. A trazos: una corriente. Marcas bajo la línea: películas que encuentra este tiro.
    }
oil-curve-table = <friction>Fricción</friction> por <film>película</film>
oil-curve-film = Película, { $unit }
oil-curve-own = Esta cubierta
oil-curve-plain = Una corriente

## Según pasan los juegos

# Cuántos juegos se siguen; otros más si la pista ya está gastada.
oil-games-of =
    { $further ->
        [yes] { $games ->
            [one] { $games } juego más
           *[other] { $games } juegos más
        }
       *[no] { $games ->
            [one] { $games } juego
           *[other] { $games } juegos
        }
    }
oil-wear = Según pasan los juegos: { oil-games-of }
oil-games = <pattern>Juegos</pattern>
oil-wear-following = Siguiendo { oil-games-of }…
oil-wear-after = Tras { oil-games-of }
oil-wear-gutter = { oil-wear-after } el mismo tiro cae en la canaleta.
oil-wear-apart = { oil-wear-after } el mismo tiro no se puede comparar: uno de los dos no llega a los pinos.
oil-wear-arrives =
    { $where ->
        [left] { oil-wear-after } el mismo tiro llega { $boards } tablas más a la izquierda, por la tabla { $board }
        [right] { oil-wear-after } el mismo tiro llega { $boards } tablas más a la derecha, por la tabla { $board }
       *[same] { oil-wear-after } el mismo tiro llega por la misma tabla
    }{ $turn ->
        [changed] , a { $angle } en lugar de { $angle-before }.
       *[same] , con el mismo ángulo.
    }{ $breakpoint ->
        [further] {" "}Su punto de quiebre está { $distance } más lejos.
        [sooner] {" "}Su punto de quiebre está { $distance } más cerca.
       *[same] {""}
    }
oil-wear-begun =
    { $further ->
        [yes] { $before ->
            [one] La pista como está, gastada por { $before } juego
           *[other] La pista como está, gastada por { $before } juegos
        }
       *[no] La pista como está
    }
oil-wear-key = A trazos: el tiro en la pista como está. Línea continua: el mismo tiro tras los juegos.
oil-wear-where = De { $all }, { $left } siguen en la pista y { $taken } se fueron con las bolas; { $moved } fueron recogidos y dejados de nuevo más adelante.
oil-wear-table = Juego por juego, en una tabla
oil-wear-model = Una elección del modelo: ninguna cifra publicada dice cuánto aceite recoge y lleva una bola. Aquí una bola recoge el { $share } % de la película en una banda de una tabla de ancho, y en { $carried } dejaría todo menos un tercio de lo que lleva; un juego son { $shots } primeras bolas, cada una hasta { $spread } tablas fuera de su línea. No se crea ni se pierde aceite.
oil-wear-use = Usar la pista gastada
oil-wear-caption = { $title }: { $volume }, { $length } de largo
oil-wear-picture = El aceite por tablas y por distancia, { $thickest } donde es más grueso, y el recorrido de la bola.
oil-games-table = La pista y el tiro tras cada juego
oil-game = Juego
oil-game-begun = como está
oil-game-left = <pattern>En la pista</pattern>, { $unit }
oil-game-gone = <film>Se fue</film>, { $unit }
oil-game-moved = <film>Se movió</film>, { $unit }
oil-game-board = <board>Tabla</board>
oil-game-angle = <angle>Ángulo</angle>, °

# El nombre y la nota de lo que el juego hizo de un patrón con este nombre.
oil-worn =
    { $games ->
        [one] { $name } tras { $games } juego
       *[other] { $name } tras { $games } juegos
    }
oil-worn-note = Gastado por un modelo, no medido.
