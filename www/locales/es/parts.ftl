# Campos, palabras y botones que comparten muchos espacios.

parts-not-a-number = Todavía no es un número; se sigue usando { $value }.
parts-only = Solo de { $low } a { $high }; se sigue usando { $still }.
parts-only-whole = Solo un número entero de { $low } a { $high }; se sigue usando { $still }.
parts-drawn = Verlo dibujado<word>: { $word }</word>
parts-stopped = Detenido.
parts-stop = Detener
parts-working = { $doing }… { $percent }{"\u00A0"}%
parts-not-done = No se pudo calcular. El navegador dijo: { $why }. Todo lo demás de la página sigue.
parts-again = Probar de nuevo

# Qué es la cubierta y qué acabado tiene

surface-what = Qué es y qué <finish>acabado</finish> tiene
surface-family = Familia
surface-not-said = sin indicar
surface-polyester = poliéster
surface-urethane = uretano
surface-reactive = reactiva
surface-finish = Acabado
surface-sanded = lijado
surface-polished = lijado y luego pulido
surface-grit = Grano
surface-says-oil = <polyester>Poliéster</polyester>, <urethane>uretano</urethane> o <reactive>reactiva</reactive>; con <polish>pulido</polish> o sin él. En una pista con aceite esto cambia la <friction>fricción</friction>, con factores que son una elección del modelo: no hay cifras publicadas.
surface-says-zones = <polyester>Poliéster</polyester>, <urethane>uretano</urethane> o <reactive>reactiva</reactive>; con <polish>pulido</polish> o sin él. En una pista con aceite esto cambia la <friction>fricción</friction>. La pista de este tiro tiene la fricción dada por distancia, tal cual: ahí la cubierta no cambia nada.
