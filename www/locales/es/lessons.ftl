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
words-stretch = de { $from } a { $to }
words-cover = { $thinnest } donde es más delgada, { $mean } de media
words-cover-mean = { $mean } de media
words-pouring = Colando { $balls } bolas …
words-scrap = { $shows } { $shares } Relleno, rayado, blanco.
words-histogram = { $balls } bolas, de { $least } a { $most }
words-deviation = media { $mean }, desviación típica { $deviation }
words-percentile = 1 % por debajo de { $first }, 50 % por debajo de { $half }, 99 % por debajo de { $last }
words-interval = { $share } de { $balls } bolas
words-none = 0 %
words-all = 100 %
words-costs = { $shows } Aquí lo que más pesa es { $name }: { $first } por sí solo, { $total } junto con otros.

## La lista

lessons-first = Cada lección dura unos diez minutos y funciona sin red: mira, di qué esperas, pruébalo en el banco y ve por qué.
lessons-finished = Has terminado { $finished } de { $all }.
lessons-to-mine = Tu progreso: ponle nombre, guárdalo, entrégalo
lessons-reading = Un momento. Leyendo las lecciones …
lessons-after = Lo que sigue
lessons-next = La siguiente: { $title }. { $course }.
lessons-no-next = Después de esta no queda ninguna lección que no hayas terminado.
lessons-go-on-next = Seguir con ella
lessons-save-progress = Guardar tu progreso
lessons-going = La lección en la que estás
lessons-going-says = Estás en una lección, en el paso { $step }. Tu bola y tu tiro quedan guardados aparte.
lessons-back-to-it = Volver a ella
lessons-leave-it = Dejarla
lessons-state-done = hecha
lessons-begun = empezada: { $passed } de { $steps } pasos
lessons-facts = Unos { $minutes } minutos, { $steps } pasos
lessons-its-words = Palabras: <words/>
lessons-go-on = Seguir en el paso { $step }, { $title }<of>, de { $lesson }</of>
lessons-take = Tomar esta lección<of> { $lesson }</of>
lessons-take-again = Tomarla otra vez<of> { $lesson }</of>
lessons-take-anew = Tomarla desde el principio<of> { $lesson }</of>
lessons-to-room = Mostrar a una sala<of> { $lesson }</of>
lessons-on-paper = En papel<of> { $lesson }</of>

## Lo que ha hecho quien aprende

mine-title = Tu progreso
mine-says = Se queda en este navegador: no se envía a ningún lado. Guárdalo en un archivo para entregarlo o para seguir en otro lugar.
mine-name = Tu nombre, o como quieras llamarte
mine-save = Guardar el progreso en un archivo
mine-file = Progreso que incorporar
mine-take-in = Incorporar un archivo de progreso…
mine-taken = Incorporado de { $file }: { $lessons ->
        [one] 1 lección
       *[other] { $lessons } lecciones
    }.
mine-no-further = Nada en { $file } llega más lejos que lo que hay aquí.
mine-refused = { $file } no se incorporó. { $why }
mine-forgotten = Tu progreso quedó olvidado.
mine-sure = Sí, olvidarlo todo
mine-keep = No, conservarlo
mine-forget = Olvidarlo…

## Una clase

class-says = Quienes aprenden guardan su progreso en un archivo y te lo entregan. Abre todos los archivos a la vez: se leen aquí, en esta pestaña, y nada se envía ni se guarda.
class-files = Archivos de progreso de una clase
class-open = Abrir archivos de progreso…
class-away = Retirarlos
class-read = { $files ->
        [one] 1 archivo leído.
       *[other] { $files } archivos leídos.
    }
class-twice = Estos ya estaban y cuentan una sola vez:
class-same = { $file } contiene lo mismo que { $other }.
class-not-read = Estos no se leyeron:
class-refused = { $file }: { $why }
class-only-first = Solo se leyeron los primeros { $files } archivos.
class-who = Quién hizo qué
class-learner = Quien aprende
class-finished-many = Terminadas
class-finished-of = { $finished } de { $learners } la terminaron
class-finished-middle = { $finished } de { $learners } la terminaron, { $middle } a medio hacer
class-no-name = sin nombre
class-finished = terminada
class-passed = { $passed } de { $steps } pasos
class-right = { $right } de { $predicted } predicciones correctas
class-tries = { $tries ->
        [one] 1 intento fallido
       *[other] { $tries } intentos fallidos
    }
class-hints = { $hints ->
        [one] 1 ayuda
       *[other] { $hints } ayudas
    }
class-shown = se le mostró la manera: { $steps }
class-steps-open = abierto: { $steps }
class-not-named = un paso que el archivo no nombra
class-wrong-first = Lo que se predijo mal, primero lo que más se confunde
class-wrong = Lo que se predijo mal
class-question = Pregunta
class-answered-right = Correctas
class-wrong-answers = Respuestas equivocadas
class-none = ninguna
class-of = { $part } de { $all }
class-times = { $count } ×: { $said }
class-tasks-first = Lo que había que hacer, primero lo de más intentos fallidos
class-tasks = Lo que había que hacer
class-task = Tarea
class-done-by = La hicieron
class-failed-tries = Intentos fallidos
class-hints-taken = Ayudas
class-failed-try = Un intento fallido: un cambio que se dejó puesto y no era lo que se pedía.

