# The trade's words: what each is called (`.name`) and what it means (`word-…`).

word-rg = Radius of gyration: how far from the axis the weight sits on average; the larger it is, the harder the ball is to spin up.
    .name = RG

word-differential = The difference between the ball's highest and lowest RG: how strongly the ball prefers one axis, which lets the track flare.
    .name = differential

word-intermediate-differential = The difference between the highest and the middle RG: zero for a round core, more for an asymmetric one.
    .name = intermediate differential

word-cg = Centre of gravity: the point on which the whole ball would balance.
    .name = CG

word-top-weight = Of a ball without holes: how far its centre of gravity lies towards the pin, told as the weight to set on the far pole to balance it; shops do not all count it alike.
    .name = top weight

word-pin = The low-RG end of the core, marked on the cover so that a driller can find it.
    .name = pin

word-pap = Positive axis point: where the axis the ball spins about at release leaves the ball on the positive side.
    .name = PAP

word-mass-bias = The high-RG axis of an asymmetric core.
    .name = mass bias

word-track-flare = The way the ring of oil on a ball moves over with every turn, so that fresh cover meets the lane; told as how far the spin axis moves over the ball.
    .name = track flare

word-board = One of the 39 strips across a lane, a little over an inch (27 mm) wide, counted from the bowler's own side.
    .name = board

word-breakpoint = The place where the ball is furthest to the bowler's own side before it comes back.
    .name = breakpoint

word-entry-angle = The angle at which the ball travels when it reaches the pins, measured from straight down the lane.
    .name = entry angle

word-coverstock = The outer material of a ball, the one that touches the lane.
    .name = coverstock

word-flow-channel = A groove in a piece that lets the poured material flow through; it fills with what lies around it.
    .name = flow channel

word-puck = A flat, round piece, also called a pancake.
    .name = puck

word-hook = The part of the path where the ball curves because its spin still differs from its travel.
    .name = hook

word-skid = The first part of the path, where the ball slides and hardly curves, for the most part on oil.
    .name = skid

word-roll = The last part of the path, where the ball no longer slips on the lane.
    .name = roll

word-axis-rotation = The angle of the spin axis seen from above: 0° is a ball that rolls end over end, 90° one that spins sideways.
    .name = axis rotation

word-axis-tilt = How far the spin axis points up from the level.
    .name = axis tilt

word-rev-rate = How many turns a minute the ball makes when it is let go.
    .name = rev rate

word-drilling-angle = The angle at the pin between the line to the PAP and the line to the mass bias of an asymmetric core, or where there is none to the direction called sideways x on the Bench.
    .name = drilling angle

word-start-turn = How far the ball is turned about its spin axis as it is let go; it matters for a ball that is not the same all round.
    .name = start turn

word-launch-angle = The direction the ball leaves in: 0° is straight down the lane.
    .name = launch angle

word-friction = How hard the lane holds the sliding ball back: the sideways force divided by the ball's weight. Oil makes it small.
    .name = friction

word-grip-centre = The middle of the grip, half the span from thumb to fingers.
    .name = grip centre

word-span = How far the fingers are from the thumb along the ball, from gripping edge to gripping edge, inside inserts: the full span.
    .name = span

word-bridge = The strip of ball left between the two finger holes.
    .name = bridge

word-pitch = How far a hole's axis misses the ball's centre: forward leans the hole under the palm, reverse away from it.
    .name = pitch

word-midline = The line through the grip centre that crosses the grip at a right angle.
    .name = midline

word-val = Vertical axis line: the line through the PAP that crosses the midline at a right angle.
    .name = VAL

word-val-angle = The angle at the PAP between the vertical axis line and the line to the pin: small puts the pin above the fingers, large below them.
    .name = VAL angle

word-insert = A soft tube in a finger hole, or a sleeve in the thumb hole; the hole is drilled wider to take it.
    .name = insert

word-static-balance = How unevenly the drilled ball hangs about its grip (top or bottom, finger or thumb, side), as a balance scale would show it.
    .name = static balance

word-bow-tie = One of the two places where the track rings cross and the band of them is narrowest.
    .name = bow-tie

