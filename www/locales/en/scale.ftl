# The Scale: the ball's numbers.

scale-weight = <weight>Weight</weight>
scale-rg = <rg>RG</rg> about the easiest axis
scale-how-hard = How hard the ball is to spin.
scale-called = Usually called { $band }.
scale-limits-from = The published limits are for balls of { $weight } and up.
scale-middle = Middle<aloud> axis</aloud>
scale-hardest = Hardest<aloud> axis</aloud>
scale-differential = <differential>Differential</differential>, room for <flare>flare</flare>
scale-intermediate = <intermediate>Intermediate differential</intermediate>
scale-asymmetric = Asymmetric: over { $percent } % of the differential.*
scale-symmetric = Symmetric: not over { $percent } % of the differential.*
scale-cg = <cg>CG</cg> off the centre by
scale-cg-centre = It sits at the centre of the ball.
scale-cg-to-pin = It lies straight towards the pin.
scale-cg-from-pin = It lies straight away from the pin.
scale-cg-towards = It lies towards the pin and to one side.
scale-cg-away = It lies away from the pin and to one side.
scale-cg-aside = It lies to one side.
scale-top-weight = <top-weight>Top weight</top-weight>
scale-top-weight-before = <top-weight>Top weight</top-weight> before drilling
scale-top-weight-usual = Towards the pin. Undrilled balls usually have { $low } to { $high }.*
scale-what-it-does = What these numbers do to a shot
scale-does-rg = For the same release, a lower RG revs up and rolls sooner, and once it rolls it ends at a slightly smaller angle: it has less spin stored. A higher RG saves its motion for later. Trade talk often says otherwise.
scale-does-differential = Differential lets the spin axis wander in the ball, so that the track moves to fresh cover. Whether that by itself changes the hook is disputed in print.
scale-does-studies = Published studies put the surface and the friction first, then RG and differential, and the centre of gravity far behind.
scale-does-top-weight = Top weight has no single convention. Here it is what must be set on the pole opposite the pin to balance the undrilled ball on its centre, the arm being its radius. Once drilled, its static balance over the grip counts instead: over { $weight } a ball may have { $limit } each way, as published.
scale-does-no-limit = No published limit for the intermediate differential alone was found.
scale-common-practice = * Common practice, no source; so are the words low, medium and high. The thick part of a line is what the published limits allow.
scale-limits = Limits: United States Bowling Congress, as published in its notices; the current edition of the rules decides. Pithball teaches; it does not certify a ball.
scale-bound-least = The program's own bound on the error of mass and inertia: less than one part in a million million.
scale-bound = The program's own bound on the error of mass and inertia: about one part in { $size ->
        [thousand-million] { $parts } thousand million
        [million] { $parts } million
       *[ones] { $parts }
    }.

## Limits passed

scale-within = Within the published limit of { $limit }.
scale-within-range = Within the published { $low } to { $high }.
scale-below = Below the published limit of { $limit }.
scale-below-range = Below the published { $low } to { $high }.
scale-over = Over the published limit of { $limit }.
scale-over-range = Over the published { $low } to { $high }.
scale-just-below = Below the published limit of { $limit }, by less than the last digit shown.
scale-just-below-range = Below the published { $low } to { $high }, by less than the last digit shown.
scale-just-over = Over the published limit of { $limit }, by less than the last digit shown.
scale-just-over-range = Over the published { $low } to { $high }, by less than the last digit shown.

## Published limits

scale-published = Published limits
scale-published-counts = { $within } within, { $outside } outside, { $measured } that only a measurement tells.
scale-published-counts-close = { $within } within, { $outside } outside, { $close } too close to tell, { $measured } that only a measurement tells.
scale-limits-kept = Within all published limits that can be computed.
scale-limits-passed = Not within the published limits: { $rules }.
scale-limits-close = Too close to a published limit to tell: { $rules }.
scale-every-rule = Every rule
scale-rule-within = within
scale-rule-outside = outside
scale-rule-close = too close to tell
scale-rule-not-for = not for this ball
scale-rule-not-computed = cannot be computed here
scale-rule-for = For { $balls }.
scale-rule-source = { $source }; { $edition }.
scale-rule-range = { $least } to { $most }
scale-rule-least = { $least } or more
scale-rule-most = { $most } or less
scale-rule-allowed = allowed: { $allowed }
scale-rule-found = { $found }; allowed: { $allowed }

## Where the RG comes from

scale-shares = Where the <rg>RG</rg> comes from
scale-shares-table = Weight, volume and share of the RG of every part
scale-part = Part
scale-shares-weight = Weight
scale-shares-volume = Volume
scale-shares-rg = RG share
scale-shares-how = A part counts by its weight and by the square of its distance from the centre, all three axes taken together.
scale-shares-one = Here there is one part, so all of the RG comes from it.
scale-shares-further = Here the { $part } has the largest share: { $rg } of the RG with { $weight } of the weight, because it sits further out than the rest.
scale-shares-closer = Here the { $part } has the largest share: { $rg } of the RG with { $weight } of the weight; it sits closer in than the rest, and has so much by being heavy.
scale-shares-even = Here the { $part } has the largest share: { $rg } of the RG, as much as it has of the weight.

