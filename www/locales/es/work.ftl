# Lo que se dice del trabajo de quien lee: puesto en el banco, abierto, guardado, compartido.

work-on-bench = En el banco: { $name }. Deshacer trae de vuelta lo que había.
work-held = Este paso de la lección deja como está { $what }, para que cambie una sola cosa a la vez.
work-no-worker = no se pudo iniciar un proceso de trabajo

# Lo que un paso de una lección deja como está

held-rest = lo demás
held-diameter = el diámetro
held-density = la densidad
held-family = la familia
held-finish = el acabado
held-grit = el grano
held-kind = el tipo
held-bottom-diameter = el diámetro de abajo
held-top-diameter = el diámetro de arriba
held-height = la altura
held-ring-diameter = el diámetro del anillo
held-tube-diameter = el diámetro del tubo
held-size = el tamaño
held-profile = el contorno
held-squash = el aplastado
held-position = la posición
held-turn = el giro
held-pieces = las piezas
held-cuts = los cortes
held-holes = los agujeros
held-entry = la entrada
held-axis = el eje
held-depth = la profundidad
held-hand = la mano
held-speed = la velocidad
held-revs = las revoluciones
held-axis-rotation = la rotación del eje
held-axis-tilt = la inclinación del eje
held-launch-angle = el ángulo de salida
held-board = la tabla
held-pin-to-pap = la distancia del pin al PAP
held-drilling-angle = el ángulo de taladrado
held-start-turn = el giro inicial
held-drilling = el taladrado
held-val-angle = el ángulo VAL
held-lane = la pista
held-oil = el aceite
held-zones = las zonas

# Archivos

work-untitled = sin-nombre
work-too-large = Ocupa más de { $size }.
work-bytes = { $many } bytes
work-not-readable = No se pudo leer: quizá se movió, o lo que lo contiene no está conectado ahora.
work-no-text = No es texto en UTF-8, como lo son todos los archivos de esta página. Si se cambió en otro programa, guárdalo allí como UTF-8.
work-is-ball = Es una bola: se abre con «Abrir…», arriba en la página.
work-is-shot = Es un tiro: se abre con «Abrir…», arriba en la página.
work-is-layout = Es un layout: se abre con «Abrir…», arriba en la página.
work-is-oil = Es un patrón de aceite: se abre con «Abrir…», arriba en la página.
work-is-tolerances = Son tolerancias: se abren con «Abrir…», arriba en la página.
work-is-target = Es lo que se pide de un núcleo: se abre con «Abrir…», arriba en la página.
work-is-shelf = Es un estante: se abre con «Abrir…», arriba en la página.
work-is-progress = Es el progreso de quien aprende: se incorpora en Lecciones, en «Tu progreso» o en «Una clase».
work-is-lesson = Es una lección: se abre en Lecciones, en «Escribir una».
work-kinds = una bola, un tiro, un layout, un patrón de aceite, tolerancias, lo que se pide de un núcleo o un estante
work-no-format = No dice su "format". Lo que se abre aquí es { $kinds }.
work-other-format = Su "format" es "{ $format }". Lo que se abre aquí es { $kinds }.
work-numbers-before = Los números que había vuelven con «Volver a los números de antes».
work-not-opened = No se abrió { $file }. { $why }
work-where = (En el archivo: { $place }.)
work-opening = Abriendo { $file } …
work-too-long = Calcular su bola lleva más de { $seconds } segundos.
work-broke = No se pudo calcular si su tiro llega a su fin. El navegador dijo: { $why }.
work-opened = Se abrió { $file }.
work-opened-not-ball = Se abrió { $file } con la bola del banco: la suya está en otro archivo, { $ball }.
work-opened-not-oil = Se abrió { $file } con la pista como estaba: su aceite está en otro archivo, { $oil }.
work-opened-not-both = Se abrió { $file } con la bola del banco, porque la suya está en otro archivo, { $ball }, y con la pista como estaba, porque su aceite está en otro archivo, { $oil }.
work-opened-oil = Se abrió { $file }: es el aceite de la pista.
work-opened-layout = Se abrió { $file }: la bola del banco se taladra según él.
work-opened-tolerances = Se abrió { $file }: son las tolerancias, en la Balanza.
work-opened-target = Se abrió { $file }: es lo que se pide de un núcleo, en el Banco.
work-saved = Guardado como { $file }.

# Guardado entre visitas

work-nothing-kept = Este navegador no deja que la página guarde nada: guarda la bola en un archivo antes de irte.
work-unreadable = La bola guardada de tu última visita no se pudo leer, así que esta es nueva.
work-storage-full = El espacio del navegador para esta página está lleno: los cambios ya no se guardan aquí. Guarda la bola en un archivo.
work-storage-refused = El navegador no guarda los cambios de esta página. Guarda la bola en un archivo antes de irte.
work-aside-unkept = El espacio del navegador para esta página está lleno: lo que se apartó para Deshacer solo se guarda hasta que cierres esta página. Guarda tu bola en un archivo.
work-other-tab = Otra pestaña de esta página también ha cambiado su banco. Se guardan los dos: la próxima vez está aquí el último que cambió, y Deshacer trae el otro.

# Enlaces

link-not-opened = El enlace no se abrió y tu trabajo está como estaba. { $why }
link-already = La bola y el tiro del enlace ya están en el banco.
link-opening = Abriendo el enlace…
link-opened = Abierta desde el enlace: { $ball }. Deshacer trae de vuelta lo que había en el banco.
link-share = Compartir enlace
link-none = No se puede hacer un enlace. { $why }
link-close = Cerrar
link-to = Enlace a esta bola y este tiro
link-copy = Copiar
link-copied = Copiado.
link-copy-by-hand = El navegador no deja copiar a la página: cópialo del campo.
link-long = El enlace tiene { $many } caracteres.
link-cut-off = Algunos programas cortan un enlace tan largo: envía mejor el archivo de «Guardar tiro».
link-holds = Todo está en el propio enlace: bola, trazado, tiro y pista, con sus nombres y notas. No se envía nada a ninguna parte hasta que lo compartas.
link-file = Esta página es un archivo de tu computadora, así que el enlace solo se abre ahí; para otra persona, envía el archivo de «Guardar tiro».
