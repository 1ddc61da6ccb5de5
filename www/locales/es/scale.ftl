# La Balanza: los números de la bola.

scale-weight = <weight>Peso</weight>
scale-rg = <rg>RG</rg> sobre el eje más fácil
scale-how-hard = Cuánto cuesta hacer girar la bola.
scale-called = Se suele llamar { $band }.
scale-limits-from = Los límites publicados son para bolas de { $weight } o más.
scale-middle = Medio<aloud> (eje)</aloud>
scale-hardest = Más difícil<aloud> (eje)</aloud>
scale-differential = <differential>Diferencial</differential>, margen para el <flare>abanico</flare>
scale-intermediate = <intermediate>Diferencial intermedio</intermediate>
scale-asymmetric = Asimétrica: más del { $percent } % del diferencial.*
scale-symmetric = Simétrica: no más del { $percent } % del diferencial.*
scale-cg = <cg>CG</cg>, distancia al centro
scale-cg-centre = Está en el centro de la bola.
scale-cg-to-pin = Está justo en dirección al pin.
scale-cg-from-pin = Está justo en dirección contraria al pin.
scale-cg-towards = Está hacia el pin y hacia un lado.
scale-cg-away = Está hacia el lado opuesto al pin y hacia un costado.
scale-cg-aside = Está hacia un lado.
scale-top-weight = <top-weight>Peso superior</top-weight>
scale-top-weight-before = <top-weight>Peso superior</top-weight> antes del taladrado
scale-top-weight-usual = Hacia el pin. Las bolas sin taladrar suelen tener de { $low } a { $high }.*
scale-what-it-does = Qué hacen estos números en un tiro
scale-does-rg = Con el mismo lanzamiento, un RG más bajo toma vueltas y rueda antes, y cuando ya rueda acaba con un ángulo algo menor: tiene menos giro guardado. Un RG más alto guarda su movimiento para después. En el oficio se dice a menudo lo contrario.
scale-does-differential = El diferencial deja que el eje de giro se pasee por la bola, de modo que la huella pasa a cubierta limpia. Si eso por sí solo cambia el gancho es algo que se discute en lo publicado.
scale-does-studies = Los estudios publicados ponen primero la superficie y la fricción, luego el RG y el diferencial, y muy por detrás el centro de gravedad.
scale-does-top-weight = El peso superior no tiene una convención única. Aquí es lo que hay que poner en el polo opuesto al pin para equilibrar la bola sin taladrar sobre su centro, con su radio como brazo. Una vez taladrada cuenta en su lugar el equilibrio estático sobre el agarre: con más de { $weight }, una bola puede tener { $limit } hacia cada lado, según lo publicado.
scale-does-no-limit = No se encontró ningún límite publicado para el diferencial intermedio por sí solo.
scale-common-practice = * Práctica habitual, sin fuente; también las palabras bajo, medio y alto. La parte gruesa de una línea es lo que permiten los límites publicados.
scale-limits = Límites: United States Bowling Congress, según publica en sus avisos; decide la edición vigente de las reglas. Pithball enseña; no certifica bolas.
scale-bound-least = La cota que da el propio programa para el error de masa e inercia: menos de una parte en un billón.
scale-bound = La cota que da el propio programa para el error de masa e inercia: cerca de una parte en { $size ->
        [thousand-million] { $parts } mil millones
        [million] { $parts } millones
       *[ones] { $parts }
    }.

## Límites sobrepasados

scale-within = Dentro del límite publicado de { $limit }.
scale-within-range = Dentro de lo publicado, de { $low } a { $high }.
scale-below = Por debajo del límite publicado de { $limit }.
scale-below-range = Por debajo de lo publicado, de { $low } a { $high }.
scale-over = Por encima del límite publicado de { $limit }.
scale-over-range = Por encima de lo publicado, de { $low } a { $high }.
scale-just-below = Por debajo del límite publicado de { $limit }, por menos que la última cifra que se ve.
scale-just-below-range = Por debajo de lo publicado, de { $low } a { $high }, por menos que la última cifra que se ve.
scale-just-over = Por encima del límite publicado de { $limit }, por menos que la última cifra que se ve.
scale-just-over-range = Por encima de lo publicado, de { $low } a { $high }, por menos que la última cifra que se ve.

