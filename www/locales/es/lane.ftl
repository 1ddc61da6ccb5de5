# La Pista: qué hizo el tiro, sus dibujos, controles, números y gráficos.

## Qué hizo el tiro, en una frase

lane-phases =
    { $phases ->
        [skid-hook-roll] Desliza { $skid }, hace gancho durante { $hook } y rueda los últimos { $roll }
        [skid-hook] Desliza { $skid } y hace gancho durante { $hook }
        [skid-roll] Desliza { $skid } y rueda los últimos { $roll }
        [hook-roll] Hace gancho durante { $hook } y rueda los últimos { $roll }
        [skid] Desliza { $skid }
        [hook] Hace gancho durante { $hook }
        [roll] Rueda los últimos { $roll }
        [only-roll] Rueda todo el camino sin resbalar
        [only-skid] Desliza todo el camino y nunca llega a rodar
       *[none] Apenas pasa de la línea de falta
    }{ $slips ->
        [yes] , y al llegar a los pinos aún resbala
       *[no] {""}
    }
lane-at-board =
    { $hand ->
        [left] la tabla { $board }, contada desde la izquierda
       *[right] la tabla { $board }
    }
lane-did-gutter =
    { $side ->
        [left] { lane-phases }; luego cae en la canaleta izquierda a { $end } de la línea de falta.
       *[right] { lane-phases }; luego cae en la canaleta derecha a { $end } de la línea de falta.
    }
lane-did-stop = { lane-phases }; nunca llega a los pinos: no pasa de { $reach }.
lane-did-straight = { lane-phases }; entra recta, por { lane-at-board }.
lane-did-away = { lane-phases }; entra a { $angle } alejándose del lado del bolsillo, por { lane-at-board }.
lane-did-enter = { lane-phases }; entra a { $angle } por { lane-at-board }.

## Los dibujos

lane-reading = En la pista: los puntos y el tinte son aceite, más fuertes donde hay más; los trazos largos son deslizamiento, los cortos gancho y la línea continua rodadura; bola, pinos y flechas son marcas, no están a escala. En la bola: los anillos (fino, más grueso, grueso) muestran por dónde la ha tocado la pista, la cuña por dónde la toca ahora, el rombo el PAP, por donde el eje de giro salía de la bola al soltarla. Al final del recorrido hay una barra donde los anillos están más separados y un corbatín donde se cruzan.
lane-stale = <problem/> Se muestra el último tiro que estaba bien.
lane-above = La pista desde arriba
lane-moment = { $time }, { $distance }, { $phase }
lane-close = La bola de cerca, desde atrás y un poco desde arriba
lane-close-says = Anillos por donde la ha tocado la pista, a { $revs }. { $band }
lane-close-moment = { $speed }, { $revs }
lane-close-end = { $speed }, { $revs }; en la barra los anillos ocupan { $width } de ancho
lane-eye = La pista como la ve quien lanza
lane-eye-caption = Como la ve quien lanza, a escala real
lane-stretch = Dibujada { $times } veces más ancha de lo que es: los ángulos parecen mayores. <how>Cómo leer los dibujos</how>
lane-playing = Reproducción del tiro
lane-play = Reproducir
lane-pause = Pausa
lane-step-back = Un paso atrás
lane-step-on = Un paso adelante
lane-scrub = Momento del tiro
lane-rate = Velocidad de reproducción

## Lanzamiento y bola en la mano

lane-release = Lanzamiento
lane-hand = Mano
lane-right-hand = Mano derecha
lane-left-hand = Mano izquierda
lane-speed = <speed>Velocidad</speed>
lane-rev-rate = <revs>Revoluciones</revs>
lane-axis-rotation = <rotation>Rotación del eje</rotation>
lane-axis-tilt = <tilt>Inclinación del eje</tilt>
lane-launch-angle = <angle>Ángulo de salida</angle> a la derecha
lane-board = <board>Tabla</board>
lane-in-hand = La bola en la mano
lane-pin-to-pap = Del <pin>pin</pin> al <pap>PAP</pap>
lane-drilling-angle = <angle>Ángulo de taladrado</angle>
lane-start-turn = <turn>Giro inicial</turn>

