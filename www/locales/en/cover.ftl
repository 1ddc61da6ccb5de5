# The cover: how thick it is and what that means.

cover-measuring = Measuring the cover …
cover-in-practice-note = * Common practice, no source. The numbers are computed from this ball.
cover-map = Map of the cover of { $ball }
cover-here = Here, { $place }: { $thickness }.
cover-click-finger = Tap the ball to read the thickness there.
cover-click = Click the ball to read the thickness there.
cover-cut = Cut through the thinnest place
cover-along-radius = <coverstock>Thickness of the cover</coverstock> along the radius
cover-thinnest-mark = thinnest, { $thickness }
cover-at-pin = at the pin
cover-opposite-pin = opposite the pin
cover-at-plus-x = at +x
cover-at-minus-x = at −x
cover-at-plus-y = at +y
cover-at-minus-y = at −y
cover-at-angles = { $down }° down from the pin, { $round }° round from the ball's +x
cover-all-round = all round at { $down }° down from the pin
cover-hole-here = a hole
cover-to-centre = cover to the centre

## Colours of the map

cover-by-colour = Thickness of the cover by colour
cover-hole = hole
cover-under = under { $limit } { $unit }
cover-or-more = { $limit } { $unit } or more
cover-range = { $from } to { $to } { $unit }

## What is computed

cover-no-piece = There is no piece in this ball: it is cover all through.
cover-none-there = The { $piece } comes to the surface { $place }: there is no cover there.
cover-thinnest = The cover is { $thickness } at its thinnest, over the { $piece }, { $place }.
cover-thinnest-error = The cover is { $thickness } (at most { $error } less) at its thinnest, over the { $piece }, { $place }.
cover-thin-all-over = The cover is { $thickness } at its thinnest, over the { $piece }, and as thin all over.
cover-thin-all-over-error = The cover is { $thickness } (at most { $error } less) at its thinnest, over the { $piece }, and as thin all over.
cover-mean-all-thin = On average it is { $mean }; all of the surface has less than { $least }.
cover-mean = On average it is { $mean }; { $under ->
        [all] all
        [none] none
       *[some] { $under-share }
    } of the surface has less than { $least }, { $over ->
        [all] all
        [none] none
       *[some] { $over-share }
    } of it less than { $most }.
cover-pieces = The pieces under it fill { $share } of the ball. The { $piece } beneath is of { $density }, the cover of { $cover }.

## Beside holes

cover-drilled-to-core = { $hole }: the drill leaves the cover { $depth } down.
cover-all-round-hole = { $hole }: cover all round it.
cover-opens-into-core = { $hole }: its wall opens into the core.
cover-to-core = { $hole }: { $thickness } of cover between it and the core.
cover-holes-meet = { $one } and { $other } meet inside the ball.
cover-between-holes = Between { $one } and { $other }: { $least } at the least, { $depth } below the surface.

## Common practice

cover-thinner = That is thinner than the { $least } to { $most } of common balls. A thin cover over a big core tends to come away and crack with age.*
cover-usual = That is within the { $least } to { $most } of common balls. A thin cover over a big outer core tends to come away and crack with age, so the thin end of that range lasts less long.*
cover-usual-in-part = That is within the { $least } to { $most } of common balls, and only near the { $piece }: most of the ball has more, which lasts longer.*
cover-core = core
cover-thicker = That is more than the { $least } to { $most } of common balls, as is usual where a core sits in the cover with no outer core between: a thicker cover lasts longer.*
cover-no-core = There is no core for the cover to come away from.*
