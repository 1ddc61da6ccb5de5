# El Banco: donde se hace y se taladra la bola.

bench-invitation = Cambia algo: arrastra la densidad de esta pieza, <piece>{ $piece }</piece>, aquí abajo, y mira cómo responden el corte, los números y el tiro.
bench-ball = Bola
bench-parts = Partes, en el orden de colada
bench-cover = cubierta
bench-cover-says = La <coverstock>cubierta</coverstock> llega desde la superficie hasta las piezas: llena el resto de la bola.
bench-diameter-of-ball = Diámetro de la bola
bench-diameter-caution = los límites publicados van de { $low } a { $high }.
bench-add-piece = Añadir una pieza

# Plantillas

bench-start = Empezar por
bench-start-from = Empezar por { $ball }

# Una parte

bench-part-says = { $density }; { $weight }
bench-name = Nombre
bench-earlier = Antes
bench-earlier-label = Colar antes: { $piece }
bench-later = Después
bench-later-label = Colar después: { $piece }
bench-duplicate = Duplicar
bench-duplicate-label = Duplicar: { $piece }
bench-remove = Quitar
bench-remove-label = Quitar: { $piece }
bench-copy = copia de { $piece }
bench-too-heavy = esta pieza sola pesa { $weight }; una bola entera puede pesar { $limit } como máximo.

# Material

bench-material = Material
bench-own-mix = una mezcla propia
bench-density = Densidad
bench-too-dense = más denso que el límite publicado de { $limit } g/cc para cualquier pieza de una bola.
bench-density-unusual = fuera de lo que suele tener este material: { $material }.
bench-usually = Suele tener { $density } g/cc: <source>de dónde sale ese dato</source>
bench-usually-between = Suele tener de { $low } a { $high } g/cc: <source>de dónde sale ese dato</source>
bench-source = { $source }. Se usa para { $uses }.
bench-from-memory = de memoria, sin verificar

# Forma y lugar

bench-shape = Forma
bench-sphere = esfera
bench-ellipsoid = elipsoide (huevo)
bench-cylinder = cilindro, disco o torta
bench-frustum = tronco de cono
bench-ring = anillo
bench-box = caja
bench-lathe = torneada
bench-diameter = Diámetro
bench-height = Altura
bench-diameter-below = Diámetro de abajo
bench-diameter-above = Diámetro de arriba
bench-ring-diameter = Diámetro del anillo
bench-tube-diameter = Diámetro del tubo
bench-width-x = Ancho x
bench-width-y = Ancho y
bench-height-z = Altura z
bench-place = Posición, inclinación y aplastado
bench-position = Posición
bench-sideways-x = Lateral x
bench-sideways-y = Lateral y
bench-towards-pin = Hacia el pin z
bench-tilt = <tilt>Inclinación</tilt>: giro sobre x, luego y, luego z
bench-about-x = Sobre x
bench-about-y = Sobre y
bench-about-z = Sobre z
bench-squash = <squash>Aplastado</squash>: veces su propio ancho
bench-along-x = A lo largo de x
bench-along-y = A lo largo de y

# El contorno de lo que se tornea

bench-outline = El contorno y su imagen en espejo
bench-points = Puntos del contorno, en orden
bench-point = Punto
bench-out = Desde el eje
bench-up = Altura
bench-add-or-remove = Añadir o quitar
bench-point-out = Punto { $point }, distancia al eje
bench-point-up = Punto { $point }, altura
bench-point-add = Añadir un punto después del punto { $point }
bench-point-remove = Quitar el punto { $point }

# Cortes

bench-cuts = Cortes y canales de flujo ({ $cuts })
bench-cuts-say = Un corte, como un <channel>canal de flujo</channel>, se llena con lo que rodea a la pieza.
bench-cut = corte { $number }
bench-cut-remove = Quitar: { $cut }
bench-add-channel = Añadir un canal de flujo

# Agujeros taladrados de uno en uno

bench-holes = Agujeros taladrados ({ $holes })
bench-holes-say = Aquí un agujero solo quita peso. Dónde taladrar una bola de verdad lo tiene que decir un taller (pro shop) cualificado.
bench-add-hole = Añadir un agujero
bench-hole = agujero { $number }
bench-hole-diameter = Diámetro
bench-hole-depth = Profundidad
bench-hole-enters = Entra por la superficie en esta dirección desde el centro de la bola (z hacia el pin, x e y perpendiculares a z):
bench-enters-x = <name>Entra hacia</name> x
bench-enters-y = <name>Entra hacia</name> y
bench-enters-z = <name>Entra hacia</name> z, al pin
bench-hole-runs = Va hacia adentro en esta dirección:
bench-runs-x = <name>Va hacia</name> x
bench-runs-y = <name>Va hacia</name> y
bench-runs-z = <name>Va hacia</name> z, al pin
bench-hole-straight = Recto al centro
bench-hole-pitched = Inclinarlo respecto al centro
bench-hole-remove = Quitar: { $hole }

# Taladrada para una mano

bench-drill = Taladrarla para una mano
bench-drilled = La bola está taladrada
bench-drill-says = Coloca el pulgar y los dedos a partir del <pap>PAP</pap> de quien lanza y muestra qué cambian los agujeros. La receta de arriba queda como está.
bench-layouts = Empezar por un trazado
bench-layout = Trazado
bench-layout-name = Trazado de { $ball }
bench-for = Taladrada para
bench-right = Mano derecha
bench-left = Mano izquierda
bench-pin-to-pap = Del <pin>pin</pin> al PAP
bench-drilling-angle = Ángulo de taladrado
bench-val-angle = Ángulo VAL
bench-pap-over = <pap>PAP</pap>, de lado desde el <centre>agarre</centre>
bench-pap-up = <pap>PAP</pap>, hacia arriba
bench-grip = Agarre
bench-has-thumb = Agujero del pulgar (sin él: agarre a dos manos)
bench-bridge = Puente
bench-drilled-out = La broca saca { $weight }. Los insertos se pesan como tubos que terminan justo bajo la superficie.
bench-layout-save = Guardar el trazado en un archivo
bench-middle = Dedo medio
bench-ring-finger = Dedo anular
bench-thumb = Pulgar
bench-bore = { $digit }: { $across } de ancho, { $deep } de fondo
bench-bore-insert = { $digit }: { $across } de ancho, { $deep } de fondo, inserto
bench-bore-sleeve = { $digit }: { $across } de ancho, { $deep } de fondo, funda
bench-bore-across = <hole>Agujero</hole>, ancho
bench-bore-depth = Profundidad
bench-pitch-forward = <pitch>Pitch</pitch> hacia adelante
bench-pitch-side = <pitch>Pitch</pitch> hacia el lado del PAP
bench-span-middle = <span>Span</span> hasta el dedo medio
bench-span-ring = <span>Span</span> hasta el dedo anular
bench-insert = Inserto en el agujero, que para él se taladra más ancho
bench-sleeve = Funda en el agujero, que para ella se taladra más ancho
bench-insert-wall = Su pared
bench-insert-density = Su densidad
