# Names and notes as the files of scenarios/ have them. An id is the kind and the English text in lower case
# with hyphens, apostrophes left out; of a note its first eight words.

## Balls

ball-no-1-simple = No. 1, simple
ball-no-2-two-piece = No. 2, two-piece
ball-no-3-three-piece = No. 3, three-piece
ball-no-4-nested-core = No. 4, nested core
ball-no-5-thick-cover = No. 5, thick cover
ball-no-6-five-piece = No. 6, five-piece

## Pieces

piece-cover = cover
piece-body = body
piece-pancake = pancake
piece-outer-core = outer core
piece-inner-core = inner core
piece-puck = puck
piece-lower-puck = lower puck
piece-disc = disc
piece-heart = heart
piece-core = core
piece-collar = collar
piece-cap = cap
piece-new-piece = new piece

## Cuts of a piece

cut-flow-channel = flow channel

## Holes and their linings

hole-middle-finger = middle finger
hole-ring-finger = ring finger
hole-thumb = thumb
hole-middle-finger-insert = middle finger insert
hole-ring-finger-insert = ring finger insert
hole-thumb-sleeve = thumb sleeve
hole-number = hole { $number }
hole-finger-hole = finger hole

## Materials

material-polyester = polyester
material-epoxy = epoxy
material-polyurethane = polyurethane
material-reactive-urethane = reactive urethane
material-resin-with-glass-microspheres = resin with glass microspheres
material-resin-with-glass-beads = resin with glass beads
material-resin-with-calcium-carbonate = resin with calcium carbonate
material-resin-with-barium-sulfate = resin with barium sulfate

## What a material is used for

use-covers-and-bodies = covers and bodies
use-covers = covers
use-outer-cores = outer cores
use-outer-cores-and-bodies = outer cores and bodies
use-bodies-and-inner-cores = bodies and inner cores
use-inner-cores-hearts-pucks-and-pancakes = inner cores, hearts, pucks and pancakes

## Where a density comes from (the marks of materials.json)

