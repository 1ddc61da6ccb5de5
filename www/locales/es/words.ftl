# Las palabras del oficio: cómo se llama cada una (`.name`) y qué quiere decir (`word-…`), y qué
# muestra su dibujo en el glosario (`shows-…`). Los nombres en español son los que usa este programa.

word-rg = Radio de giro: a qué distancia del eje está el peso, de media; cuanto mayor es, más cuesta hacer girar la bola.
    .name = RG
shows-rg = El corazón denso de la n.º 4 está en el eje, por eso su RG es bajo.

word-differential = La diferencia entre el RG más alto y el más bajo de la bola: cuánto prefiere la bola un eje, lo que permite que la huella se abra.
    .name = diferencial
shows-differential = El núcleo de la n.º 3 es largo: gira fácil alrededor de su largo y cuesta más voltearlo de punta a punta.

word-intermediate-differential = La diferencia entre el RG más alto y el medio: cero en un núcleo redondo, más en uno asimétrico.
    .name = diferencial intermedio
shows-intermediate-differential = El núcleo de la n.º 6 está aplastado. Córtalo en el otro sentido y se ve más ancho.

word-cg = Centro de gravedad: el punto sobre el que toda la bola quedaría en equilibrio.
    .name = CG
shows-cg = La torta de la n.º 1 lleva el centro de gravedad hacia arriba, hacia el pin.

word-top-weight = En una bola sin agujeros: cuánto se acerca su centro de gravedad al pin, dicho como el peso que hay que poner en el polo opuesto para equilibrarla; no todos los talleres lo cuentan igual.
    .name = peso superior
shows-top-weight = La torta, cerca de lo alto de la n.º 1, hace más pesado el lado del pin.

word-pin = El extremo del núcleo por donde pasa el eje de RG bajo, marcado en la cubierta para que quien taladra lo encuentre.
    .name = pin
shows-pin = El pin está arriba, encima del disco.

word-pap = Punto del eje positivo: por donde el eje sobre el que gira la bola al soltarla sale de ella por el lado positivo.
    .name = PAP
shows-pap = El PAP y los agujeros de una bola taladrada, vistos desde el agarre.

word-mass-bias = El eje de RG alto de un núcleo asimétrico.
    .name = sesgo de masa
shows-mass-bias = El sesgo de masa cruza el núcleo aplastado de la n.º 6.

word-track-flare = La manera en que el anillo de aceite de la bola se corre con cada vuelta, de modo que toca la pista cubierta limpia; se mide por cuánto se desplaza el eje de giro sobre la bola.
    .name = abanico de la huella
shows-track-flare = Cada anillo queda un poco al lado del anterior.

word-board = Una de las 39 tiras que forman el ancho de la pista, de algo más de una pulgada cada una, contadas desde el lado de quien lanza.
    .name = tabla
shows-board = Las tablas se cuentan desde el lado de quien lanza.

word-breakpoint = El lugar donde la bola está más hacia el lado de quien lanza, antes de volver.
    .name = punto de quiebre
shows-breakpoint = Aquí la bola está más afuera, antes de volver.

word-entry-angle = El ángulo con que viaja la bola al llegar a los pinos, medido desde la línea recta a lo largo de la pista.
    .name = ángulo de entrada
shows-entry-angle = La dirección del recorrido donde llega a los pinos.

word-coverstock = El material exterior de la bola, el que toca la pista.
    .name = cubierta
shows-coverstock = El grosor de la cubierta de la n.º 3, todo alrededor.

word-flow-channel = Una ranura en una pieza por la que pasa el material que se cuela; se llena con lo que la rodea.
    .name = canal de flujo
shows-flow-channel = La ranura alrededor del núcleo interior de la n.º 4, llena de núcleo exterior.

word-puck = Una pieza plana y redonda, también llamada torta.
    .name = disco
shows-puck = El disco de la n.º 3 está encima del núcleo interior.

word-hook = La parte del recorrido donde la bola se curva, porque su giro todavía no va con su marcha.
    .name = gancho
shows-hook = La curva después del aceite.

word-skid = La primera parte del recorrido, donde la bola se desliza y casi no se curva, sobre todo en el aceite.
    .name = deslizamiento
shows-skid = La parte casi recta a través del aceite.

