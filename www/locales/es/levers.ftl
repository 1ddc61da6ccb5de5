# Qué mueve cada control de la bola, y las indicaciones junto a los deslizadores.

levers-title = Qué mueve qué: las palancas de la bola
levers-ranked-by = Ordenar por
levers-most = Lo que más mueve el { $figure } es { $control }: { $by } por cada { $step }.
levers-nothing = Nada mueve el { $figure }.
levers-table = Lo que mueve cada control
levers-control = Control
levers-per = Por cada
levers-only-first = Solo los primeros { $shown }
levers-all = Ver los { $all }
levers-note = Cuánto cambia cada número con un paso pequeño. Donde subir y bajar se dan por separado, un paso hacia arriba no lo cambia tanto como lo deshace uno hacia abajo.
levers-up = { $by } al subir
levers-down = { $by } al bajar
levers-both-ways = { $up } al subir, { $down } al bajar
levers-hint-most = es el que más mueve { $most }
levers-hint-here = en esta parte, es el que más mueve { $here }
levers-hint-both = es el que más mueve { $most }, y en esta parte el que más mueve { $here }
levers-hint-rg = el RG
levers-hint-differential = el diferencial
levers-hint-weight = el peso
