# Una lección que tiene el banco, y lo que comparten las lecciones.

## Dibujos de la pista

lesson-lane-above = La pista desde arriba
lesson-lane-path = Con el recorrido de la bola.
lesson-lane-empty = Vacía, para dibujar un recorrido.

## Números que mirar

lesson-watch = Números que mirar
lesson-at-first = al principio
lesson-now = ahora

## El paso de ahora

lesson-unreadable = Esta lección ya no se puede leer: se empezó con otra edición de la página.
lesson-leave = Dejar la lección
lesson-of = { $title }. { $trial ->
        [yes] De prueba. Paso { $step } de { $steps }: { $kind }
       *[no] Paso { $step } de { $steps }: { $kind }
    }
lesson-far = Hasta dónde has llegado
lesson-aside = Tu bola y tu tiro quedan guardados aparte, y vuelven cuando la lección termina o la dejas.
lesson-stale = Hasta que se arregle el error del banco, los números son los de antes.
lesson-back = Atrás
lesson-end-without = Terminar sin hacerlo
lesson-go-on-without = Seguir sin hacerlo
lesson-finish = Terminar
lesson-next = Siguiente
lesson-again = Empezar este paso de nuevo
lesson-kind-explore = mira
lesson-kind-predict = predice
lesson-kind-do = hazlo
lesson-kind-observe = observa
lesson-kind-explain = por qué

## Una pregunta

lesson-think = ¿Qué crees?
lesson-said-right = Tu respuesta: correcta
lesson-said-wrong = Tu respuesta: no es correcta
lesson-said-low = Tu respuesta: demasiado pequeña
lesson-said-high = Tu respuesta: demasiado grande
lesson-right-answer = La respuesta correcta: { $answer }
lesson-computed = Calculado: <number/>
lesson-answer = Responder
lesson-your-number = Tu número
lesson-your-number-in = Tu número<unit>, { $unit }</unit>
lesson-no-number = esto no es un número.
lesson-answer-path = Responder con este recorrido
lesson-by-boards = por { $points }
lesson-by-board = la tabla { $board } ({ $far })

## Un recorrido dibujado en la pista

lesson-draw = La pista desde arriba, para dibujar un recorrido
lesson-draw-says = Arrastra los puntos a lo ancho de la pista, o ve a uno con la tecla Tab y muévelo con las flechas.
lesson-path-point = tabla { $board } a { $far }
lesson-your-path = Tu recorrido: { $points }.
lesson-balls-path = El de la bola: { $points }.
lesson-path-at = Tu recorrido a { $far }
lesson-on-board = tabla { $board }
lesson-path-key = A trazos y con puntos: el tuyo. La línea sin puntos: el de la bola.
lesson-type-boards = Escribir las tablas en su lugar
lesson-board-at = <board>Tabla</board> a { $far }

## Algo que hacer

lesson-hint-first = Una ayuda
lesson-hint-second = Otra ayuda
lesson-hint-last = La última ayuda
lesson-hints = Ayudas
lesson-one-way = Esta es una manera de hacerlo
lesson-done = Hecho
lesson-so-before = Así estaba antes
lesson-missing = Falta todavía
lesson-mistake = Hay un error en el banco: { $says }
lesson-already = Todavía no has cambiado nada: esto ya se cumplía al abrirse el paso.
lesson-own-way-open = Es la de la lección, así que el paso sigue abierto. Empiézalo de nuevo para encontrar tu propia manera.
lesson-own-way = Es la de la lección. Para encontrar otra, empieza el paso de nuevo.
lesson-show-way = Mostrarme una manera de hacerlo

## El final de una lección

lesson-open-step = paso { $step }, «{ $title }»
lesson-finished = «{ $title }» está terminada. Tu bola y tu tiro están de nuevo en el banco.
lesson-at-end = «{ $title }» llegó a su final. Sigue abierto: { $open }. Tu bola y tu tiro están de nuevo en el banco.
lesson-left = Dejaste la lección. Tu bola y tu tiro están de nuevo en el banco.

## Lo que se hizo, y que se guarda

progress-refused = Este navegador no deja que la página guarde tu progreso: guárdalo en un archivo antes de salir.
progress-unreadable = El progreso guardado de tu última visita no se pudo leer, así que este es nuevo.
progress-full = El espacio del navegador para esta página está lleno: tu progreso no se guarda. Guárdalo en un archivo.
progress-not-kept = Este navegador no guarda tu progreso. Guárdalo en un archivo antes de salir.
progress-no-file = { $why } Un archivo de progreso es lo que quien aprende guarda aquí en Lecciones, «Tu progreso»; su nombre termina en .progress.json.
progress-where = { $says } (Dónde: { $place }.)
# Cómo se llama su archivo si quien aprende no tiene nombre
progress-file = mi progreso
# Una respuesta equivocada, como se cuenta de una clase
class-too-little = demasiado poco, por ejemplo { $what }
class-too-much = demasiado, por ejemplo { $what }
class-another-path = otro recorrido, por ejemplo { $what }
