# El Estante: bolas para guardar, lado a lado.

shelf-on-bench = Ahora en el Banco
shelf-on-shelf = En el Estante
shelf-on-shelf-count = En el Estante: { $count }
shelf-looking = Mirando qué hay…
shelf-empty = Todavía nada. Pon aquí la bola del Banco, tal como se lanza ahora, antes de seguir cambiándola: así las dos quedan lado a lado. Una bola se queda aquí con su tiro hasta que la quites.
shelf-from-house = De la casa
shelf-sorted = Orden
shelf-by-saved = fecha, la última primero
shelf-by-name = nombre
shelf-by-weight = peso, la más pesada primero
shelf-by-rg = RG, el más bajo primero
shelf-by-differential = diferencial, el más bajo primero
shelf-files = Archivos para poner en el Estante
shelf-add = Añadir de un archivo…
shelf-save-all = Guardar el Estante en un archivo

## Una de ellas

shelf-no-name = sin nombre
shelf-not-kept = el navegador no la guarda
shelf-saved = guardada: { $when }
shelf-more = Más<aloud> para { $name }</aloud>
shelf-name-and-note = Nombre y nota
shelf-duplicate = Duplicar
shelf-save-shot = Guardar como archivo de tiro
shelf-save-ball = Guardar como archivo de bola
shelf-take-off = Quitar del Estante
shelf-unread = Una que no se puede leer
shelf-unread-where = (Dónde: { $place }.)
shelf-unread-stays = Se queda como está. Puedes guardarla en un archivo para alguien que sepa repararla.
shelf-save-as-is = Guardarla como está
shelf-measuring = se está midiendo…
shelf-numbers = { $weight }, RG { $rg }, diferencial { $differential }
shelf-four-chosen = Hay cuatro elegidas: saca una para elegir otra.
shelf-compare = Comparar<aloud> { $name }</aloud>
shelf-is-out = { $name } queda fuera de la comparación.
shelf-is-in = { $name } es { $letter } en la comparación.
shelf-to-bench = Poner en el Banco
shelf-to-bench-name = Poner en el Banco: { $name }
shelf-name = Nombre
shelf-note = Nota
shelf-note-for = para quién, por qué, qué probar
shelf-done = Listo
shelf-leave = Dejar como estaba
shelf-put = Poner en el Estante
shelf-last-good = la bola o el tiro del Banco tiene ahora un error; lo que está aquí, y se guarda, es lo último que estaba bien.

## Si el navegador lo guarda

shelf-forbidden = Este navegador no deja que la página guarde nada: lo que pongas en el Estante dura solo esta visita.
shelf-newer = Otra pestaña tiene el Estante en una versión más nueva de esta página. Carga la página otra vez; hasta entonces, lo que pongas aquí dura solo esta visita.
shelf-broken = Lo que este navegador guardó del Estante no se puede abrir, así que lo que pongas aquí dura solo esta visita. Cerrar el navegador y volver puede ayudar.
shelf-start-afresh = Desecharlo y empezar un Estante nuevo
shelf-unkept = { $many ->
        [one] Una ficha no está guardada
       *[other] { $many } fichas no están guardadas
    }. { $why } Guarda el Estante en un archivo antes de irte.
shelf-unkept-retry = { $many ->
        [one] Una ficha no está guardada
       *[other] { $many } fichas no están guardadas
    }. { $why } Guarda el Estante en un archivo antes de irte, o quita algo y prueba otra vez.
shelf-save-now = Guardar el Estante en un archivo ahora
shelf-try-again = Probar otra vez
shelf-put-back = Devolver { $name }
shelf-put-back-unread = Devolver lo que no se pudo leer

## Lado a lado

compare-name = Lado a lado
compare-how = Marca hasta cuatro bolas con Comparar: las de la casa, las del Estante, la del Banco. Las demás se comparan con la primera. Una misma bola puesta en el Estante con varios lanzamientos sirve para compararlos.
compare-make-first = Ponerla primero
compare-make-first-name = Ponerla primero: { $name }
compare-is-first = Ahora las demás se comparan con { $name }.
compare-take-out = Sacar
compare-take-out-name = Sacar: { $name }
compare-thrown = Cómo se lanzan
compare-same-shot = El mismo tiro para todas: la mano, el lanzamiento y la pista de A
compare-own-shot = Cada una con su propio tiro, tal como se puso ahí
compare-one-ball = son una y la misma bola: elige el tiro propio de cada una para ver los lanzamientos por separado.
compare-own-layout = El trazado y el taladrado de cada bola siguen siendo suyos. Una bola de la casa no tiene nada de eso: con el mismo tiro para todas toma los de A; si no, se lanza con el tiro inicial.
compare-balls = Las bolas
compare-why = Por qué { $other } difiere de { $first }

## Todas las bolas en un mapa

