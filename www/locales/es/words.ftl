# Las palabras del oficio: cómo se llama cada una (`.name`) y qué quiere decir (`word-…`). Los nombres
# en español son los que usa este programa.

word-rg = Radio de giro: a qué distancia del eje está el peso, de media; cuanto mayor es, más cuesta hacer girar la bola.
    .name = RG

word-differential = La diferencia entre el RG más alto y el más bajo de la bola: cuánto prefiere la bola un eje, lo que permite que la huella se abra.
    .name = diferencial

word-intermediate-differential = La diferencia entre el RG más alto y el medio: cero en un núcleo redondo, más en uno asimétrico.
    .name = diferencial intermedio

word-cg = Centro de gravedad: el punto sobre el que toda la bola quedaría en equilibrio.
    .name = CG

word-top-weight = En una bola sin agujeros: cuánto se acerca su centro de gravedad al pin, dicho como el peso que hay que poner en el polo opuesto para equilibrarla; no todos los talleres lo cuentan igual.
    .name = peso superior

word-pin = El extremo del núcleo por donde pasa el eje de RG bajo, marcado en la cubierta para que quien taladra lo encuentre.
    .name = pin

word-pap = Punto del eje positivo: por donde el eje sobre el que gira la bola al soltarla sale de ella por el lado positivo.
    .name = PAP

word-mass-bias = El eje de RG alto de un núcleo asimétrico.
    .name = sesgo de masa

word-track-flare = La manera en que el anillo de aceite de la bola se corre con cada vuelta, de modo que toca la pista cubierta limpia; se mide por cuánto se desplaza el eje de giro sobre la bola.
    .name = abanico de la huella

word-board = Una de las 39 tiras que forman el ancho de la pista, de algo más de una pulgada (27 mm) cada una, contadas desde el lado de quien lanza.
    .name = tabla

word-breakpoint = El lugar donde la bola está más hacia el lado de quien lanza, antes de volver.
    .name = punto de quiebre

word-entry-angle = El ángulo con que viaja la bola al llegar a los pinos, medido desde la línea recta a lo largo de la pista.
    .name = ángulo de entrada

word-coverstock = El material exterior de la bola, el que toca la pista.
    .name = cubierta

word-flow-channel = Una ranura en una pieza por la que pasa el material que se cuela; se llena con lo que la rodea.
    .name = canal de flujo

word-puck = Una pieza plana y redonda, también llamada torta.
    .name = disco

word-hook = La parte del recorrido donde la bola se curva, porque su giro todavía no va con su marcha.
    .name = gancho

word-skid = La primera parte del recorrido, donde la bola se desliza y casi no se curva, sobre todo en el aceite.
    .name = deslizamiento

word-roll = La última parte del recorrido, donde la bola ya no resbala sobre la pista.
    .name = rodadura

word-axis-rotation = El ángulo del eje de giro visto desde arriba: con 0° la bola rueda hacia delante, con 90° gira de lado.
    .name = rotación del eje

word-axis-tilt = Cuánto apunta el eje de giro hacia arriba respecto a la horizontal.
    .name = inclinación del eje

word-rev-rate = Cuántas vueltas por minuto da la bola al soltarla.
    .name = revoluciones

word-drilling-angle = El ángulo en el pin entre la línea al PAP y la línea al sesgo de masa de un núcleo asimétrico o, si no lo hay, a la dirección que el Banco llama «hacia un lado, x».
    .name = ángulo de taladrado

word-start-turn = Cuánto está girada la bola sobre su eje de giro al soltarla; importa en una bola que no es igual por todos los lados.
    .name = giro inicial

word-launch-angle = La dirección en que sale la bola: 0° es recto a lo largo de la pista.
    .name = ángulo de salida

word-friction = Con cuánta fuerza frena la pista a la bola que se desliza: la fuerza lateral dividida por el peso de la bola. El aceite la hace pequeña.
    .name = fricción

word-grip-centre = El medio del agarre, a la mitad del espacio entre el pulgar y los dedos.
    .name = centro del agarre

word-span = A qué distancia están los dedos del pulgar, medida sobre la bola, de borde de agarre a borde de agarre, por dentro de los insertos: el span completo.
    .name = span

word-bridge = La tira de bola que queda entre los dos agujeros de los dedos.
    .name = puente

word-pitch = Por cuánto el eje de un agujero no pasa por el centro de la bola: hacia delante, el agujero se inclina bajo la palma; hacia atrás, se aleja de ella.
    .name = pitch

word-midline = La línea que pasa por el centro del agarre y lo cruza en ángulo recto.
    .name = línea media

word-val = Línea vertical del eje: la línea que pasa por el PAP y cruza la línea media en ángulo recto.
    .name = VAL

word-val-angle = El ángulo, en el PAP, entre la línea vertical del eje y la línea al pin: pequeño pone el pin por encima de los dedos, grande por debajo.
    .name = ángulo VAL

word-insert = Un tubo blando en un agujero de los dedos, o una funda en el del pulgar; el agujero se taladra más ancho para que quepa.
    .name = inserto

word-static-balance = Lo desigual que cuelga la bola taladrada alrededor de su agarre (arriba o abajo, dedos o pulgar, lado), tal como lo mostraría una balanza.
    .name = equilibrio estático

word-bow-tie = Uno de los dos lugares donde se cruzan los anillos de la huella y su banda es más estrecha.
    .name = corbatín

