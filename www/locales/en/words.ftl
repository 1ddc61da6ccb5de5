# The trade's words: what each is called (`.name`) and what it means (`word-…`), and what its
# picture in the glossary shows (`shows-…`).

word-rg = Radius of gyration: how far from the axis the weight sits on average; the larger it is, the harder the ball is to spin up.
    .name = RG
shows-rg = The dense heart lies on the axis of No. 4, so its RG is low.

word-differential = The difference between the ball's highest and lowest RG: how strongly the ball prefers one axis, which lets the track flare.
    .name = differential
shows-differential = The core of No. 3 is long: easy to spin about its length, harder end over end.

word-intermediate-differential = The difference between the highest and the middle RG: zero for a round core, more for an asymmetric one.
    .name = intermediate differential
shows-intermediate-differential = The core of No. 6 is flattened. Cut it the other way and it looks wider.

word-cg = Centre of gravity: the point on which the whole ball would balance.
    .name = CG
shows-cg = The pancake of No. 1 pulls the centre of gravity up, towards the pin.

word-top-weight = Of a ball without holes: how far its centre of gravity lies towards the pin, told as the weight to set on the far pole to balance it; shops do not all count it alike.
    .name = top weight
shows-top-weight = The pancake near the top of No. 1 makes the pin side heavier.

word-pin = The low-RG end of the core, marked on the cover so that a driller can find it.
    .name = pin
shows-pin = The pin is at the top, above the puck.

word-pap = Positive axis point: where the axis the ball spins about at release leaves the ball on the positive side.
    .name = PAP
shows-pap = The PAP and the holes of a drilled ball, seen from the grip.

word-mass-bias = The high-RG axis of an asymmetric core.
    .name = mass bias
shows-mass-bias = The mass bias lies across the flattened core of No. 6.

word-track-flare = The way the ring of oil on a ball moves over with every turn, so that fresh cover meets the lane; told as how far the spin axis moves over the ball.
    .name = track flare
shows-track-flare = Each ring lies a little beside the last one.

word-board = One of the 39 strips across a lane, a little over an inch wide, counted from the bowler's own side.
    .name = board
shows-board = The boards are counted from the bowler's own side.

word-breakpoint = The place where the ball is furthest to the bowler's own side before it comes back.
    .name = breakpoint
shows-breakpoint = Here the ball is furthest out, before it comes back.

word-entry-angle = The angle at which the ball travels when it reaches the pins, measured from straight down the lane.
    .name = entry angle
shows-entry-angle = The direction of the path where it meets the pins.

word-coverstock = The outer material of a ball, the one that touches the lane.
    .name = coverstock
shows-coverstock = How thick the cover of No. 3 is, all round.

word-flow-channel = A groove in a piece that lets the poured material flow through; it fills with what lies around it.
    .name = flow channel
shows-flow-channel = The groove round the inner core of No. 4, filled by the outer core.

word-puck = A flat, round piece, also called a pancake.
    .name = puck
shows-puck = The puck of No. 3 stands on top of the inner core.

word-hook = The part of the path where the ball curves because its spin still differs from its travel.
    .name = hook
shows-hook = The bend after the oil.

word-skid = The first part of the path, where the ball slides and hardly curves, for the most part on oil.
    .name = skid
shows-skid = The nearly straight part through the oil.

word-roll = The last part of the path, where the ball no longer slips on the lane.
    .name = roll
shows-roll = The last, straight part.

word-axis-rotation = The angle of the spin axis seen from above: 0° is a ball that rolls end over end, 90° one that spins sideways.
    .name = axis rotation
shows-axis-rotation = The axis is turned back a good deal in this shot, so it hooks.

word-axis-tilt = How far the spin axis points up from the level.
    .name = axis tilt
shows-axis-tilt = The axis of this shot points up a little.

word-rev-rate = How many turns a minute the ball makes when it is let go.
    .name = rev rate
shows-rev-rate = A shot with very many turns a minute.

word-drilling-angle = The angle at the pin between the line to the PAP and the line to the mass bias of an asymmetric core, or where there is none to the direction called sideways x on the Bench.
    .name = drilling angle
shows-drilling-angle = The drilling angle is at the pin, between the line to the PAP and the mass bias.

word-start-turn = How far the ball is turned about its spin axis as it is let go; it matters for a ball that is not the same all round.
    .name = start turn
shows-start-turn = The first ring depends on how the ball is turned when it leaves the hand.

