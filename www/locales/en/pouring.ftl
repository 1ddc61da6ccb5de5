# How the ball is poured and what that costs.

pouring-title = How it is poured, and what that costs
pouring-lost = Lost of each <pour>pour</pour>
pouring-told = { $pours ->
        [one] { $pours } pour
       *[other] { $pours } pours
    }, { $moulds ->
        [one] { $moulds } mould
       *[other] { $moulds } moulds
    }, { $mixed } mixed.
pouring-possible = Nothing stands in the way of pouring it.
pouring-impossible = It cannot be poured in this order as it is.
pouring-limits = Published limits count: no part over { $density }, and no voids.
pouring-table = Pours in their order
pouring-caption = What is poured first stands first
pouring-pour = Pour
pouring-round = Round
pouring-mould = Mould
pouring-density = Density
pouring-volume = Volume
pouring-mixed = Mixed
pouring-channels = Channels
pouring-cost = Relative cost
pouring-this-ball = This ball: { $index }, where a pour by itself is 1.
pouring-sum = What the cost is the sum of
pouring-sum-caption = <index>Cost index</index> of this ball
pouring-what = What
pouring-count = Count
pouring-each = Each
pouring-each-cost = Cost
pouring-all = all
pouring-chart = Cost index of this ball and the balls of the house
pouring-bar = { $ball }: { $index }
pouring-every = Cost index of every ball
pouring-every-caption = The bars in numbers: what each part adds to the <index>index</index>
pouring-ball = Ball
pouring-dearest = Of these { $first } is the dearest, { $index }; next comes { $second }, { $next }. What it has more of: { $more }.
pouring-more = { $what }, { $count } against { $others } (+{ $by })
