# Balls poured a little off: tolerances, how many pass, how every number spreads, what costs most.

scatter-title = Poured a little off: how many pass
scatter-says = No piece comes out exactly as drawn. Say how far each may stray: thousands of balls are poured within that, and the numbers of every one are worked out.
scatter-back = Usual ones
scatter-go = Pour { $balls } balls
scatter-pouring = Pouring { $balls } balls
scatter-stale = The ball or its tolerances have changed since. Pour again to see what that does.
scatter-balls = Balls
scatter-seed = Seed
scatter-seed-says = The same seed pours the same balls, here and on the command line.
scatter-stray = How they stray
scatter-stray-even = anywhere within, equally often
scatter-stray-bell = mostly near: within is three standard deviations

## How far every part may stray

stray-cover-density = Density of the cover, ±
stray-diameter = Ball diameter, ±
stray-density = Density, ±
stray-size = Size, ±
stray-tilt = Tilt, ±
stray-core-x = Whole core sideways x, ±
stray-core-y = Whole core sideways y, ±
stray-core-z = Whole core towards pin z, ±
stray-place-x = Place sideways x, ±
stray-place-y = Place sideways y, ±
stray-place-z = Place towards pin z, ±
stray-ball-and-cover = Ball and cover: { $says }
stray-every-piece = Every piece: { $says }
stray-piece = { $piece }: { $says }
stray-as-every = as every piece
stray-own = Tolerances of its own
stray-strangers = There are tolerances for { $pieces }, and no one piece of this ball is called that.
stray-drop = Drop them
# The name and the note of the file of the usual ones.
stray-usual = usual
stray-usual-note = Model choice, no source: each maker has tolerances of their own.
stray-exact = exact
stray-says-density = density ±{ $by }
stray-says-size = size ±{ $by }
stray-says-tilt = tilt ±{ $by }
stray-says-diameter = diameter ±{ $by }
stray-says-place = place ±{ $by }
stray-says-place-most = place ±{ $by } at most

## What is sold as good

accept-title = What is sold as good
accept-says = A ball within the published limits and outside one of these is sold as a second. Published limits count in any case.
accept-at-least = <number>{ $number }</number> at least
accept-at-most = <number>{ $number }</number> at most
accept-pin-to-cg = Pin to CG
accept-rg = RG off the recipe by at most
accept-differential = Differential off by at most
accept-intermediate = Intermediate differential off by at most
accept-low-rg-mark = Low-RG axis from the pin at most
accept-high-rg-mark = High-RG axis from its mark at most

## How many pass

shares-title = How many pass
shares-table = Passed, seconds and scrap
shares-share = { $share } ({ $low } to { $high }%)
shares-say = Of { $balls } balls { $passed } pass, { $seconds } would be sold as seconds and { $scrap } are scrap.
shares-none = none
shares-caption = Seed { $seed }; in brackets above, the <interval/>
shares-becomes = What becomes of them
shares-balls = Balls
shares-of-samples = <interval>95 % of samples</interval>, %
shares-passed = passed
shares-seconds = seconds
shares-scrap = scrap
shares-become-seconds = { $balls } become seconds: { $reason }.
shares-become-scrap = { $balls } become scrap: { $reason }.

## How every number spreads

spread-title = How every number spreads
spread-table = Every number
spread-number = Number
spread-recipe = Recipe
spread-mean = Mean
spread-deviation = Standard deviation
spread-below-1 = 1 % below
spread-below-50 = 50 % below
spread-below-99 = 99 % below
spread-good-from = Good from
spread-to = to
spread-from-to = from { $low } to { $high }
spread-from-up = from { $low } up
spread-up-to = up to { $high }
spread-histogram = Histogram: { $number }
spread-no-ball = No ball has this number.
spread-alike = All balls are alike: { $low }.
spread-nearly-alike = 98 of 100 balls are alike: { $low }.
spread-half-alike = Half of the balls are alike, { $low }, 98 of 100 between { $lowest } and { $highest }.
spread-half = Half of the balls lie between { $low } and { $high }, 98 of 100 between { $lowest } and { $highest }.
spread-sold = Sold as good { $range }.
spread-published = Published limit: { $range }.
spread-bars = Bars as a table
spread-bars-caption = How many balls lie where: the <histogram/> in numbers
spread-bar-from = From
spread-bar-to = To
spread-bar-balls = Balls

## Which tolerance costs most

costs-title = Which tolerance costs most
costs-measured-by = Measured by
costs-passing = whether a ball passes
costs-weight = the weight
costs-low-rg = the low RG
costs-differential = the differential
costs-intermediate = the intermediate differential
costs-top-weight = the top weight
costs-say = Most of what decides { $number } comes from { $first } ({ $share } with all it does together with others).
costs-say-two = Most of what decides { $number } comes from { $first } ({ $share } with all it does together with others), then from { $second } ({ $next }).
costs-table = Every tolerance, the dearest first
costs-caption = What part of the spread each tolerance causes <first>by itself</first>, and <total>with others</total>
costs-tolerance = Tolerance
costs-within = Within ±
costs-by-itself = <first>By itself</first>, %
costs-with-others = <total>With others</total>, %
costs-give-or-take = give or take
costs-only-dearest = Only the dearest { $shown }
costs-all = All { $all }
costs-note = The dark bar is by itself, the outlined one with others. Computed at { $points } points; small parts may come out a little below 0.
costs-nothing = Nothing varies here: every ball comes to the same.

## Beside another ball

beside-label = Beside another ball
beside-title = Beside another ball at the same tolerances
beside-beside = Beside
beside-pieces = { $count ->
        [one] one piece
       *[other] { $count } pieces
    }
beside-ball = { $ball } ({ $pieces })
beside-go = Pour both
beside-pouring = Pouring both
beside-share = { $share } of { $ball } ({ $pieces })
beside-both = At the same tolerances { $a } pass, and { $b }.
beside-better = { $ball } is the more robust: { $few }% of it fail, against { $many }%.
beside-close = That is too close to tell which is the more robust.
beside-fewer = Fewer things can stray: { $few } tolerances, against { $many }.
beside-table = Both balls
beside-same = At the same tolerances
beside-of-pieces = <pieces>pieces</pieces>
beside-can-stray = <tolerances>tolerances</tolerances> that can stray
beside-spread = { $number }, <deviation>standard deviation</deviation>
beside-note = Both with the tolerances of every piece; those of single pieces are left out. Weight and top weight may be as far from each ball's own recipe as from this one's.