word-oil-pattern = El grosor del aceite en cada tabla, pie a pie, cuando la pista acaba de aceitarse.
    .name = patrón de aceite

word-film = La capa de aceite sobre las tablas, de unas milésimas de milímetro de grosor; un micrómetro (µm) es una milésima.
    .name = película

word-oil-ratio = Cuántas veces más gruesa es la película en las cinco tablas del medio que en las tablas 3 a 7; cuanto mayor es, más devuelve el patrón la bola a su sitio.
    .name = razón de aceite

word-taper = Cómo se adelgaza la película a lo largo de la pista: la parte de la primera película, la más gruesa, que queda antes del último tramo.
    .name = adelgazamiento

word-polyester = Una cubierta de plástico dura y lisa: la que menos fricción tiene.
    .name = poliéster

word-urethane = Una cubierta de plástico más blanda que agarra pronto, también en el aceite.
    .name = uretano

word-reactive = De uretano que se hace poroso al endurecer, una resina que agarra más que ninguna en las tablas secas.
    .name = reactiva

word-finish = Cómo se trabajó la superficie por última vez: cuanto más basto el grano, más áspera; el pulido la alisa.
    .name = acabado

word-grit = Lo fino que era el último abrasivo: 500 es áspero, 4000 casi liso.
    .name = grano

word-polish = Un líquido que se frota al final y deja la superficie más brillante y más lisa.
    .name = pulido

word-squash = Cambia la escala de la forma terminada a lo largo de sus ejes x e y: así una forma redonda se vuelve asimétrica.
    .name = aplastado

word-95-interval = Donde está la proporción verdadera en 95 de cada 100 muestras como esta: cuantas más bolas se cuelan, más estrecho es.
    .name = intervalo del 95 %

word-first-order = La parte de la dispersión que desaparecería, de media, si solo esto saliera exactamente como está dibujado.
    .name = primer orden

word-total-order = La parte de la dispersión que quedaría si todo menos esto saliera exactamente como está dibujado: por sí solo y junto con lo demás.
    .name = orden total

word-weight = Cuánto pesa: de una bola, toda ella, como marca la balanza; de una parte, su densidad por su volumen.
    .name = peso

word-volume = Cuánto espacio ocupa una parte dentro de la bola, sin sus cortes ni sus agujeros.
    .name = volumen

word-middle-rg = El RG sobre el eje que queda entre el más fácil y el más difícil: en un núcleo redondo, igual al RG alto.
    .name = RG medio

word-high-rg = El RG sobre el eje más difícil: allí el peso está más lejos.
    .name = RG alto

word-piece = Una de las partes que se vierten o se colocan dentro de la cubierta; sus medidas son las de su forma.
    .name = pieza

word-position = Dónde está una pieza dentro de la bola, desde su centro: z hacia el pin, x e y hacia los lados, y cuánto está girada sobre cada uno.
    .name = posición

word-ball-diameter = Cuánto mide de ancho la bola terminada; las reglas apenas le dejan margen.
    .name = diámetro de la bola

word-cut = La cara plana que deja la sierra: girada alrededor del pin, inclinada o apartada del centro.
    .name = corte

word-hole = Un agujero taladrado para un dedo o para el pulgar, dicho por su ancho y su profundidad; lo que quita ya no cuenta.
    .name = agujero

word-speed = Lo rápido que viaja la bola; deslizarse por la pista le quita una parte.
    .name = velocidad

word-time = Cuánto tarda la bola desde la línea de falta.
    .name = tiempo

word-slip = Lo rápido que resbala el pie de la bola por la pista: cuando rueda, nada.
    .name = resbalón

word-axis-migration = Cuánto se ha movido dentro de la bola el eje sobre el que gira cuando llega a los pinos.
    .name = migración del eje

word-pocket = El lugar junto al primer pino por donde debe entrar una bola, desde el lado de quien lanza.
    .name = bolsillo

word-published-limit = Lo que permiten las reglas del deporte, tal como las publica su organismo; una bola que se sale no puede usarse en competición.
    .name = límite publicado

word-pour = Llenar una vez un molde con material líquido: cada pieza y la cubierta necesitan una, y en cada una se pierde algo.
    .name = colada

word-cost-index = Lo que cuesta hacer una bola al lado de otras: una colada sola vale 1, y se suman los moldes y las pérdidas; es una elección del modelo, no dinero.
    .name = índice de coste

word-search-start = Una bola desde la que empieza la búsqueda de un núcleo: cuantas más haya, más seguro es que no se escape una mejor.
    .name = punto de partida

word-tolerance = Cuánto puede apartarse una parte de su dibujo y seguir sirviendo.
    .name = tolerancia

word-scrap = Bolas que nadie puede vender porque se salen de un límite publicado; las de segunda cumplen los límites, pero no lo que promete quien las hace.
    .name = desecho

word-histogram = Un dibujo de muchos números a la vez: cuanto más alta es una barra, más bolas salieron ahí.
    .name = histograma

word-standard-deviation = A qué distancia de su media suelen quedar los números: la mayoría está más cerca, y casi ninguno tres veces más lejos.
    .name = desviación típica

word-percentile = El número por debajo del cual quedan tantas de cada cien bolas; con el 50 % por debajo es el del medio.
    .name = percentil

word-density = Lo pesado que es un material para su tamaño; el agua tiene 1 gramo por centímetro cúbico.
    .name = densidad
