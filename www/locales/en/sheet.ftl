# The take-home sheet: one page to hand over.

sheet-bowler = Bowler
sheet-bowler-name = name
sheet-date = Date
sheet-paper = Paper
sheet-letter-paper = US Letter
sheet-compare-with = Compare with
sheet-no-other = no other ball
sheet-on-shelf = On the shelf
sheet-from-house = From the house
sheet-weights-by = Other weights by
sheet-weights-by-a = A at other weights by
sheet-weights-by-b = B at other weights by
sheet-density-of = the density of { $part }
sheet-print = Print…
sheet-stays = Name and date stay in this tab until it is closed: they are not in the link. For a PDF, print to a file.
sheet-from-here = This page comes from this computer itself, so the code opens nowhere else.
sheet-last-good = { $problem } The sheet is of the last good ball and shot.
sheet-other-not-shown = The other ball cannot be shown. { $problem }
sheet-title = Sheet: { $ball }
sheet-title-two = Sheet: { $ball } and { $other }
sheet-this-ball = This ball
sheet-without-core = one without a core

## The page

sheet-for = For
sheet-a = A: { $ball }
sheet-b = B: { $ball }
sheet-inside = What is inside
sheet-on-lane = On the lane
sheet-which = Which for this bowler
sheet-why = Why this ball for this bowler
sheet-drilled-alike = A and B drilled alike; seen at the grip, fingers up.
sheet-of = { $letter }: { $what }
sheet-lane = Lane
sheet-lane-of = Lane of { $letter }
sheet-lane-above = The lane from above

## In numbers

sheet-numbers = The ball in numbers
sheet-weight = Weight
sheet-weight-says = What the arm lifts.
sheet-rg = RG
sheet-rg-says = How far out the weight sits: the larger, the harder to spin up.
sheet-called = Usually called { $band }.*
sheet-differential = Differential
sheet-differential-says = How strongly it prefers one axis: room for the track to move to fresh cover.
sheet-intermediate = Intermediate differential
sheet-intermediate-says = How far from round the core is about its pin.
sheet-asymmetric = Asymmetric.*
sheet-symmetric = Symmetric.*
sheet-top-weight = Top weight, undrilled
sheet-top-weight-says = How far its balance lies towards the pin before any hole.
sheet-cover = Cover, thinnest
sheet-cover-says = How deep the core lies below the surface.
sheet-cover-thinner = Thinner than usual: such covers crack or come away sooner.*
sheet-cover-usual = As usual.*
sheet-cover-thicker = Thicker than usual: such covers last longer.*
sheet-same = same

## Release, lane and drilling

sheet-release = { $hand ->
        [right] Right
       *[left] Left
    } hand, { $speed }, { $revs }; axis rotation { $rotation }, tilt { $tilt }; let go on board { $board } at { $launch }; pin to PAP { $pin }, drilling angle { $drilling }; { $lane }.
sheet-release-val = { $hand ->
        [right] Right
       *[left] Left
    } hand, { $speed }, { $revs }; axis rotation { $rotation }, tilt { $tilt }; let go on board { $board } at { $launch }; pin to PAP { $pin }, drilling angle { $drilling }, VAL angle { $val }; { $lane }.
sheet-zones = friction in { $many } zones
sheet-friction = friction { $zones }
sheet-zone-to = { $friction } to { $distance }
sheet-zone-then = { $first }, then { $next }
sheet-oil = oil pattern { $name }, { $volume } mL over { $length }
sheet-seen = Seen at the grip, fingers up; dashed: the vertical axis line.
sheet-pin-at = The pin is { $grip } from the grip centre and { $line } from that line.
sheet-drilled-out = The drill takes out { $out }: differential { $before } before, { $after } after.
sheet-balance = Static balance over the grip: { $top ->
        [more] top
       *[less] bottom
    } { $top-oz }, { $finger ->
        [more] finger
       *[less] thumb
    } { $finger-oz }, { $side ->
        [more] positive side
       *[less] negative side
    } { $side-oz }.

## Why this ball, or which of two

sheet-pocket-there = Boards { $from } to { $to } at { $flat }° to { $steep }° strike best (published studies, as reported). This shot comes in there.
sheet-pocket-off = Boards { $from } to { $to } at { $flat }° to { $steep }° strike best (published studies, as reported). This shot comes in { $off }.
sheet-short-of-it = { $one ->
        [yes] { $boards } board
       *[no] { $boards } boards
    } short of it