word-roll = La última parte del recorrido, donde la bola ya no resbala sobre la pista.
    .name = rodadura
shows-roll = La última parte, recta.

word-axis-rotation = El ángulo del eje de giro visto desde arriba: con 0° la bola rueda hacia delante, con 90° gira de lado.
    .name = rotación del eje
shows-axis-rotation = En este lanzamiento el eje está bastante girado hacia atrás, por eso hace gancho.

word-axis-tilt = Cuánto apunta el eje de giro hacia arriba respecto a la horizontal.
    .name = inclinación del eje
shows-axis-tilt = El eje de este lanzamiento apunta un poco hacia arriba.

word-rev-rate = Cuántas vueltas por minuto da la bola al soltarla.
    .name = revoluciones
shows-rev-rate = Un lanzamiento con muchísimas vueltas por minuto.

word-drilling-angle = El ángulo en el pin entre la línea al PAP y la línea al sesgo de masa de un núcleo asimétrico o, si no lo hay, a la dirección que el Banco llama «hacia un lado, x».
    .name = ángulo de taladrado
shows-drilling-angle = El ángulo de taladrado está en el pin, entre la línea al PAP y el sesgo de masa.

word-start-turn = Cuánto está girada la bola sobre su eje de giro al soltarla; importa en una bola que no es igual por todos los lados.
    .name = giro inicial
shows-start-turn = El primer anillo depende de cómo está girada la bola cuando sale de la mano.

word-launch-angle = La dirección en que sale la bola: 0° es recto a lo largo de la pista.
    .name = ángulo de salida
shows-launch-angle = La bola sale hacia fuera, no recta.

word-friction = Con cuánta fuerza frena la pista a la bola que se desliza: la fuerza lateral dividida por el peso de la bola. El aceite la hace pequeña.
    .name = fricción
shows-friction = En una pista seca la bola gira enseguida.

word-grip-centre = El medio del agarre, a la mitad del espacio entre el pulgar y los dedos.
    .name = centro del agarre
shows-grip-centre = El centro del agarre es el medio del agarre.

word-span = A qué distancia están los dedos del pulgar, medida sobre la bola, de borde de agarre a borde de agarre, por dentro de los insertos: el espacio (span) completo.
    .name = espacio
shows-span = Del agujero del pulgar a cada agujero de los dedos.

word-bridge = La tira de bola que queda entre los dos agujeros de los dedos.
    .name = puente
shows-bridge = La tira entre los dos agujeros de los dedos.

word-pitch = Por cuánto el eje de un agujero no pasa por el centro de la bola (pitch): hacia delante, el agujero se inclina bajo la palma; hacia atrás, se aleja de ella.
    .name = inclinación
shows-pitch = No todos los agujeros apuntan al centro de la bola.

word-midline = La línea que pasa por el centro del agarre y lo cruza en ángulo recto.
    .name = línea media
shows-midline = La línea que cruza el agarre por su centro.

word-val = Línea vertical del eje: la línea que pasa por el PAP y cruza la línea media en ángulo recto.
    .name = VAL
shows-val = La línea que pasa por el PAP y cruza la línea media.

word-val-angle = El ángulo, en el PAP, entre la línea vertical del eje y la línea al pin: pequeño pone el pin por encima de los dedos, grande por debajo.
    .name = ángulo VAL
shows-val-angle = El ángulo, en el PAP, entre la VAL y la línea al pin.

word-insert = Un tubo blando en un agujero de los dedos, o una funda en el del pulgar; el agujero se taladra más ancho para que quepa.
    .name = inserto
shows-insert = Un tubo blando forra cada agujero.

word-static-balance = Lo desigual que cuelga la bola taladrada alrededor de su agarre (arriba o abajo, dedos o pulgar, lado), tal como lo mostraría una balanza en onzas.
    .name = balance estático
shows-static-balance = Los agujeros quitan peso a un lado de la bola.

word-bow-tie = Uno de los dos lugares donde se cruzan los anillos de la huella y su banda es más estrecha.
    .name = corbatín
shows-bow-tie = Los anillos se cruzan en dos lugares, donde su banda es más estrecha.

word-oil-pattern = El grosor del aceite en cada tabla, pie a pie, cuando la pista acaba de aceitarse.
    .name = patrón de aceite
shows-oil-pattern = El patrón de la casa: grueso en el medio, fino por fuera.