## Escribir una lección

write-title = Escribir una lección
write-says = Una lección es un archivo de texto. Empieza por una que ya está, cámbiala y mira qué está mal y cómo se lee. Guárdala en un archivo para dársela a otras personas: la abren aquí y la toman.
write-file = Archivo de lección que abrir
write-open = Abrir un archivo de lección…
write-begin-from = Empezar por
write-choose = elegir una lección …
write-short = una corta en blanco
write-short-says = Una lección corta con un paso de cada clase, para rellenar.
write-copy-says = Esta es una copia: la lección de la página queda como está.
write-take-back = Volver a lo que escribiste
write-before = Lo que escribiste antes está guardado.
write-is-back = Ahí está otra vez lo que escribiste.
write-not-opened = No se abrió { $file }. { $why }
write-opened = Se abrió { $file }.
write-save = Guardar en un archivo
write-try = Probarla
write-to-room = Mostrarla a una sala
write-on-paper = En papel
write-not-kept = El navegador no guarda este texto: guárdalo en un archivo antes de salir.
write-text = La lección como texto
write-nothing = Nada todavía
write-reading = Leyéndola …
write-sound = Está bien hecha
write-wrong = Qué está mal
write-sound-says = Sus propias soluciones cumplen todo lo que se comprueba, su comienzo no cumple nada, y cada número que aparece está calculado.
write-line = Línea { $line }
write-is-sound = Está bien hecha.
write-mistakes = { $many ->
    [one] Línea { $line }: { $message }
   *[other] { $many } errores. El primero, línea { $line }: { $message }
}
write-more = Puede aparecer más cuando esto se arregle: las expresiones se miran donde la forma está bien, y la lección se recorre donde se pueden leer.
write-reads = Cómo se lee: { $title }
write-names = Nombres que se pueden usar
write-names-says = También se puede usar cualquier número de la bola o del tiro por su lugar, como <piece/> o <revs/>. Con <start/> delante, un nombre habla del banco como estaba al abrirse el paso; con el nombre de un estado delante, de ese estado.

## En papel

paper-sheet-title = Hoja de ejercicios: { $title }
paper-key-title = Soluciones: { $title }
paper-what = Qué imprimir
paper-sheet = la hoja de ejercicios
paper-key = las soluciones
paper-print = Imprimir…
paper-back = Volver a las lecciones
paper-name = Nombre
paper-date = Fecha
paper-words = Palabras
paper-read-later = Lee esto cuando lo demás esté hecho.
paper-because = Porque
paper-your-number = Tu número
paper-draw = Dibuja el recorrido de la bola.
paper-at-first = al principio
paper-found = lo que encontraste
paper-fill-in = para completar
paper-changed = Lo que cambié
paper-key-of = { $course }: soluciones
paper-teacher = Para quien enseña
paper-one-way = Una manera de hacerlo termina con esta bola y estos números; otras son igual de buenas.

## Mostrada a una sala

coach-label = { $title }, para una sala
coach-back = Atrás
coach-at = { $at } de { $all }
coach-next = Siguiente
coach-full = Pantalla completa
coach-end = Terminar
coach-keys = Adelante con → o Av Pág, atrás con ← o Re Pág: un mando envía lo mismo. Donde se pregunta a la sala, 1 cuenta una mano para A, 2 para B y así; con Mayús, una mano menos.
coach-change = ¿Qué cambiarías?
coach-one-way = <strong>Una manera de hacerlo.</strong> <done/>
coach-over = Esa fue la lección. ¿Qué fue nuevo para ti?
coach-hint = Una ayuda
coach-another-hint = Otra ayuda
coach-hands-keys = Pulsa 1 para una mano por A, 2 por B y así; con Mayús, una mano menos. Con ← y → se sigue.
coach-room-says = Lo que dice la sala
coach-take-down = Anotarlo
coach-taken-down = Anotado.
coach-field-keys = En el campo, ← y → se quedan en el texto: con Av Pág y Re Pág se sigue.
coach-take-path = Anotar el recorrido
coach-path-keys = En un punto del recorrido, las flechas lo mueven: con Av Pág y Re Pág se sigue.
coach-right = Correcta
coach-fewer = Una mano menos para { $letter }
coach-hands = Manos para { $letter }
coach-more = Una mano más para { $letter }
coach-letter = { $letter } { $hands }
coach-now = Manos: { $hands }.
coach-counted = { $hands ->
        [one] 1 mano
       *[other] { $hands } manos
    }
coach-sum = { $all ->
        [one] { $right } de { $all } mano se levantó por lo correcto.
       *[other] { $right } de { $all } manos se levantaron por lo correcto.
    }
