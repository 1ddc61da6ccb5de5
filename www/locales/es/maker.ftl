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
maker-density = densidad
maker-diameter = diámetro
maker-all-of-it = tamaño de toda la pieza
maker-size = tamaño
maker-place-x = lugar a lo largo de x
maker-place-y = lugar a lo largo de y
maker-place-z = lugar a lo largo de z
maker-core-x = lugar del núcleo a lo largo de x
maker-core-y = lugar del núcleo a lo largo de y
maker-core-z = lugar del núcleo a lo largo de z
maker-turn-x = giro alrededor de x
maker-turn-y = giro alrededor de y
maker-turn-z = giro alrededor de z
maker-tilt-x = inclinación alrededor de x
maker-tilt-y = inclinación alrededor de y
maker-squash-x = aplastamiento a lo largo de su x
maker-squash-y = aplastamiento a lo largo de su y
maker-squash-z = aplastamiento a lo largo de su z
maker-height = altura
maker-bottom = diámetro de abajo
maker-top = diámetro de arriba
maker-ring = diámetro del anillo
maker-tube = grosor del anillo
maker-edge-x = tamaño a lo largo de su x
maker-edge-y = tamaño a lo largo de su y
maker-edge-z = tamaño a lo largo de su z
maker-profile-wide = ancho del perfil
maker-profile-tall = alto del perfil

## Los números de una bola

maker-weight = peso
maker-low-rg = RG bajo
maker-middle-rg = RG medio
maker-high-rg = RG alto
maker-differential = diferencial
maker-intermediate = diferencial intermedio
maker-top-weight = peso superior
maker-pin-to-cg = distancia del pin al CG
maker-low-rg-mark = eje de RG bajo desde el pin
maker-high-rg-mark = eje de RG alto desde su marca
maker-least-cover = cubierta más delgada
maker-want-weight = Peso
maker-want-low-rg = RG bajo
maker-want-differential = Diferencial
maker-want-intermediate = Diferencial intermedio
maker-want-top-weight = Peso superior
maker-want-least-cover = Cubierta más delgada

## Lo que cuesta una colada

maker-pours = coladas
maker-moulds = moldes
maker-settings = piezas puestas en un molde
maker-cuts = cortes
maker-kilograms = kilogramos mezclados

## Archivos

maker-tolerances-file = Archivo de tolerancias
maker-tolerances-open = Abrir tolerancias
maker-tolerances-save = Guardar tolerancias
maker-target-file = Archivo de objetivo
maker-target-open = Abrir objetivo
maker-target-save = Guardar objetivo
