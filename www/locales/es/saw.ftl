# La Sierra: la bola aserrada.

saw-picture = Imagen
saw-solid = Sólido
saw-drawing = Dibujo
saw-two-cuts = Dos cortes
saw-cover = Cubierta
saw-no-part = Ninguna parte elegida.
saw-flat-instead = Este navegador no puede dibujar en tres dimensiones (sin WebGL2); en su lugar está el dibujo plano del mismo corte.
saw-map-instead = Este navegador no puede dibujar en tres dimensiones (sin WebGL2); en su lugar está un mapa plano.
saw-show-cover = Mostrar la cubierta
saw-on-ball = Sobre la bola
saw-as-map = Como mapa
saw-click-finger = Toca una parte, en la imagen o en la lista, para saber qué es.
saw-click = Haz clic en una parte, en la imagen o en la lista, para saber qué es.
saw-whole-ball = La bola está entera: elige un corte para ver su dibujo.
saw-turn-and-zoom = Girar y acercar la imagen
saw-turn-left = Girar a la izquierda
saw-turn-right = Girar a la derecha
saw-higher = Mirar desde más arriba
saw-lower = Mirar desde más abajo
saw-zoom-in = Acercar
saw-zoom-out = Alejar
saw-face-cut = De frente al corte
saw-drag-finger = Arrastra para girar; con dos dedos, acerca.
saw-drag = Arrastra para girar; haz clic en la bola y luego la rueda acerca.
saw-save-section = Guardar el corte como SVG
saw-save-picture = Guardar la vista 3D como PNG

## Partes

saw-parts = Partes
saw-show-part = Mostrar: { $part }
saw-shown = visible
saw-marks = Marcar el pin, el centro de gravedad y los ejes de RG bajo y alto
saw-marks-drilled = Marcar el pin, el centro de gravedad, los ejes de RG bajo y alto, el PAP y el centro del agarre
saw-part-cover = cubierta
saw-part = { $part }: { $density }. Pesa { $weight } y aporta el { $share } del RG de la bola.
saw-part-material = { $part }: { $material }, { $density }. Pesa { $weight } y aporta el { $share } del RG de la bola.
saw-mark-pin = pin
saw-mark-cg = CG
saw-mark-low-rg = RG bajo
saw-mark-high-rg = RG alto
saw-mark-pap = PAP
saw-mark-grip-centre = centro del agarre

## El corte

saw-cut = <cut>Corte</cut>
saw-through-holes = Por los agujeros
saw-along = A lo largo del pin
saw-across = Transversal
saw-aslant = Fuera del eje
saw-whole = Entera
saw-other-half = La otra mitad
saw-depth = Profundidad
saw-turn = Giro
saw-lean = Inclinación
saw-pull-apart = Separar las piezas

## Cómo está el plano: completa «cortada …» y «corte …»

saw-plane-across = en perpendicular al eje del pin, { $at ->
        [centre] por el centro
       *[off] a { $distance } del centro
    }
saw-plane-along = a lo largo del eje del pin, { $at ->
        [centre] por el centro
       *[off] a { $distance } del centro
    }
saw-plane-along-turned = a lo largo del eje del pin, con un giro de { $turn }° alrededor de él, { $at ->
        [centre] por el centro
       *[off] a { $distance } del centro
    }
saw-plane-aslant = a { $lean }° del eje del pin, { $at ->
        [centre] por el centro
       *[off] a { $distance } del centro
    }
saw-plane-aslant-turned = a { $lean }° del eje del pin, con un giro de { $turn }° alrededor de él, { $at ->
        [centre] por el centro
       *[off] a { $distance } del centro
    }

## El corte en palabras

saw-passes-by = El plano pasa de largo: no corta nada de la bola.
saw-is-cut = La bola está cortada { $plane }.
saw-from-top = Desde lo alto del corte hasta su centro: { $layers }.
saw-from-side = Desde su lado derecho hasta el centro: { $layers }.
saw-layer = { $part } { $thickness }
saw-layers = { $first }, luego { $next }
saw-drilled-hole = agujero taladrado
saw-areas = Área de cada parte en el <cut>corte</cut>
saw-narrowest = En este corte, la cubierta mide { $thickness } donde es más delgada.
saw-narrowest-askew = En este corte, la cubierta parece medir { $thickness } donde es más delgada; fuera del centro la sierra la encuentra en sesgo, así que es más delgada de lo que parece.
saw-section-title = Sección de { $ball }, corte { $plane }
saw-section-shows = De la mayor área a la menor se ve: { $parts }.

## Dos cortes

saw-cut-caption = Corte { $plane }
saw-two-cuts-say = Una bola, un núcleo, dos cortes de sierra a la misma escala. Las partes difieren en { $area } de cara cortada, y nada ha cambiado en la bola. Esto engaña una y otra vez a la gente del oficio: antes de decir que dos núcleos son distintos, pregunta cómo se cortó cada uno.
saw-second-cut = Segundo corte
saw-quarter = Un cuarto de vuelta más
saw-beside = Al lado del centro

## En tres dimensiones

saw-3d-picture = Imagen en 3D
saw-3d-ball = La bola aserrada. Las flechas la giran; más y menos acercan y alejan.
saw-3d-cover = El grosor de la cubierta sobre la bola. Las flechas la giran; más y menos acercan y alejan.
saw-3d-lost = La tarjeta gráfica soltó la imagen en 3D. Tu bola está a salvo; la imagen vuelve sola cuando vuelva la tarjeta. Hasta entonces, Dibujo, arriba, muestra el mismo corte.