word-film = La capa de aceite sobre las tablas, de unas milésimas de milímetro de grosor; un micrómetro (µm) es una milésima.
    .name = película
shows-film = Cuanto más oscuro, más gruesa la película.

word-oil-ratio = Cuántas veces más gruesa es la película en las cinco tablas del medio que en las tablas 3 a 7; cuanto mayor es, más devuelve el patrón la bola a su sitio.
    .name = razón de aceite
shows-oil-ratio = Mucho más aceite en el medio que por fuera.

word-taper = Cómo se adelgaza la película a lo largo de la pista: la parte de la primera película, la más gruesa, que queda antes del último tramo.
    .name = adelgazamiento
shows-taper = La película se adelgaza a lo largo de la pista.

word-polyester = Una cubierta de plástico dura y lisa: la que menos fricción tiene.
    .name = poliéster
shows-polyester = La n.º 1 tiene cubierta de poliéster.

word-urethane = Una cubierta de plástico más blanda que agarra pronto, también en el aceite.
    .name = uretano
shows-urethane = El uretano reactivo es un tipo de uretano; la n.º 2 tiene una cubierta así.

word-reactive = De uretano que se hace poroso al endurecer, una resina que agarra más que ninguna en las tablas secas.
    .name = reactiva
shows-reactive = La n.º 3 tiene una cubierta reactiva.

word-finish = Cómo se trabajó la superficie por última vez: cuanto más basto el grano, más áspera; el pulido la alisa.
    .name = acabado
shows-finish = Con un acabado más áspero esta bola giraría antes.

word-grit = Lo fino que era el último abrasivo: 500 es áspero, 4000 casi liso.
    .name = grano
shows-grit = La bola de este lanzamiento está trabajada con un grano de 2000.

word-polish = Un líquido que se frota al final y deja la superficie más brillante y más lisa.
    .name = pulido
shows-polish = Con pulido esta bola se iría más larga.

word-squash = Cambia la escala de la forma terminada a lo largo de sus ejes x e y: así una forma redonda se vuelve asimétrica.
    .name = aplastado
shows-squash = El núcleo interior de la n.º 6 está aplastado: estrecho en un sentido, ancho en el otro.

word-95-interval = Donde está la proporción verdadera en 95 de cada 100 muestras como esta: cuantas más bolas se cuelan, más estrecho es.
    .name = intervalo del 95 %
shows-95-interval = La parte de las bolas que pasa, con el margen que deja una muestra de este tamaño: una muestra menor deja más.

word-first-order = La parte de la dispersión que desaparecería, de media, si solo esto saliera exactamente como está dibujado.
    .name = primer orden
shows-first-order = Oscuro: lo que cada tolerancia hace por sí sola al RG.

word-total-order = La parte de la dispersión que quedaría si todo menos esto saliera exactamente como está dibujado: por sí solo y junto con lo demás.
    .name = orden total
shows-total-order = Con contorno: lo que cada tolerancia hace, sola y junto con las demás, a que una bola pase.

word-weight = Cuánto pesa: de una bola, toda ella, como marca la balanza; de una parte, su densidad por su volumen.
    .name = peso
shows-weight = Cada parte de la n.º 3 suma su propio peso.

word-volume = Cuánto espacio ocupa una parte dentro de la bola, sin sus cortes ni sus agujeros.
    .name = volumen
shows-volume = La cubierta de la n.º 3 es la que más espacio ocupa, alrededor de todo el núcleo.

word-middle-rg = El RG sobre el eje que queda entre el más fácil y el más difícil: en un núcleo redondo, igual al RG alto.
    .name = RG medio
shows-middle-rg = La n.º 6 no es igual todo alrededor de su pin: su RG medio no es su RG alto.

word-high-rg = El RG sobre el eje más difícil: allí el peso está más lejos.
    .name = RG alto
shows-high-rg = El eje más difícil de la n.º 6 atraviesa su núcleo aplanado.

word-piece = Una de las partes que se vierten o se colocan dentro de la cubierta; sus medidas son las de su forma.
    .name = pieza
shows-piece = Las piezas de la n.º 4, una dentro de la otra.

word-position = Dónde está una pieza dentro de la bola, desde su centro: z hacia el pin, x e y hacia los lados, y cuánto está girada sobre cada uno.
    .name = posición
