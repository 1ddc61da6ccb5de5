# Los trabajos del fabricante: lo que comparten. Nombres de los números de una bola, de sus controles y de las tolerancias.

maker-working = Calculando…
maker-working-anew = Calculando de nuevo…
maker-range = { $from } a { $to }
maker-times = veces
maker-times-value = { $value } veces
maker-and = { $a } y { $b }

## Cómo se llama un control

maker-ball = bola
maker-control = { $part }: { $what }

## Los números de una bola

maker-weight = peso
maker-low-rg = RG bajo
maker-differential = diferencial
maker-intermediate = diferencial intermedio
maker-top-weight = peso superior
maker-least-cover = cubierta más delgada
maker-want-weight = Peso
maker-want-low-rg = RG bajo
maker-want-differential = Diferencial
maker-want-intermediate = Diferencial intermedio
maker-want-top-weight = Peso superior
maker-want-least-cover = Cubierta más delgada

## Archivos

maker-tolerances-file = Archivo de tolerancias
maker-tolerances-open = Abrir tolerancias
maker-tolerances-save = Guardar tolerancias
maker-target-file = Archivo de objetivo
maker-target-open = Abrir objetivo
maker-target-save = Guardar objetivo
maker-numbers-back = Volver a los números de antes
maker-numbers-are-back = Los números de antes están de vuelta.