## Tiros de ejemplo

lane-examples = Tiros de ejemplo
lane-example = Tiro de ejemplo
lane-throw-with-mine = Lanzarlo con mi bola
lane-throw-with-its-own = Con la suya: { $ball }

## Números

lane-entry = <entry>Ángulo de entrada</entry>
lane-entry-says = Según lo publicado, lo que mejor derriba es entrar en el bolsillo a entre 4° y 6°.
lane-board-at-pins = <board>Tabla</board> al llegar a los pinos
lane-board-at-pins-says = El bolsillo está cerca de la tabla 17,5.
lane-breakpoint = <breakpoint>Punto de quiebre</breakpoint>
lane-breakpoint-says = A qué distancia está más afuera.
lane-breakpoint-board = Tabla del <breakpoint>punto de quiebre</breakpoint>
lane-breakpoint-board-says = Cuánto se va hacia afuera.
lane-time = <time>Tiempo</time>
lane-time-says = Desde que se suelta hasta los pinos.
lane-speed-lost = <speed>Velocidad perdida</speed>
lane-speed-lost-says = Lo habitual es de { $least } a { $most }; práctica común, sin fuente.
lane-revs-at-pins = <revs>Rpm en los pinos</revs>
lane-revs-at-pins-says = La pista acelera el giro de la bola hasta que rueda.
lane-flare = <flare>Abanico</flare>
lane-flare-says = Cuánto se desplaza sobre la bola el eje sobre el que gira.
lane-migration = <migration>Migración del eje</migration>
lane-migration-says = Cuánto vaga el eje de giro por la bola.
lane-error = Al soltarla, { $revs }; los números en los pinos son exactos hasta { $board } tablas y { $angle }°.

## Por qué cambió el tiro

lane-why = ¿Por qué cambió el tiro?
lane-why-from-here = Medir desde aquí
lane-why-from-last = Desde el último cambio
lane-why-pinned = Se mide desde «{ $ball }» tal como se apartó; cambia lo que quieras y mira qué hace cada cambio.
lane-why-unpinned = Se mide desde antes de tu último cambio.
lane-why-before = tu tiro de antes
lane-why-now = Tu tiro ahora
lane-why-same = Cambia la bola, el lanzamiento o la pista, y aquí se dice cuánto de la diferencia pone cada cosa.

## Los anillos de la bola

lane-rings = Anillos en la bola ({ $rings })
lane-rings-says = Un anillo es el círculo que la pista dibuja sobre la bola en una vuelta. Los anillos se cruzan cerca de dos lugares, los <ties>corbatines</ties>, y entre ellos es donde más se separan.
lane-band-none = Menos de dos vueltas enteras: no hay banda de anillos que medir.
lane-band = { $rings } anillos; su banda mide { $widest } donde es más ancha y { $narrowest } donde es más estrecha, en un corbatín.
lane-passes-hole = La huella pasa a solo { $clearance } de un agujero: { $hole }.
lane-over-hole = La huella pasa por encima de un agujero, { $hole }: primero en la vuelta { $turn }. Ahí la bola haría un chasquido y perdería su línea; elige otro trazado.
lane-clear = A qué distancia pasa la huella de cada agujero
lane-clear-hole = Agujero
lane-clear-by = Pasa a
lane-clear-turn = En la vuelta
lane-clear-over =
    { $turns ->
        [one] por encima en { $turns } vuelta
       *[other] por encima en { $turns } vueltas
    }

## Antes y después de taladrar

lane-drilling = Este tiro antes y después de taladrar
lane-drilling-not-yet = La bola sin taladrar no se puede seguir con este tiro, o aún no ha rodado.
lane-drilling-table = El mismo tiro con la bola sin taladrar y taladrada
lane-undrilled = Sin taladrar
lane-drilled = Taladrada
lane-hook-starts = <hook>Empieza el gancho</hook>
lane-roll-starts = <roll>Empieza la rodadura</roll>

## Qué hacen el RG y el diferencial