shows-position = El disco de la n.º 3 está por encima del centro de la bola, hacia el pin.

word-ball-diameter = Cuánto mide de ancho la bola terminada; las reglas apenas le dejan margen.
    .name = diámetro de la bola
shows-ball-diameter = De un lado al otro de la n.º 1.

word-cut = La cara plana que deja la sierra: girada alrededor del pin, inclinada o apartada del centro.
    .name = corte
shows-cut = La n.º 3, cortada por su pin y su centro.

word-hole = Un agujero taladrado para un dedo o para el pulgar, dicho por su ancho y su profundidad; lo que quita ya no cuenta.
    .name = agujero
shows-hole = Dos agujeros para los dedos y uno para el pulgar.

word-speed = Lo rápido que viaja la bola; deslizarse por la pista le quita una parte.
    .name = velocidad
shows-speed = Sale de la mano más rápido de lo que llega a los pinos.

word-time = Cuánto tarda la bola desde la línea de falta.
    .name = tiempo
shows-time = Desde la línea de falta, en un extremo, hasta los pinos, en el otro.

word-slip = Lo rápido que resbala el pie de la bola por la pista: cuando rueda, nada.
    .name = resbalón
shows-slip = Resbala mientras dura el deslizamiento y el gancho; donde rueda, ya no resbala.

word-axis-migration = Cuánto se ha movido dentro de la bola el eje sobre el que gira cuando llega a los pinos.
    .name = migración del eje
shows-axis-migration = Los anillos se mueven por la bola porque se mueve el eje.

word-pocket = El lugar junto al primer pino por donde debe entrar una bola, desde el lado de quien lanza.
    .name = bolsillo
shows-pocket = Por donde entra un buen tiro de una persona diestra.

word-published-limit = Lo que permiten las reglas del deporte, tal como las publica su organismo; una bola que se sale no puede usarse en competición.
    .name = límite publicado
shows-published-limit = La n.º 3 cumple todos los límites que se pueden calcular.

word-pour = Llenar una vez un molde con material líquido: cada pieza y la cubierta necesitan una, y en cada una se pierde algo.
    .name = colada
shows-pour = La n.º 6 es la que más coladas necesita de las bolas de la casa.

word-cost-index = Lo que cuesta hacer una bola al lado de otras: una colada sola vale 1, y se suman los moldes y las pérdidas; es una elección del modelo, no dinero.
    .name = índice de coste
shows-cost-index = Más piezas, más coladas y más moldes: la n.º 6 es la más cara de la casa.

word-search-start = Una bola desde la que empieza la búsqueda de un núcleo: cuantas más haya, más seguro es que no se escape una mejor.
    .name = punto de partida
shows-search-start = La bola del banco es el primer punto de partida; las demás son la misma con otras medidas y densidades.

word-tolerance = Cuánto puede apartarse una parte de su dibujo y seguir sirviendo.
    .name = tolerancia
shows-tolerance = Bolas n.º 3 coladas con pequeñas desviaciones, y qué tolerancia decide más si pasan.

word-scrap = Bolas que nadie puede vender porque se salen de un límite publicado; las de segunda cumplen los límites, pero no lo que promete quien las hace.
    .name = desecho
shows-scrap = Qué pasa con las bolas n.º 3 coladas con pequeñas desviaciones.

word-histogram = Un dibujo de muchos números a la vez: cuanto más alta es una barra, más bolas salieron ahí.
    .name = histograma
shows-histogram = El RG de bolas n.º 3, cada una colada con pequeñas desviaciones.

word-standard-deviation = A qué distancia de su media suelen quedar los números: la mayoría está más cerca, y casi ninguno tres veces más lejos.
    .name = desviación típica
shows-standard-deviation = El centro sombreado llega a una desviación típica a cada lado de la media.

word-percentile = El número por debajo del cual quedan tantas de cada cien bolas; con el 50 % por debajo es el del medio.
    .name = percentil
shows-percentile = Las líneas están donde quedan por debajo 1, 50 y 99 de cada 100 bolas n.º 3.

word-density = Lo pesado que es un material para su tamaño; el agua tiene 1 gramo por centímetro cúbico.
    .name = densidad
shows-density = El rayado distingue los materiales. El núcleo interior y el disco son los más densos.
