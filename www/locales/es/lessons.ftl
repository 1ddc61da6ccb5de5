# La sala de lecciones: la lista, las palabras del oficio, una clase, escribir una lección, papel y proyector.

lessons-in = En Lecciones
lessons-list = Lecciones
lessons-words = Palabras
lessons-class = Una clase
lessons-write = Escribir una

## Las palabras del oficio con sus dibujos

words-back-to-lesson = Volver a la lección
words-back = Volver a donde estabas
words-says = Cada dibujo lo calcula esta página con una bola y un tiro de Harbour Street Lanes. Donde una palabra lleva debajo una línea de puntos, abre su significado, y desde ahí se llega aquí.
words-trade = Palabras del oficio
words-counting = Palabras de contar
words-here = { $shows } Aquí: { $number }.
words-on-lane = { $word }, en la pista desde arriba
words-on-ball = { $word }, sobre la bola
words-drawn = { $word }, en un dibujo
words-gutter = a la canaleta
words-enters = entra a { $angle }
words-comes = llega a la tabla { $board } y { $enters }
words-shot = { $letter }, { $name }, { $end }
words-shots = { $shots }.
words-shots-alike = { $shots }. Llegan casi con el mismo ángulo; lo que cambia es cuánto ha vuelto cada una hasta allí.
words-grit = grano { $grit }
words-polished = pulida
words-revs = { $revs } rpm
words-to-the-right = { $angle }° hacia la derecha
words-oiled = aceite hasta el largo de siempre
words-drier = una pista más seca
words-hole = el del dedo medio, de { $across } de ancho y { $deep } de fondo
words-hand-and-pins = { $hand } al salir de la mano, { $pins } en los pinos
words-slip = { $first } al principio, { $last } al final
words-pocket = tabla { $board } en los pinos
words-limits = { $within } dentro, { $outside } fuera
words-pours = { $pours ->
        [one] una colada
       *[other] { $pours } coladas
    }
words-cg = a { $far } del centro, hacia el pin
words-pin-to-pap = del pin al PAP { $far }
words-flare = { $wide } de ancho donde más se abre
words-bow-tie = { $wide } de ancho
words-board = se apoya en la tabla { $board }
words-breakpoint = tabla { $board }, a { $far }
words-span = hasta el dedo medio { $far }
words-pouring = Colando { $balls } bolas …
words-scrap = { $shows } { $shares } Relleno, rayado, blanco.
words-histogram = { $balls } bolas, de { $least } a { $most }
words-deviation = media { $mean }, desviación típica { $deviation }
words-percentile = 1 % por debajo de { $first }, 50 % por debajo de { $half }, 99 % por debajo de { $last }
words-interval = { $share } de { $balls } bolas
words-none = 0 %
words-all = 100 %
words-costs = { $shows } Aquí lo que más pesa es { $name }: { $first } por sí solo, { $total } junto con otros.