## What the holes change

scale-holes-change = What the holes change
scale-holes-table = The ball before and after drilling
scale-before = Before
scale-after = After
scale-low-rg = Lowest RG
scale-middle-rg = Middle RG
scale-high-rg = Highest RG
scale-holes-weight = Weight
scale-holes-differential = Differential
scale-holes-intermediate = Intermediate
scale-drilled-out = The drill takes out { $out } here; about { $usual } is usual (common practice, no source), and RG and differential are reported to change by about 5 %.
scale-balance = <balance>Static balance</balance> over the grip
scale-balance-allowed = <balance>Static balance</balance> over the grip, allowed { $limit } each way
scale-side = Side
scale-side-weight = Weight
scale-verdict = Verdict
scale-top = Top
scale-bottom = Bottom
scale-finger = Finger
scale-thumb = Thumb
scale-positive-side = Positive side
scale-negative-side = Negative side
scale-no-limit = no limit for this ball
scale-balance-source = { $source }; { $edition }. The scale's arm is the ball's radius.
scale-low-axis-moved = The low-RG axis moved { $angle }, { $distance } on the surface.
scale-high-axis-moved = The high-RG axis moved { $angle }, { $distance } on the surface.
scale-low-axis-none = The drilled ball has no one low-RG axis.
scale-high-axis-none = The drilled ball has no one high-RG axis.
scale-low-axis-new = Before, the ball had no one low-RG axis; now it comes out { $pin } from the pin and { $pap } from the PAP.
scale-high-axis-new = Before, the ball had no one high-RG axis; now it comes out { $pin } from the pin and { $pap } from the PAP.

## Will the cover last?

scale-cover-last = Will the cover last?
scale-cover-thinnest = Thinnest place
scale-cover-no-core = no core
scale-cover-mean = Mean
scale-cover-under = Surface with under { $limit }
scale-cover-pieces = Ball filled by pieces
scale-cover-numbers = The cover in numbers
scale-cover-not-told = What no drawing tells: how well the <coverstock>coverstock</coverstock> holds to the core, heat, and wear. The Saw shows the thickness all over under Cover.

## At other weights

scale-line = This ball at other weights
scale-line-makers = Makers lighten or load one piece, or two in proportion, and keep the rest.
scale-line-undrilled = All weights here are before drilling.
scale-line-changes = What changes
scale-line-together = Together with
scale-line-nothing-else = nothing else
scale-line-in-proportion = { $part }, in proportion
scale-line-how = How
scale-line-by-density = by its density
scale-line-by-size = by its size
scale-line-spans = It can be made so from { $light } (low RG { $light-rg }) to { $heavy } (low RG { $heavy-rg }).
scale-line-spans-usual = It can be made so from { $light } (low RG { $light-rg }) to { $heavy } (low RG { $heavy-rg }) with densities that its material has.
scale-line-none-usual = With densities that its material has, it cannot be made so at any weight.
scale-line-none = It cannot be made so at any weight.
scale-line-working = Working it out …
scale-line-table = The ball at other weights
scale-line-caption = The ball at each weight by the { $by ->
        [size] size
       *[density] density
    } of { $parts }
scale-line-and = { $first } and { $second }
scale-line-weight = Weight
scale-line-size-times = Size, times
scale-line-low-rg = Low RG
scale-line-middle-rg = Middle RG
scale-line-high-rg = High RG
scale-line-differential = Differ­ential
scale-line-top-weight = Top weight
scale-line-not-so = cannot be made so: see below.
scale-line-note = { $weight }: { $note }
scale-line-material = { $weights }: outside what { $material } usually has ({ $density } g/cc) for { $part }.
scale-line-range = { $low } to { $high }
scale-line-limit = { $weights }: outside the published limit of { $limit }.
scale-line-floats = A ball of this volume floats in water if it weighs less than { $weight }.
scale-line-some-float = A ball of this volume floats in water if it weighs less than { $weight }: of these, at { $floating }.
scale-line-chart = Low to high RG ({ $rg }) by weight ({ $weight }): the longer a bar, the larger the differential. Dashed: the published limits, for { $from } and up.
scale-line-cards = The balls side by side
scale-line-cards-saw = Side by side, cut as the saw cuts, all to one scale:
scale-line-cards-along = Side by side, cut along the pin, through the centre, all to one scale:
scale-line-size = size × { $factor }
scale-line-to-bench = To the bench
scale-line-to-bench-ball = To the bench: { $ball }
