# Lo que está escrito en los dibujos de la pista, la bola y el trazado.

draw-skid = deslizamiento
draw-hook = gancho
draw-roll = rodadura
draw-gutter = a la canaleta
draw-breakpoint = punto de quiebre, tabla { $board }
draw-pin = pin
draw-opposite-pin = opuesto al pin
draw-pap = PAP
draw-bow-tie = corbatín
draw-midline = línea media
draw-val = VAL
draw-grip-centre = centro del agarre
draw-mass-bias = sesgo de masa
draw-layout = El trazado, visto de frente al agarre con los dedos hacia arriba
draw-layout-says = Visto de frente al agarre con los dedos hacia arriba: el pin está { $pin }, a { $pin-to-grip } del centro del agarre y a { $pin-to-val } de la línea vertical del eje; el PAP está { $pap }, a { $pap-to-grip }; el lado del sesgo de masa está { $bias }. Agujeros: { $holes }.
# Dónde está una marca, tal como va en la frase de arriba.
draw-layout-where =
    { $up ->
        [above]
            { $across ->
                [right] arriba y a la derecha
                [left] arriba y a la izquierda
               *[middle] arriba
            }
        [below]
            { $across ->
                [right] abajo y a la derecha
                [left] abajo y a la izquierda
               *[middle] abajo
            }
       *[middle]
            { $across ->
                [right] a la derecha
                [left] a la izquierda
               *[middle] en el medio
            }
    }{ $side ->
        [far] , en el lado oculto
       *[near] {""}
    }

draw-close = El último tercio de la pista, más de cerca
draw-stretch = Dibujada { $wide } veces más ancha de lo que es.
draw-stretch-both = Dibujada { $wide } veces más ancha de lo que es; de cerca, { $close } veces.
