# Bolas coladas con pequeñas desviaciones: tolerancias, cuántas pasan, cómo se dispersa cada número, qué sale más caro.

scatter-title = Coladas con pequeñas desviaciones: cuántas pasan
scatter-says = Ninguna pieza sale exactamente como se dibujó. Di cuánto puede desviarse cada una: se cuelan miles de bolas dentro de eso y se calculan los números de todas.
scatter-back = Las habituales
scatter-go = Colar { $balls } bolas
scatter-pouring = Colando { $balls } bolas
scatter-stale = La bola o sus tolerancias han cambiado desde entonces. Cuela otra vez para ver qué efecto tiene.
scatter-balls = Bolas
scatter-seed = Semilla
scatter-seed-says = La misma semilla cuela las mismas bolas, aquí y en la línea de órdenes.
scatter-stray = Cómo se desvían
scatter-stray-even = por igual en todo el margen
scatter-stray-bell = casi siempre cerca: el margen son tres desviaciones típicas

## Cuánto puede desviarse cada parte

stray-cover-density = Densidad de la cubierta, ±
stray-diameter = Diámetro de la bola, ±
stray-density = Densidad, ±
stray-size = Tamaño, ±
stray-tilt = Inclinación, ±
stray-core-x = Núcleo entero hacia el lado x, ±
stray-core-y = Núcleo entero hacia el lado y, ±
stray-core-z = Núcleo entero hacia el pin z, ±
stray-place-x = Lugar hacia el lado x, ±
stray-place-y = Lugar hacia el lado y, ±
stray-place-z = Lugar hacia el pin z, ±
stray-ball-and-cover = Bola y cubierta: { $says }
stray-every-piece = Cada pieza: { $says }
stray-piece = { $piece }: { $says }
stray-as-every = como cada pieza
stray-own = Tolerancias propias
stray-strangers = Hay tolerancias para { $pieces }, y esta bola no tiene una pieza única con ese nombre.
stray-drop = Quitarlas
# El nombre y la nota del archivo de las habituales.
stray-usual = habituales
stray-usual-note = Elección del modelo, sin fuente: cada fabricante tiene sus propias tolerancias.
stray-exact = exacto
stray-says-density = densidad ±{ $by }
stray-says-size = tamaño ±{ $by }
stray-says-tilt = inclinación ±{ $by }
stray-says-diameter = diámetro ±{ $by }
stray-says-place = lugar ±{ $by }
stray-says-place-most = lugar ±{ $by } como máximo

## Lo que se vende como bueno

accept-title = Lo que se vende como bola buena
accept-says = Una bola dentro de los límites publicados pero fuera de uno de estos se vende como de segunda. Los límites publicados cuentan en todo caso.
accept-at-least = <number>{ $number }</number>, como mínimo
accept-at-most = <number>{ $number }</number>, como máximo
accept-pin-to-cg = Distancia del pin al CG
accept-rg = RG: diferencia máxima con la receta
accept-differential = Diferencial: diferencia máxima
accept-intermediate = Diferencial intermedio: diferencia máxima
accept-low-rg-mark = Eje de RG bajo: distancia máxima al pin
accept-high-rg-mark = Eje de RG alto: distancia máxima a su marca

## Cuántas pasan

shares-title = Cuántas pasan
shares-table = Buenas, de segunda y desecho
shares-share = { $share } ({ $low } a { $high }%)
shares-say = De { $balls } bolas: pasan { $passed }; se venderían como de segunda: { $seconds }; son desecho: { $scrap }.
shares-none = ninguna
shares-caption = Semilla { $seed }; entre paréntesis, arriba, el <interval/>
shares-becomes = En qué quedan
shares-balls = Bolas
shares-of-samples = <interval>95 % de las muestras</interval>, %
shares-passed = buenas
shares-seconds = de segunda
shares-scrap = desecho
shares-become-seconds = { $balls } quedan como de segunda: { $reason }.
shares-become-scrap = { $balls } quedan como desecho: { $reason }.