source-m = M
source-s-suppliers-data = S, supplier's data
source-c-resin-at-1-2-with-hollow-glass-microspheres-at-0-125-to-0-60-m = C, resin at 1.2 with hollow glass microspheres at 0.125 to 0.60 (M)
source-c-resin-at-1-2-with-up-to-half-its-volume-of-glass-beads-at-2-54-s-suppliers-data = C, resin at 1.2 with up to half its volume of glass beads at 2.54 (S, supplier's data)
source-c-resin-at-1-2-with-up-to-half-its-volume-of-calcium-carbonate-at-2-7-s-suppliers-data = C, resin at 1.2 with up to half its volume of calcium carbonate at 2.7 (S, supplier's data)
source-c-resin-at-1-2-with-up-to-six-tenths-of-its-volume-of-barium-sulfate-at-4-5-s-suppliers-data = C, resin at 1.2 with up to six tenths of its volume of barium sulfate at 4.5 (S, supplier's data)

## Layouts

layout-league-right-hander = League right-hander
layout-two-handed-left-hander = Two-handed left-hander

## Oil patterns

oil-dry = Dry
oil-flat = Flat
oil-house = House
oil-long = Long
oil-short = Short
oil-wet-dry = Wet-dry

## Shots

shot-drilled-for-a-hand = Drilled for a hand
shot-late-in-the-evening-dry-lane = Late in the evening, dry lane
shot-flat-pattern-tight-line = Flat pattern, tight line
shot-school-club-a-first-throw = School club, a first throw
shot-house-pattern-opening-shot = House pattern, opening shot
shot-league-night-high-revs = League night, high revs
shot-league-night-low-revs = League night, low revs
shot-league-night-medium-revs = League night, medium revs
shot-league-night-left-hander = League night, left-hander
shot-tournament-night-long-oil = Tournament night, long oil
shot-long-pattern-sanded-ball = Long pattern, sanded ball
shot-opening-shot = Opening shot
shot-short-pattern-from-the-outside = Short pattern, from the outside
shot-straight-at-the-corner-pin = Straight at the corner pin
shot-school-club-a-student = School club, a student
shot-two-handed-high-revs = Two-handed, high revs
shot-wet-dry-at-the-step = Wet-dry, at the step

## Targets

target-lower-rg-at-15-lb = Lower RG at 15 lb

## Notes of balls, layouts, oil, shots and targets

note-one-body-under-a-polyester-cover-and-a = One body under a polyester cover, and a dense pancake near the top. Its mass lies far out: it goes long and keeps its line.
note-a-light-outer-core-and-one-bulb-shaped = A light outer core and one bulb-shaped inner core. Medium in everything.
note-an-outer-core-a-tall-inner-core-and = An outer core, a tall inner core, and a puck set apart on top of it: low RG with a good deal of differential.
note-a-dense-heart-inside-the-inner-core-a = A dense heart inside the inner core. A channel round the inner core is there for the outer core to flow into.
note-no-outer-core-a-double-lobed-core-sits = No outer core: a double-lobed core sits straight in a thick cover.
note-an-outer-core-a-flattened-inner-core-with = An outer core, a flattened inner core with a heart in it, a collar round its waist and a cap on top. Asymmetric.
note-a-medium-layout-with-finger-inserts-and-a = A medium layout with finger inserts and a thumb sleeve; the pin above the fingers.
note-no-thumb-hole-two-finger-holes-with-inserts = No thumb hole; two finger holes with inserts, the pin below them.
note-a-lane-left-overnight-little-oil-and-that = A lane left overnight: little oil, and that short.
note-nearly-the-same-film-on-every-board-nothing = Nearly the same film on every board: nothing steers the ball back.
note-what-league-night-is-bowled-on-much-oil = What league night is bowled on: much oil in the middle, little outside board 8.
note-the-oil-goes-far-down-the-lane-the = The oil goes far down the lane: the ball has little of it left to turn in.
note-the-oil-ends-early-so-the-ball-is = The oil ends early, so the ball is played from far outside.
note-a-steep-step-at-board-10-slick-inside = A steep step at board 10: slick inside, dry outside.
note-the-opening-shot-a-board-further-in-with = The opening shot a board further in, with thumb and fingers drilled into the ball.
note-the-oil-is-worn-the-ball-hooks-early = The oil is worn: the ball hooks early and has to be thrown further out.
note-nearly-the-same-oil-on-every-board-straighter = Nearly the same oil on every board: straighter, for nothing brings a loose shot back.
note-set-down-with-no-aim-into-the-gutter = Set down with no aim: into the gutter.
note-the-opening-shot-on-oil-out-to-the = The opening shot on oil: out to the thin film by board 8, which brings it back.
note-many-revs-thrown-out-to-the-dry-boards = Many revs thrown out to the dry boards.
note-few-revs-and-little-angle-plays-straight-up = Few revs and little angle: plays straight up the boards.
note-a-league-bowlers-usual-shot = A league bowler's usual shot.
note-the-medium-shot-from-the-other-side = The medium shot from the other side.
note-less-room-to-miss-the-same-bowler-plays = Less room to miss: the same bowler plays straighter on a longer pattern.
note-long-oil-and-a-sanded-cover-that-does = Long oil and a sanded cover that does not wait for its end.
note-a-medium-hook-with-the-three-piece-ball = A medium hook with the three-piece ball on a house shot.
note-short-oil-played-near-the-edge-where-the = Short oil: played near the edge, where the ball has half the lane to turn in.
note-thrown-flat-across-the-lane-at-the-far = Thrown flat across the lane at the far corner with the simple ball.
note-slow-with-few-revs-a-small-hook-with = Slow, with few revs: a small hook with the simple ball.
note-both-hands-on-the-ball-a-great-many = Both hands on the ball: a great many revs with speed.
note-a-left-hander-along-board-10-where-the = A left-hander along board 10, where the oil ends sideways: the dry boards throw a loose shot back.
note-for-the-two-piece-ball-a-lower-rg = For the two-piece ball: a lower RG with the differential of a medium ball.