## Límites publicados

scale-published = Límites publicados
scale-published-counts = { $within } dentro, { $outside } fuera, { $measured } que solo dice una medición.
scale-published-counts-close = { $within } dentro, { $outside } fuera, { $close } demasiado cerca para decirlo, { $measured } que solo dice una medición.
scale-limits-kept = Dentro de todos los límites publicados que se pueden calcular.
scale-limits-passed = Fuera de los límites publicados: { $rules }.
scale-limits-close = Demasiado cerca de un límite publicado para decirlo: { $rules }.
scale-every-rule = Todas las reglas
scale-rule-within = dentro
scale-rule-outside = fuera
scale-rule-close = demasiado cerca para decirlo
scale-rule-not-for = no es para esta bola
scale-rule-not-computed = aquí no se puede calcular
scale-rule-for = Para { $balls }.
scale-rule-source = { $source }; { $edition }.
scale-rule-range = de { $least } a { $most }
scale-rule-least = { $least } o más
scale-rule-most = { $most } o menos
scale-rule-allowed = permitido: { $allowed }
scale-rule-found = { $found }; permitido: { $allowed }

## De dónde viene el RG

scale-shares = De dónde viene el <rg>RG</rg>
scale-shares-table = Peso, volumen y parte del RG de cada parte
scale-part = Parte
scale-shares-weight = Peso
scale-shares-volume = Volumen
scale-shares-rg = Parte del RG
scale-shares-how = Cada parte cuenta por su peso y por el cuadrado de su distancia al centro, tomados juntos los tres ejes.
scale-shares-one = Aquí hay una sola parte, así que todo el RG viene de ella.
scale-shares-further = Aquí la mayor aportación es la de «{ $part }»: el { $rg } del RG con el { $weight } del peso, porque está más afuera que el resto.
scale-shares-closer = Aquí la mayor aportación es la de «{ $part }»: el { $rg } del RG con el { $weight } del peso; está más adentro que el resto y aporta tanto porque pesa mucho.
scale-shares-even = Aquí la mayor aportación es la de «{ $part }»: el { $rg } del RG, lo mismo que tiene del peso.

## Qué cambian los agujeros

scale-holes-change = Qué cambian los agujeros
scale-holes-table = La bola antes y después del taladrado
scale-before = Antes
scale-after = Después
scale-low-rg = RG más bajo
scale-middle-rg = RG medio
scale-high-rg = RG más alto
scale-holes-weight = Peso
scale-holes-differential = Diferencial
scale-holes-intermediate = Intermedio
scale-drilled-out = Aquí la broca saca { $out }; lo habitual es cerca de { $usual } (práctica habitual, sin fuente), y se dice que RG y diferencial cambian alrededor de un 5 %.
scale-balance = <balance>Equilibrio estático</balance> sobre el agarre
scale-balance-allowed = <balance>Equilibrio estático</balance> sobre el agarre, se permite { $limit } hacia cada lado
scale-side = Lado
scale-side-weight = Peso
scale-verdict = Veredicto
scale-top = Arriba
scale-bottom = Abajo
scale-finger = Dedos
scale-thumb = Pulgar
scale-positive-side = Lado positivo
scale-negative-side = Lado negativo
scale-no-limit = sin límite para esta bola
scale-balance-source = { $source }; { $edition }. El brazo de la balanza es el radio de la bola.
scale-low-axis-moved = El eje de RG bajo se movió { $angle }, { $distance } sobre la superficie.
scale-high-axis-moved = El eje de RG alto se movió { $angle }, { $distance } sobre la superficie.
scale-low-axis-none = La bola taladrada no tiene un único eje de RG bajo.
scale-high-axis-none = La bola taladrada no tiene un único eje de RG alto.
scale-low-axis-new = Antes, la bola no tenía un único eje de RG bajo; ahora sale a { $pin } del pin y a { $pap } del PAP.
scale-high-axis-new = Antes, la bola no tenía un único eje de RG alto; ahora sale a { $pin } del pin y a { $pap } del PAP.