## Cómo se dispersa cada número

spread-title = Cómo se dispersa cada número
spread-table = Todos los números
spread-number = Número
spread-recipe = Receta
spread-mean = Media
spread-deviation = Desviación típica
spread-below-1 = 1 % por debajo
spread-below-50 = 50 % por debajo
spread-below-99 = 99 % por debajo
spread-good-from = Buena desde
spread-to = hasta
spread-from-to = de { $low } a { $high }
spread-from-up = desde { $low }
spread-up-to = hasta { $high }
spread-histogram = Histograma: { $number }
spread-no-ball = Ninguna bola tiene este número.
spread-alike = Todas las bolas son iguales: { $low }.
spread-nearly-alike = 98 de 100 bolas son iguales: { $low }.
spread-half-alike = La mitad de las bolas son iguales, { $low }, 98 de 100 entre { $lowest } y { $highest }.
spread-half = La mitad de las bolas está entre { $low } y { $high }, 98 de 100 entre { $lowest } y { $highest }.
spread-sold = Se vende como buena { $range }.
spread-published = Límite publicado: { $range }.
spread-bars = Las barras en una tabla
spread-bars-caption = Cuántas bolas hay en cada lugar: el <histogram/> en números
spread-bar-from = Desde
spread-bar-to = Hasta
spread-bar-balls = Bolas

## Qué tolerancia sale más cara

costs-title = Qué tolerancia sale más cara
costs-measured-by = Medida por
costs-passing = que una bola pase
costs-weight = el peso
costs-low-rg = el RG bajo
costs-differential = el diferencial
costs-intermediate = el diferencial intermedio
costs-top-weight = el peso superior
costs-say = La mayor parte de lo que decide { $number } viene de { $first } ({ $share } con todo lo que hace junto con otras).
costs-say-two = La mayor parte de lo que decide { $number } viene de { $first } ({ $share } con todo lo que hace junto con otras), y después de { $second } ({ $next }).
costs-table = Todas las tolerancias, la más cara primero
costs-caption = Qué parte de la dispersión causa cada tolerancia <first>por sí sola</first>, y <total>con otras</total>
costs-tolerance = Tolerancia
costs-within = Margen ±
costs-by-itself = <first>Por sí sola</first>, %
costs-with-others = <total>Con otras</total>, %
costs-give-or-take = más o menos
costs-only-dearest = Solo las { $shown } más caras
costs-all = Ver las { $all }
costs-note = La barra oscura es por sí sola, la de contorno con otras. Calculado en { $points } puntos; las partes pequeñas pueden resultar un poco menores que 0.
costs-nothing = Aquí no varía nada: todas las bolas salen iguales.

## Al lado de otra bola

beside-label = Al lado de otra bola
beside-title = Al lado de otra bola con las mismas tolerancias
beside-beside = Al lado de
beside-pieces = { $count ->
        [one] una pieza
       *[other] { $count } piezas
    }
beside-ball = { $ball } ({ $pieces })
beside-go = Colar las dos
beside-pouring = Colando las dos
beside-share = { $share } de { $ball } ({ $pieces })
beside-both = Con las mismas tolerancias pasan { $a } y { $b }.
beside-better = { $ball } es la más robusta: falla el { $few }%, frente al { $many }%.
beside-close = La diferencia es demasiado pequeña para decir cuál es la más robusta.
beside-fewer = Menos cosas pueden desviarse: { $few } tolerancias, frente a { $many }.
beside-table = Las dos bolas
beside-same = Con las mismas tolerancias
beside-of-pieces = <pieces>piezas</pieces>
beside-can-stray = <tolerances>tolerancias</tolerances> que pueden desviarse
beside-spread = { $number }, <deviation>desviación típica</deviation>
beside-note = Las dos con las tolerancias de cada pieza; las de piezas sueltas no cuentan. El peso y el peso superior pueden alejarse de la receta de cada bola tanto como de la de esta.
