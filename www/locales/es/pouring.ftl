# Cómo se cuela la bola y qué cuesta eso.

pouring-title = Cómo se cuela, y qué cuesta eso
pouring-lost = Lo que se pierde de cada <pour>colada</pour>
pouring-told = { $pours ->
        [one] { $pours } colada
       *[other] { $pours } coladas
    }, { $moulds ->
        [one] { $moulds } molde
       *[other] { $moulds } moldes
    }; se mezclan { $mixed }.
pouring-possible = Nada impide colarla.
pouring-impossible = Tal como está, no se puede colar en este orden.
pouring-limits = Cuentan los límites publicados: ninguna parte de más de { $density }, y sin huecos.
pouring-table = Las coladas en su orden
pouring-caption = Lo que se cuela primero va primero
pouring-pour = Colada
pouring-round = Alrededor de
pouring-mould = Molde
pouring-density = Densidad
pouring-volume = Volumen
pouring-mixed = Mezcla
pouring-channels = Canales
pouring-cost = Coste relativo
pouring-this-ball = Esta bola: { $index }, donde una colada por sí sola es 1.
pouring-sum = De qué se suma el coste
pouring-sum-caption = <index>Índice de coste</index> de esta bola
pouring-what = Qué
pouring-count = Cuántos
pouring-each = Cada uno
pouring-each-cost = Coste
pouring-all = todo
pouring-chart = Índice de coste de esta bola y de las bolas de la casa
pouring-bar = { $ball }: { $index }
pouring-every = Índice de coste de cada bola
pouring-every-caption = Las barras en números: lo que cada parte añade al <index>índice</index>
pouring-ball = Bola
pouring-dearest = De estas, { $first } es la más cara, { $index }; le sigue { $second }, { $next }. De lo que tiene más: { $more }.
pouring-more = { $what }, { $count } frente a { $others } (+{ $by })