lane-honest = Qué hacen aquí el RG y el diferencial
lane-honest-says = Soltada de la misma manera, una bola con menos <rg>RG</rg> es más fácil de hacer girar: toma revoluciones y rueda antes, así que se mueve antes. Pero guarda menos giro y, cuando las dos ruedan, acaba con un ángulo un poco menor. Una bola con más RG guarda su movimiento para más tarde. En el oficio se suele decir lo contrario.
lane-honest-other =
    { $other ->
        [before] la de antes
       *[other] la otra
    }
# Lo que hace una bola al lado de otra, tal como va en las frases que siguen.
lane-honest-does =
    { $rolls ->
        [never] todavía resbala al final, donde { lane-honest-other } ya rueda
        [alone] llega a rodar, mientras que { lane-honest-other } todavía resbala al final
        [sooner] rueda { $distance } antes{ lane-honest-angle }
        [later] rueda { $distance } después{ lane-honest-angle }
       *[same] rueda en el mismo lugar{ lane-honest-angle }
    }
lane-honest-angle =
    { $enters ->
        [same] {" "}y entra con el mismo ángulo
        [smaller] {" "}y entra con un ángulo { $angle } menor
        [larger] {" "}y entra con un ángulo { $angle } mayor
       *[none] {""}
    }
lane-honest-rg = El RG por sí solo, con este lanzamiento: de dos bolas con el peso de la tuya y núcleos redondos, de RG { $low } y { $high }, la de RG más bajo { lane-honest-does }.
lane-honest-core =
    { $moves ->
        [yes] El resto de tu núcleo: al lado de una bola de núcleo redondo con el mismo peso y el mismo RG medio, la tuya { lane-honest-does }. Eso lo hace el <differential>diferencial</differential>: por el camino, el eje de giro se desplaza { $migration } sobre la bola.
       *[no] El resto de tu núcleo: al lado de una bola de núcleo redondo con el mismo peso y el mismo RG medio, la tuya { lane-honest-does }. Eso lo hace el <differential>diferencial</differential>.
    }
lane-honest-last = Tu último cambio llevó el RG de { $before } a { $now }: ahora la bola { lane-honest-does }.

## Las fases en números

lane-phases-meaning = El orden deslizamiento, gancho, rodadura es el del estudio del movimiento de la bola del United States Bowling Congress. Dónde empieza cada una lo elige esta página: el gancho, donde el tirón lateral de la fricción llega por primera vez a la mitad de su valor mayor; la rodadura, donde se acaba el resbalón o queda por debajo de una cincuentava parte de la velocidad de la bola.
lane-phases-name = Deslizamiento, gancho y rodadura
lane-phases-label = Las fases en números
lane-phases-table = Lo que la bola pierde, gana y gira en cada una
lane-phase = Fase
lane-phase-from = Desde, { $unit }
lane-phase-to = Hasta
lane-phase-length = Largo
lane-phase-time = <time>Tiempo</time>, { $unit }
lane-phase-speed = <speed>Velocidad</speed>, { $unit }
lane-phase-revs = <revs>Revoluciones</revs>, { $unit }
lane-phase-turns = Gira el recorrido

## Gráficos

lane-charts = Gráficos por distancia: velocidad, revoluciones y { $more } más
lane-charts-ripples = Las ondas de una por vuelta son un centro de gravedad que no está en el medio y va dando vueltas.
lane-charts-table = Lo mismo en una tabla
lane-charts-by-distance = El tiro por distancia
lane-chart-speed = Velocidad
lane-chart-revs = Revoluciones
lane-chart-slip = Resbalón
lane-chart-bend = Curva del recorrido
lane-chart-rotation = Rotación del eje
lane-chart-tilt = Inclinación del eje
lane-chart-friction = Fricción encontrada
lane-chart-film = Aceite bajo la bola
lane-chart-title = { $name } por distancia
lane-chart-says = De { $from } al soltarla a { $to } al final.
lane-chart-says-mean = De media { $mean }.
lane-chart-ends = { $name }: de { $from } a { $to }
lane-chart-mean = { $name }: { $mean }
lane-chart-distance = Distancia, { $unit }
