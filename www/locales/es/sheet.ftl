# La hoja para llevar: una página para entregar.

sheet-bowler = Para quién
sheet-bowler-name = nombre
sheet-date = Fecha
sheet-paper = Papel
sheet-letter-paper = Carta (US Letter)
sheet-compare-with = Comparar con
sheet-no-other = ninguna otra bola
sheet-on-shelf = En el Estante
sheet-from-house = De la casa
sheet-weights-by = Otros pesos según
sheet-weights-by-a = A con otros pesos según
sheet-weights-by-b = B con otros pesos según
sheet-density-of = la densidad de «{ $part }»
sheet-print = Imprimir…
sheet-stays = El nombre y la fecha quedan en esta pestaña hasta que se cierra: no van en el enlace. Para un PDF, imprime en un archivo.
sheet-from-here = Esta página viene de este mismo equipo, así que el código no se abre en ningún otro.
sheet-last-good = { $problem } La hoja es de la última bola y el último tiro que estaban bien.
sheet-other-not-shown = No se puede mostrar la otra bola. { $problem }
sheet-title = Hoja: { $ball }
sheet-title-two = Hoja: { $ball } y { $other }
sheet-this-ball = Esta bola
sheet-without-core = una sin núcleo

## La página

sheet-for = Para
sheet-a = A: { $ball }
sheet-b = B: { $ball }
sheet-inside = Qué hay dentro
sheet-on-lane = En la pista
sheet-which = Cuál para quien la lanza
sheet-why = Por qué esta bola para quien la lanza
sheet-drilled-alike = A y B taladradas igual; vistas por el agarre, dedos arriba.
sheet-of = { $letter }: { $what }
sheet-lane = Pista
sheet-lane-of = Pista de { $letter }
sheet-lane-above = La pista desde arriba

## En números

sheet-numbers = La bola en números
sheet-weight = Peso
sheet-weight-says = Lo que levanta el brazo.
sheet-rg = RG
sheet-rg-says = Cuán afuera está el peso: cuanto mayor, más cuesta que gire.
sheet-called = Se suele llamar { $band }.*
sheet-differential = Diferencial
sheet-differential-says = Cuánto prefiere un eje: deja que la huella pase a cubierta limpia.
sheet-intermediate = Diferencial intermedio
sheet-intermediate-says = Cuánto se aparta el núcleo de ser redondo.
sheet-asymmetric = Asimétrica.*
sheet-symmetric = Simétrica.*
sheet-top-weight = Peso superior, sin taladrar
sheet-top-weight-says = Cuánto tira hacia el pin antes de los agujeros.
sheet-cover = Cubierta, mínimo
sheet-cover-says = A qué profundidad está el núcleo.
sheet-cover-thinner = Más delgada de lo habitual: se agrieta o despega antes.*
sheet-cover-usual = Lo habitual.*
sheet-cover-thicker = Más gruesa de lo habitual: dura más.*
sheet-same = igual

## Lanzamiento, pista y taladrado

sheet-release = Mano { $hand ->
        [right] derecha
       *[left] izquierda
    }, { $speed }, { $revs }; rotación del eje { $rotation }, inclinación { $tilt }; suelta en la tabla { $board } a { $launch }; del pin al PAP { $pin }, ángulo de taladrado { $drilling }; { $lane }.
sheet-release-val = Mano { $hand ->
        [right] derecha
       *[left] izquierda
    }, { $speed }, { $revs }; rotación del eje { $rotation }, inclinación { $tilt }; suelta en la tabla { $board } a { $launch }; del pin al PAP { $pin }, ángulo de taladrado { $drilling }, ángulo VAL { $val }; { $lane }.
sheet-zones = fricción en { $many } zonas
sheet-friction = fricción { $zones }
sheet-zone-to = { $friction } hasta { $distance }
sheet-zone-then = { $first }, luego { $next }
sheet-oil = patrón de aceite { $name }, { $volume } mL en { $length }
sheet-seen = Vista por el agarre, dedos arriba; a trazos, la línea vertical del eje.
sheet-pin-at = El pin está a { $grip } del centro del agarre y a { $line } de esa línea.
sheet-drilled-out = La broca saca { $out }: diferencial { $before } antes, { $after } después.
sheet-balance = Equilibrio estático sobre el agarre: { $top ->
        [more] arriba
       *[less] abajo
    } { $top-oz }, { $finger ->
        [more] dedos
       *[less] pulgar
    } { $finger-oz }, { $side ->
        [more] lado positivo
       *[less] lado negativo
    } { $side-oz }.

## Por qué esta bola, o cuál de las dos

sheet-pocket-there = Las tablas { $from } a { $to } con { $flat }° a { $steep }° son las que mejor derriban (estudios publicados, según se cita). Este tiro entra ahí.
sheet-pocket-off = Las tablas { $from } a { $to } con { $flat }° a { $steep }° son las que mejor derriban (estudios publicados, según se cita). Este tiro entra { $off }.
sheet-short-of-it = { $one ->
        [yes] { $boards } tabla
       *[no] { $boards } tablas
    } antes