word-oil-pattern = How thick the oil lies on each board, foot by foot, when the lane has just been oiled.
    .name = oil pattern

word-film = The layer of oil on the boards, a few thousandths of a millimetre thick; a micrometre (µm) is one thousandth.
    .name = film

word-oil-ratio = How many times thicker the film is on the five middle boards than on boards 3 to 7; the larger it is, the more the pattern steers a ball back.
    .name = oil ratio

word-taper = How the film thins out down the lane: the share of the first, thickest film that is left before the last stretch.
    .name = taper

word-polyester = A hard, smooth plastic cover: the least friction.
    .name = polyester

word-urethane = A softer plastic cover that grips early, in oil too.
    .name = urethane

word-reactive = Urethane made porous as it sets, a resin that grips hardest on dry boards.
    .name = reactive

word-finish = How the surface was worked last: the coarser the grit the rougher; polish smooths it.
    .name = finish

word-grit = How fine the last abrasive was: 500 is rough, 4000 nearly smooth.
    .name = grit

word-polish = A liquid rubbed on last that leaves the surface shinier and smoother.
    .name = polish

word-squash = Scales the finished shape along its own x and y: this is how a round shape becomes an asymmetric one.
    .name = squash

word-95-interval = Where the true share lies in 95 of 100 such samples: the more balls are poured, the narrower it is.
    .name = 95 % interval

word-first-order = The part of the spread that would go away, on average, if this alone came out exactly as drawn.
    .name = first order

word-total-order = The part of the spread that would be left if everything but this came out exactly as drawn: by itself and together with others.
    .name = total order

word-weight = How heavy it is: of a ball the whole of it, as it lies on a scale; of a part its density times its volume.
    .name = weight

word-volume = How much room a part takes up in the ball, its cuts and holes taken off.
    .name = volume

word-middle-rg = The RG about the axis between the easiest and the hardest: of a round core the same as the high RG.
    .name = middle RG

word-high-rg = The RG about the hardest axis: there the weight sits furthest out.
    .name = high RG

word-piece = One of the parts that are poured or set inside the cover; its sizes are those of its shape.
    .name = piece

word-position = Where a piece stands in the ball, from the ball's centre: z towards the pin, x and y to the sides, and how it is turned about each.
    .name = position

word-ball-diameter = How wide the finished ball is; the rules leave it hardly any room.
    .name = ball diameter

word-cut = The flat face that the saw makes: turned round the pin, leaned over, or moved off the centre.
    .name = cut

word-hole = A hole drilled for a finger or the thumb, told by how wide and how deep it is; what it takes away no longer counts.
    .name = hole

word-speed = How fast the ball travels; sliding over the lane takes some of it away.
    .name = speed

word-time = How long the ball takes from the foul line.
    .name = time

word-slip = How fast the foot of the ball slides over the lane: once it rolls, not at all.
    .name = slip

word-axis-migration = How far the axis it spins about has moved in the ball by the time it reaches the pins.
    .name = axis migration

word-pocket = The place beside the front pin where a ball should come in, from the bowler's own side.
    .name = pocket

word-published-limit = What the rules of the sport allow, as published by its governing body; a ball outside is not allowed in competition.
    .name = published limit

word-pour = Filling a mould with liquid material once: every piece and the cover take one, and some of each is lost.
    .name = pour

word-cost-index = What a ball costs to make beside others: a pour by itself is 1, moulds and loss are added; a model choice, not money.
    .name = cost index

word-search-start = A ball from which the search for a core sets out: the more of them, the surer that none better is missed.
    .name = search start

word-tolerance = How far a part may stray from its drawing and still be used.
    .name = tolerance

word-scrap = Balls that no one can sell, because they break a published limit; seconds keep the limits and miss what their maker promises.
    .name = scrap

word-histogram = A picture of many numbers at once: the taller a bar, the more balls came out there.
    .name = histogram

word-standard-deviation = How far from their mean the numbers usually lie: most are closer than that, hardly any three times as far.
    .name = standard deviation

word-percentile = The number below which so many of every hundred balls lie; 50 % below is the middle one.
    .name = percentile

word-density = How heavy a material is for its size; water is 1 gram per cc.
    .name = density