word-launch-angle = The direction the ball leaves in: 0° is straight down the lane.
    .name = launch angle
shows-launch-angle = The ball starts outwards, not straight.

word-friction = How hard the lane holds the sliding ball back: the sideways force divided by the ball's weight. Oil makes it small.
    .name = friction
shows-friction = On a dry lane the ball turns at once.

word-grip-centre = The middle of the grip, half the span from thumb to fingers.
    .name = grip centre
shows-grip-centre = The grip centre is the middle of the grip.

word-span = How far the fingers are from the thumb along the ball, from gripping edge to gripping edge, inside inserts: the full span.
    .name = span
shows-span = From the thumb hole to each finger hole.

word-bridge = The strip of ball left between the two finger holes.
    .name = bridge
shows-bridge = The strip between the two finger holes.

word-pitch = How far a hole's axis misses the ball's centre: forward leans the hole under the palm, reverse away from it.
    .name = pitch
shows-pitch = The holes do not all point at the middle of the ball.

word-midline = The line through the grip centre that crosses the grip at a right angle.
    .name = midline
shows-midline = The line across the grip through its centre.

word-val = Vertical axis line: the line through the PAP that crosses the midline at a right angle.
    .name = VAL
shows-val = The line through the PAP, across the midline.

word-val-angle = The angle at the PAP between the vertical axis line and the line to the pin: small puts the pin above the fingers, large below them.
    .name = VAL angle
shows-val-angle = The angle at the PAP between the VAL and the line to the pin.

word-insert = A soft tube in a finger hole, or a sleeve in the thumb hole; the hole is drilled wider to take it.
    .name = insert
shows-insert = A soft tube lines each hole.

word-static-balance = How unevenly the drilled ball hangs about its grip (top or bottom, finger or thumb, side), as a balance scale would show it in ounces.
    .name = static balance
shows-static-balance = The holes take weight from one side of the ball.

word-bow-tie = One of the two places where the track rings cross and the band of them is narrowest.
    .name = bow-tie
shows-bow-tie = The rings cross in two places, where their band is narrowest.

word-oil-pattern = How thick the oil lies on each board, foot by foot, when the lane has just been oiled.
    .name = oil pattern
shows-oil-pattern = The house pattern: thick in the middle, thin outside.

word-film = The layer of oil on the boards, a few thousandths of a millimetre thick; a micrometre (µm) is one thousandth.
    .name = film
shows-film = The darker, the thicker the film.

word-oil-ratio = How many times thicker the film is on the five middle boards than on boards 3 to 7; the larger it is, the more the pattern steers a ball back.
    .name = oil ratio
shows-oil-ratio = Far more oil in the middle than outside.

word-taper = How the film thins out down the lane: the share of the first, thickest film that is left before the last stretch.
    .name = taper
shows-taper = The film thins out down the lane.

word-polyester = A hard, smooth plastic cover: the least friction.
    .name = polyester
shows-polyester = No. 1 has a polyester cover.

word-urethane = A softer plastic cover that grips early, in oil too.
    .name = urethane
shows-urethane = Reactive urethane is a kind of urethane; No. 2 has such a cover.

word-reactive = Urethane made porous as it sets, a resin that grips hardest on dry boards.
    .name = reactive
shows-reactive = No. 3 has a reactive cover.

word-finish = How the surface was worked last: the coarser the grit the rougher; polish smooths it.
    .name = finish
shows-finish = A rougher finish would turn this ball sooner.

word-grit = How fine the last abrasive was: 500 is rough, 4000 nearly smooth.
    .name = grit
shows-grit = The ball of this shot is worked to a grit of 2000.

word-polish = A liquid rubbed on last that leaves the surface shinier and smoother.
    .name = polish
shows-polish = Polish would let this ball go longer.

word-squash = Scales the finished shape along its own x and y: this is how a round shape becomes an asymmetric one.
    .name = squash
shows-squash = The inner core of No. 6 is squashed: narrow one way, wide the other.

word-95-interval = Where the true share lies in 95 of 100 such samples: the more balls are poured, the narrower it is.
    .name = 95 % interval
shows-95-interval = The share of balls that pass, with the room that a sample of this size leaves: a smaller sample leaves more.

word-first-order = The part of the spread that would go away, on average, if this alone came out exactly as drawn.
    .name = first order
shows-first-order = Dark: what each tolerance does to the RG by itself.

word-total-order = The part of the spread that would be left if everything but this came out exactly as drawn: by itself and together with others.
    .name = total order