sheet-past-it = { $one ->
        [yes] { $boards } tabla
       *[no] { $boards } tablas
    } más allá
sheet-flatter = { $degrees }° más plano
sheet-steeper = { $degrees }° más inclinado
sheet-both = { $one } y { $other }
sheet-plain-short = Una bola de un solo material, de igual tamaño y { $weight }, no llegaría a los pinos con este lanzamiento.
sheet-plain = Una bola de un solo material, de igual tamaño y { $weight }, entraría a { $angle }° por la tabla { $board } con este lanzamiento.
sheet-little-flare = Su huella apenas se mueve (abanico de { $flare }): casi el mismo anillo toca la pista en cada vuelta.
sheet-flare = Su abanico mide { $flare }, así que toca la pista con cubierta limpia.
sheet-still-slips = Aún desliza en los pinos: no ha gastado todo su gancho.
sheet-rolls = Rueda sin deslizar desde { $distance }: de ahí en adelante apenas se desvía.
sheet-both-drilled = Las dos taladradas igual para esta mano, con el mismo lanzamiento y la misma pista.
sheet-both-laid = Las dos con el mismo lanzamiento, trazado y pista.
sheet-both-slip = Las dos deslizan aún en los pinos.
sheet-b-rolls = B rueda antes de los pinos, A aún desliza allí.
sheet-a-rolls = A rueda antes de los pinos, B aún desliza allí.
sheet-same-roll = Las dos empiezan a rodar en el mismo lugar.
sheet-a-later = A empieza a rodar { $distance } más tarde.
sheet-a-sooner = A empieza a rodar { $distance } antes.
sheet-rg-lower = su RG es { $much } más bajo, así que cuesta menos hacerla girar
sheet-rg-higher = su RG es { $much } más alto, así que cuesta más hacerla girar
sheet-differential-larger = su diferencial es { $much } mayor
sheet-differential-smaller = su diferencial es { $much } menor
sheet-flares = su abanico mide { $a } y el de B { $b }
sheet-list = { $one }; { $other }
sheet-of-a = De A: { $what }.
sheet-for-flare = El abanico de A mide { $a } y el de B { $b }.
sheet-hook-from = El gancho se cuenta desde el punto de quiebre hasta los pinos.

## Con otros pesos

sheet-working = Calculando los otros pesos…
sheet-weights = Con otros pesos
sheet-by-density = Según la densidad de { $parts }, lo demás igual
sheet-by-density-drilled = Según la densidad de { $parts }, lo demás igual, antes del taladrado
sheet-by-both = Según la densidad de { $a } en A, de { $b } en B
sheet-by-both-drilled = Según la densidad de { $a } en A, de { $b } en B, antes del taladrado
sheet-head-weight = <weight>Peso</weight>
sheet-head-density = <density>g/cc</density>
sheet-head-rg = <rg>RG</rg>, { $unit }
sheet-head-differential = <differential>Dif.</differential>, { $unit }
sheet-head-rg-of = { $letter }: <rg>RG</rg>, { $unit }
sheet-not-so = no se puede hacer así
sheet-neither = { $weights }: ninguna se puede hacer así.
sheet-unlikely = { $mark } Su material apenas tiene esa densidad.
sheet-note-at = { $letter } con { $note }

## Enlace y precauciones

sheet-open-again = Abrirlo otra vez
sheet-this = esta bola y este tiro
sheet-that = { $letter } con este tiro
sheet-no-link = No hay enlace para { $which }: { $why }
sheet-scan = Escanear para abrir { $which } en Pithball, o ir a <link/>
sheet-scan-only = Escanear para abrir { $which } en Pithball. El enlace ({ $characters } caracteres) es demasiado largo para teclearlo: en un PDF está tras el código.
sheet-link-only = El enlace para { $which } es demasiado para un código que se pueda escanear: <link/>
sheet-link-too-long = El enlace para { $which }, de { $characters } caracteres, es demasiado para un código y demasiado largo para imprimirlo: pide el archivo de «Guardar tiro».
sheet-link-to = Enlace para { $which }
sheet-limits = Frente a los límites publicados:
sheet-limits-of = { $letter } { $limits }
sheet-limits-within = { $within } dentro.
sheet-limits-outside = { $within } dentro, fuera: { $outside }.
sheet-limits-close = { $within } dentro, demasiado cerca para decirlo: { $close }.
sheet-limits-both = { $within } dentro, fuera: { $outside }, demasiado cerca para decirlo: { $close }.
sheet-caution = <b>Precaución:</b> { $what }
sheet-caution-of = <b>Precaución, { $letter }:</b> { $what }
sheet-care = El taladrado, a un taller (pro shop) cualificado: al cortar saltan virutas calientes y cortantes y polvo. Levanta con cuidado: una bola pesa hasta { $most }. Las reglas vigentes deciden qué se admite en juego; lo que aquí no se calcula lo mide un laboratorio. Todo lo calcula Pithball con esta receta y este lanzamiento; lo real difiere. * Práctica habitual, sin fuente.