sheet-past-it = { $one ->
        [yes] { $boards } board
       *[no] { $boards } boards
    } past it
sheet-flatter = { $degrees }° flatter
sheet-steeper = { $degrees }° steeper
sheet-both = { $one } and { $other }
sheet-plain-short = A ball of one material, as large and of { $weight }, would not reach the pins with this release.
sheet-plain = A ball of one material, as large and of { $weight }, would come in at { $angle }° on board { $board } with this release.
sheet-little-flare = Its track hardly moves (flare { $flare }): nearly the same ring meets the lane at every turn.
sheet-flare = Its flare is { $flare }, so fresh cover meets the lane.
sheet-still-slips = It still slips at the pins: it has not spent all its hook.
sheet-rolls = It rolls without slip from { $distance } on: from there its direction hardly changes.
sheet-both-drilled = Both drilled alike for this hand, with the same release and lane.
sheet-both-laid = Both with the same release, layout and lane.
sheet-both-slip = Both still slip at the pins.
sheet-b-rolls = B rolls before the pins, A still slips there.
sheet-a-rolls = A rolls before the pins, B still slips there.
sheet-same-roll = Both begin to roll at the same place.
sheet-a-later = A begins to roll { $distance } later.
sheet-a-sooner = A begins to roll { $distance } sooner.
sheet-rg-lower = its RG is { $much } lower, so it is easier to spin up
sheet-rg-higher = its RG is { $much } higher, so it is harder to spin up
sheet-differential-larger = its differential is { $much } larger
sheet-differential-smaller = its differential is { $much } smaller
sheet-flares = its flare is { $a }, that of B { $b }
sheet-list = { $one }; { $other }
sheet-of-a = Of A, { $what }.
sheet-for-flare = The flare of A is { $a }, that of B { $b }.
sheet-hook-from = Hook is counted from the breakpoint to the pins.

## At other weights

sheet-working = Working out the other weights …
sheet-weights = At other weights
sheet-by-density = By the density of { $parts }, all else as it is
sheet-by-density-drilled = By the density of { $parts }, all else as it is, before drilling
sheet-by-both = By the density of { $a } in A, of { $b } in B
sheet-by-both-drilled = By the density of { $a } in A, of { $b } in B, before drilling
sheet-head-weight = <weight>Weight</weight>
sheet-head-density = <density>g/cc</density>
sheet-head-rg = <rg>RG</rg>, { $unit }
sheet-head-differential = <differential>Diff.</differential>, { $unit }
sheet-head-rg-of = { $letter }: <rg>RG</rg>, { $unit }
sheet-not-so = cannot be made so
sheet-neither = { $weights }: neither can be made so.
sheet-unlikely = { $mark } Its material hardly has the density for it.
sheet-note-at = { $letter } at { $note }

## Link and cautions

sheet-open-again = Open it again
sheet-this = this ball and shot
sheet-that = { $letter } with this shot
sheet-no-link = There is no link to { $which }: { $why }
sheet-scan = Scan to open { $which } on Pithball, or go to <link/>
sheet-scan-only = Scan to open { $which } on Pithball. The link itself, { $characters } characters, is too long to type: it is behind the code in a PDF.
sheet-link-only = The link to { $which } is too much for a code that can be scanned: <link/>
sheet-link-too-long = The link to { $which }, { $characters } characters, is too much for a code and too long to print: ask for the file of Save shot.
sheet-link-to = Link to { $which }
sheet-limits = Against the published limits:
sheet-limits-of = { $letter } { $limits }
sheet-limits-within = { $within } within.
sheet-limits-outside = { $within } within, outside: { $outside }.
sheet-limits-close = { $within } within, too close to tell: { $close }.
sheet-limits-both = { $within } within, outside: { $outside }, too close to tell: { $close }.
sheet-caution = <b>Caution:</b> { $what }
sheet-caution-of = <b>Caution, { $letter }:</b> { $what }
sheet-care = Leave drilling to a qualified pro shop: cutting throws hot, sharp chips and dust. Lift with care: a ball weighs up to { $most }. The rules in force decide what may be used in play, and a laboratory measures what is not computed here. All numbers are computed by Pithball from this recipe and release; a real ball and lane differ. * Common practice, no source.