compare-map = Todas las bolas por RG y diferencial
compare-map-title = Todas las bolas por RG bajo y diferencial
compare-map-below = La tabla de abajo dice lo mismo.
compare-map-limits = límites publicados, { $weight } o más
compare-map-rg = RG bajo, { $unit }: hacia la derecha cuesta más hacerla girar
compare-map-differential = dif.
compare-map-signs = Lleno: en el Estante. Hueco: de la casa. Rombo: en el Banco. Donde los nombres se taparían, están en la tabla.
compare-map-same = Lo mismo en una tabla
compare-map-table = Todas las bolas en una tabla
compare-map-by-rg = Todas las bolas por RG
compare-map-ball = Bola
compare-map-where = Dónde
compare-map-low-rg = <rg>RG bajo</rg>, { $unit }
compare-map-diff = <differential>Diferencial</differential>, { $unit }
compare-map-weight = <weight>Peso</weight>, { $unit }
compare-on-bench = en el Banco
compare-on-shelf = en el Estante
compare-of-house = de la casa

## Abiertas por un corte

compare-sections = Cortadas de la misma forma
compare-cut = Corte
compare-as-on-saw = Como en la Sierra
compare-to-scale = Todas a la misma escala, cortadas { $plane }.
compare-section = { $letter }: sección de { $ball }
compare-shows = Se ve: { $parts }.

## Por una misma pista

compare-shots = Por una misma pista
compare-wrong = { $letter }: { $what }
compare-drawing = { $many ->
        [one] Un tiro
       *[other] { $many } tiros
    } en una pista, desde arriba
compare-same-moment = Todas salen de la línea de falta en el mismo momento; una marca acompaña a cada bola.
compare-at-rest = El tiro terminó: las marcas solo dicen cuál es cada trayectoria, no dónde están las bolas. Al reproducirlo, todas salen de la línea de falta en el mismo momento y una marca acompaña a cada bola.
compare-other-lanes = La pista dibujada es la de { $first }; en otra: { $others }.
compare-other-hands = Las tablas se cuentan desde el lado de { $first }; en el cuadro se cuentan desde el otro las de { $others }.
compare-not-followed = { $letter } no se puede seguir.
compare-gutter = { $letter } cae en la canaleta.
compare-reaches = { $letter } llega a los pinos.
compare-same = { $letter } rueda igual que { $first }.
compare-steeper = { $much } más inclinada
compare-flatter = { $much } más plana
compare-further-in = { $much } tablas más adentro
compare-further-out = { $much } tablas más afuera
compare-both-ways = { $one } y { $other }
compare-later = empieza a volver { $much } más lejos
compare-sooner = empieza a volver { $much } antes
compare-comes = { $letter } entra { $ways } que { $first }.
compare-turns = { $letter } { $turns }.
compare-comes-and-turns = { $letter } entra { $ways } que { $first } y { $turns }.

## En números

compare-balls-table = Las bolas en números
compare-shots-table = Los tiros en números
compare-apart = { $table }; en las columnas de las demás, lo que las separa de { $first }
compare-limits = <limits>Límites publicados</limits>
compare-within = { $within } dentro
compare-outside = <out>fuera o demasiado cerca: { $rules }</out>; { $within } dentro
compare-none = ninguno
compare-no-change = igual
compare-row-weight = <word>Peso</word>
compare-row-low-rg = <word>RG bajo</word>
compare-row-middle-rg = <word>RG medio</word>
compare-row-high-rg = <word>RG alto</word>
compare-row-differential = <word>Diferencial</word>
compare-row-intermediate = <word>Diferencial intermedio</word>
compare-row-cg = <word>CG, distancia al centro</word>
compare-row-top-weight = <word>Peso superior</word>, sin taladrar
compare-row-top = <word>Equilibrio estático</word> sobre el agarre: arriba; abajo, menos de 0
compare-row-finger = <word>Equilibrio estático</word>: dedos; pulgar, menos de 0
compare-row-side = <word>Equilibrio estático</word>: lado positivo
compare-row-speed = <word>Velocidad al soltar</word>
compare-row-revs = <word>Revoluciones al soltar</word>
compare-row-entry = <word>Ángulo de entrada</word>
compare-row-board = <word>Tabla</word> en los pinos
compare-row-breakpoint = <word>Punto de quiebre</word>
compare-row-breakpoint-board = Tabla del <word>punto de quiebre</word>
compare-row-hook = <word>Empieza el gancho</word>
compare-row-roll = <word>Empieza la rodadura</word>
compare-row-speed-at-pins = <word>Velocidad en los pinos</word>
compare-row-revs-at-pins = <word>Revoluciones en los pinos</word>
compare-row-flare = <word>Abanico</word>
compare-row-time = <word>Tiempo hasta los pinos</word>
