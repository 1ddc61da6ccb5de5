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
