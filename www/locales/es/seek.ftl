# La búsqueda de un núcleo para unos números deseados.

seek-title = Buscar un núcleo para números deseados
seek-says = Di qué debe tener la bola y qué puede cambiar. Varios núcleos distintos pueden hacer el mismo trabajo.
seek-wanted = Deseado
seek-wanted-of = Deseado: { $number }
seek-may-change = Puede cambiar
seek-as-it-is = como está
seek-bound-of = { $part }, { $what }:
seek-from = desde
seek-to = hasta
seek-times = veces lo que es
seek-nothing-free = Nada puede cambiar: marca algo.
seek-go = Buscar un núcleo
seek-seeking = Buscando
seek-stale = Lo deseado ha cambiado desde entonces. Busca otra vez para ver qué efecto tiene.
seek-tried = Se han probado { $tried } de { $starts } puntos de partida.
seek-keep-looking = Seguir buscando
seek-so-far = { $cores ->
        [0] Ningún núcleo hasta ahora, de { $tried } puntos de partida.
        [one] Un núcleo hasta ahora, de { $tried } puntos de partida.
       *[other] { $cores } núcleos distintos hasta ahora, de { $tried } puntos de partida.
    }
seek-limits = Cumplir los límites publicados
seek-starts = Puntos de partida
seek-back = Como está la bola
seek-found = Lo que se encontró
seek-core = Núcleo { $n }
seek-nearest = El más cercano
seek-to-bench = Al banco
seek-to-bench-of = Al banco: { $core }
seek-cut = Cortado a lo largo del pin, todo a la misma escala.
seek-met-one = { $met ->
        [one] { $met } de { $tried ->
            [one] { $tried } punto de partida
           *[other] { $tried } puntos de partida
        } lo cumple.
       *[other] { $met } de { $tried ->
            [one] { $tried } punto de partida
           *[other] { $tried } puntos de partida
        } lo cumplen, todos con el mismo núcleo.
    }
seek-met-many = { $met } de { $tried ->
        [one] { $tried } punto de partida
       *[other] { $tried } puntos de partida
    } lo cumplen, con { $cores } núcleos distintos.
seek-met-none = Ninguno de { $tried ->
        [one] { $tried } punto de partida
       *[other] { $tried } puntos de partida
    } lo cumple. El núcleo más cercano y lo que lo impide:
seek-no-ball = Ninguno de { $tried ->
        [one] { $tried } punto de partida
       *[other] { $tried } puntos de partida
    } lleva a una bola que se pueda fabricar.
seek-numbers = Los núcleos en números
seek-number = Número
seek-at-least = al menos { $number }