## ¿Durará la cubierta?

scale-cover-last = ¿Durará la cubierta?
scale-cover-thinnest = Lugar más delgado
scale-cover-no-core = sin núcleo
scale-cover-mean = Promedio
scale-cover-under = Superficie con menos de { $limit }
scale-cover-pieces = Parte de la bola que ocupan las piezas
scale-cover-numbers = La cubierta en números
scale-cover-not-told = Lo que ningún dibujo dice: lo bien que la <coverstock>cubierta</coverstock> se agarra al núcleo, el calor y el desgaste. La Sierra muestra el grosor en todas partes, en Cubierta.

## Con otros pesos

scale-line = Esta bola con otros pesos
scale-line-makers = Los fabricantes aligeran o cargan una pieza, o dos en proporción, y dejan el resto.
scale-line-undrilled = Todos los pesos de aquí son antes del taladrado.
scale-line-changes = Qué cambia
scale-line-together = Junto con
scale-line-nothing-else = nada más
scale-line-in-proportion = { $part }, en proporción
scale-line-how = Cómo
scale-line-by-density = por su densidad
scale-line-by-size = por su tamaño
scale-line-spans = Se puede hacer así desde { $light } (RG bajo { $light-rg }) hasta { $heavy } (RG bajo { $heavy-rg }).
scale-line-spans-usual = Se puede hacer así desde { $light } (RG bajo { $light-rg }) hasta { $heavy } (RG bajo { $heavy-rg }) con densidades que tiene su material.
scale-line-none-usual = Con densidades que tiene su material, no se puede hacer así con ningún peso.
scale-line-none = No se puede hacer así con ningún peso.
scale-line-working = Calculando…
scale-line-table = La bola con otros pesos
scale-line-caption = La bola con cada peso según { $by ->
        [size] el tamaño
       *[density] la densidad
    } de { $parts }
scale-line-and = { $first } y { $second }
scale-line-weight = Peso
scale-line-size-times = Tamaño, veces
scale-line-low-rg = RG bajo
scale-line-middle-rg = RG medio
scale-line-high-rg = RG alto
scale-line-differential = Diferen­cial
scale-line-top-weight = Peso superior
scale-line-not-so = así no se puede hacer: ver abajo.
scale-line-note = { $weight }: { $note }
scale-line-material = { $weights }: fuera de lo que suele tener { $material } ({ $density } g/cc) para «{ $part }».
scale-line-range = { $low } a { $high }
scale-line-limit = { $weights }: fuera del límite publicado de { $limit }.
scale-line-floats = Una bola de este volumen flota en el agua si pesa menos de { $weight }.
scale-line-some-float = Una bola de este volumen flota en el agua si pesa menos de { $weight }: de estas, con { $floating }.
scale-line-chart = RG de bajo a alto ({ $rg }) según el peso ({ $weight }): cuanto más larga la barra, mayor el diferencial. A trazos: los límites publicados, para { $from } o más.
scale-line-cards = Las bolas lado a lado
scale-line-cards-saw = Lado a lado, cortadas como corta la sierra, todas a la misma escala:
scale-line-cards-along = Lado a lado, cortadas a lo largo del pin, por el centro, todas a la misma escala:
scale-line-size = tamaño × { $factor }
scale-line-to-bench = Al Banco
scale-line-to-bench-ball = Al Banco: { $ball }
