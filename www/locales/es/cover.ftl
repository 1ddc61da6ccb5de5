# La cubierta: cuánto mide de grosor y qué significa eso.

cover-measuring = Midiendo la cubierta…
cover-in-practice-note = * Práctica habitual, sin fuente. Los números se calculan con esta bola.
cover-map = Mapa de la cubierta de { $ball }
cover-here = Aquí, { $place }: { $thickness }.
cover-click-finger = Toca la bola para leer el grosor en ese punto.
cover-click = Haz clic en la bola para leer el grosor en ese punto.
cover-cut = Cortar por el lugar más delgado
cover-along-radius = <coverstock>Grosor de la cubierta</coverstock> a lo largo del radio
cover-thinnest-mark = lo más delgado, { $thickness }
cover-at-pin = en el pin
cover-opposite-pin = en el punto opuesto al pin
cover-at-plus-x = en +x
cover-at-minus-x = en −x
cover-at-plus-y = en +y
cover-at-minus-y = en −y
cover-at-angles = a { $down }° del pin y girando { $round }° desde el +x de la bola
cover-all-round = todo alrededor, a { $down }° del pin
cover-hole-here = un agujero
cover-to-centre = cubierta hasta el centro

## Colores del mapa

cover-by-colour = Grosor de la cubierta según el color
cover-hole = agujero
cover-under = menos de { $limit } { $unit }
cover-or-more = { $limit } { $unit } o más
cover-range = de { $from } a { $to } { $unit }

## Lo que se calcula

cover-no-piece = En esta bola no hay ninguna pieza: toda ella es cubierta.
cover-none-there = La pieza «{ $piece }» llega a la superficie { $place }: ahí no hay cubierta.
cover-thinnest = En su lugar más delgado la cubierta mide { $thickness }, sobre la pieza «{ $piece }», { $place }.
cover-thinnest-error = En su lugar más delgado la cubierta mide { $thickness } (a lo sumo { $error } menos), sobre la pieza «{ $piece }», { $place }.
cover-thin-all-over = En su lugar más delgado la cubierta mide { $thickness }, sobre la pieza «{ $piece }», y es igual de delgada en todas partes.
cover-thin-all-over-error = En su lugar más delgado la cubierta mide { $thickness } (a lo sumo { $error } menos), sobre la pieza «{ $piece }», y es igual de delgada en todas partes.
cover-mean-all-thin = En promedio mide { $mean }; toda la superficie tiene menos de { $least }.
cover-mean = En promedio mide { $mean }; { $under ->
        [all] toda la superficie
        [none] ninguna parte de la superficie
       *[some] el { $under-share } de la superficie
    } tiene menos de { $least }, y { $over ->
        [all] toda ella
        [none] ninguna parte de ella
       *[some] el { $over-share } de ella
    } menos de { $most }.
cover-pieces = Las piezas que hay debajo llenan el { $share } de la bola. La pieza de debajo, «{ $piece }», es de { $density }; la cubierta, de { $cover }.

## Junto a los agujeros

cover-drilled-to-core = { $hole }: la broca sale de la cubierta a { $depth } de profundidad.
cover-all-round-hole = { $hole }: cubierta todo alrededor.
cover-opens-into-core = { $hole }: su pared se abre al núcleo.
cover-to-core = { $hole }: { $thickness } de cubierta entre este agujero y el núcleo.
cover-holes-meet = { $one } y { $other } se encuentran dentro de la bola.
cover-between-holes = Entre { $one } y { $other }: { $least } como mínimo, a { $depth } bajo la superficie.

## Práctica habitual

cover-thinner = Es más delgada que las de { $least } a { $most } de las bolas corrientes. Una cubierta delgada sobre un núcleo grande tiende a despegarse y a agrietarse con los años.*
cover-usual = Está dentro de los { $least } a { $most } de las bolas corrientes. Una cubierta delgada sobre un núcleo exterior grande tiende a despegarse y a agrietarse con los años, así que el extremo delgado de ese margen dura menos.*
cover-usual-in-part = Está dentro de los { $least } a { $most } de las bolas corrientes, y solo cerca de la pieza «{ $piece }»: la mayor parte de la bola tiene más, y eso dura más.*
cover-core = núcleo
cover-thicker = Es más que los { $least } a { $most } de las bolas corrientes, como es habitual donde un núcleo va en la cubierta sin núcleo exterior entre ambos: una cubierta más gruesa dura más.*
cover-no-core = No hay núcleo del que la cubierta pueda despegarse.*