shows-total-order = Outlined: what each tolerance does to passing by itself and together with others.

word-weight = How heavy it is: of a ball the whole of it, as it lies on a scale; of a part its density times its volume.
    .name = weight
shows-weight = Every part of No. 3 adds its own weight.

word-volume = How much room a part takes up in the ball, its cuts and holes taken off.
    .name = volume
shows-volume = The cover of No. 3 takes the most room, all round the core.

word-middle-rg = The RG about the axis between the easiest and the hardest: of a round core the same as the high RG.
    .name = middle RG
shows-middle-rg = No. 6 is not the same all round its pin, so its middle RG is not its high one.

word-high-rg = The RG about the hardest axis: there the weight sits furthest out.
    .name = high RG
shows-high-rg = The hardest axis of No. 6 lies across its flattened core.

word-piece = One of the parts that are poured or set inside the cover; its sizes are those of its shape.
    .name = piece
shows-piece = The pieces of No. 4, one within the other.

word-position = Where a piece stands in the ball, from the ball's centre: z towards the pin, x and y to the sides, and how it is turned about each.
    .name = position
shows-position = The puck of No. 3 stands above the ball's centre, towards the pin.

word-ball-diameter = How wide the finished ball is; the rules leave it hardly any room.
    .name = ball diameter
shows-ball-diameter = From one side of No. 1 to the other.

word-cut = The flat face that the saw makes: turned round the pin, leaned over, or moved off the centre.
    .name = cut
shows-cut = No. 3, cut through its pin and its centre.

word-hole = A hole drilled for a finger or the thumb, told by how wide and how deep it is; what it takes away no longer counts.
    .name = hole
shows-hole = Two finger holes and a thumb hole.

word-speed = How fast the ball travels; sliding over the lane takes some of it away.
    .name = speed
shows-speed = It leaves the hand faster than it reaches the pins.

word-time = How long the ball takes from the foul line.
    .name = time
shows-time = From the foul line at one end to the pins at the other.

word-slip = How fast the foot of the ball slides over the lane: once it rolls, not at all.
    .name = slip
shows-slip = It slips as far as it skids and hooks; where it rolls the slip is over.

word-axis-migration = How far the axis it spins about has moved in the ball by the time it reaches the pins.
    .name = axis migration
shows-axis-migration = The rings move over the ball because the axis does.

word-pocket = The place beside the front pin where a ball should come in, from the bowler's own side.
    .name = pocket
shows-pocket = Where a good shot of a right-hander comes in.

word-published-limit = What the rules of the sport allow, as published by its governing body; a ball outside is not allowed in competition.
    .name = published limit
shows-published-limit = No. 3 keeps every limit that can be computed.

word-pour = Filling a mould with liquid material once: every piece and the cover take one, and some of each is lost.
    .name = pour
shows-pour = No. 6 takes the most pours of the house's balls.

word-cost-index = What a ball costs to make beside others: a pour by itself is 1, moulds and loss are added; a model choice, not money.
    .name = cost index
shows-cost-index = More pieces, more pours and more moulds: No. 6 is the dearest of the house.

word-search-start = A ball from which the search for a core sets out: the more of them, the surer that none better is missed.
    .name = search start
shows-search-start = The ball on the bench is the first start; the others are this one with other sizes and densities.

word-tolerance = How far a part may stray from its drawing and still be used.
    .name = tolerance
shows-tolerance = Balls of No. 3 poured a little off, and which tolerance decides most whether they pass.

word-scrap = Balls that no one can sell, because they break a published limit; seconds keep the limits and miss what their maker promises.
    .name = scrap
shows-scrap = What becomes of balls of No. 3 that are poured a little off.

word-histogram = A picture of many numbers at once: the taller a bar, the more balls came out there.
    .name = histogram
shows-histogram = The RG of balls of No. 3, each poured a little off.

word-standard-deviation = How far from their mean the numbers usually lie: most are closer than that, hardly any three times as far.
    .name = standard deviation
shows-standard-deviation = The shaded middle reaches one standard deviation to either side of the mean.

word-percentile = The number below which so many of every hundred balls lie; 50 % below is the middle one.
    .name = percentile
shows-percentile = The lines stand where 1, 50 and 99 of every 100 balls of No. 3 lie below.

word-density = How heavy a material is for its size; water is 1 gram per cc.
    .name = density
shows-density = Hatching tells the materials apart. The inner core and the puck are the densest.
