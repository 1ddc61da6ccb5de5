# The Bench: where the ball is made and drilled.

bench-invitation = Change something: drag the density of the <piece>{ $piece }</piece> below, and watch the cut, the numbers and the shot answer.
bench-ball = Ball
bench-parts = Parts, in pouring order
bench-cover = cover
bench-cover-says = The <coverstock>coverstock</coverstock> reaches from the surface to the pieces: it fills the rest of the ball.
bench-diameter-of-ball = Ball diameter
bench-diameter-caution = the published limits are { $low } to { $high }.
bench-add-piece = Add a piece

# Templates

bench-start = Start from
bench-start-from = Start from { $ball }

# A part

bench-part-says = { $density }, { $weight }
bench-name = Name
bench-earlier = Earlier
bench-earlier-label = Pour { $piece } earlier
bench-later = Later
bench-later-label = Pour { $piece } later
bench-duplicate = Duplicate
bench-duplicate-label = Duplicate { $piece }
bench-remove = Remove
bench-remove-label = Remove { $piece }
bench-copy = { $piece } copy
bench-too-heavy = this piece alone weighs { $weight }; a whole ball may weigh { $limit } at most.

# Material

bench-material = Material
bench-own-mix = a mix of my own
bench-density = Density
bench-too-dense = denser than the published limit of { $limit } g/cc for any piece of a ball.
bench-density-unusual = outside what { $material } usually has.
bench-usually = Usually { $density } g/cc: <source>where that comes from</source>
bench-usually-between = Usually { $low } to { $high } g/cc: <source>where that comes from</source>
bench-source = { $source }. Used for { $uses }.
bench-from-memory = from memory, unverified

# Shape and place

bench-shape = Shape
bench-sphere = sphere
bench-ellipsoid = ellipsoid (egg)
bench-cylinder = cylinder, puck or pancake
bench-frustum = frustum (cut-off cone)
bench-ring = ring
bench-box = box
bench-lathe = turned on a lathe
bench-diameter = Diameter
bench-height = Height
bench-diameter-below = Diameter below
bench-diameter-above = Diameter above
bench-ring-diameter = Ring diameter
bench-tube-diameter = Tube diameter
bench-width-x = Width x
bench-width-y = Width y
bench-height-z = Height z
bench-place = Position, tilt and squash
bench-position = Position
bench-sideways-x = Sideways x
bench-sideways-y = Sideways y
bench-towards-pin = Towards pin z
bench-tilt = <tilt>Tilt</tilt>: turned about x, then y, then z
bench-about-x = About x
bench-about-y = About y
bench-about-z = About z
bench-squash = <squash>Squash</squash>: times its own width
bench-along-x = Along x
bench-along-y = Along y

# The outline of what is turned on a lathe

bench-outline = The outline and its mirror image
bench-points = Points of the outline, in order
bench-point = Point
bench-out = Out from axis
bench-up = Up
bench-add-or-remove = Add or remove
bench-point-out = Point { $point }, out from the axis
bench-point-up = Point { $point }, up
bench-point-add = Add a point after point { $point }
bench-point-remove = Remove point { $point }

# Cuts

bench-cuts = Cuts and flow channels ({ $cuts })
bench-cuts-say = A cut, such as a <channel>flow channel</channel>, fills with what lies around the piece.
bench-cut = cut { $number }
bench-cut-remove = Remove { $cut }
bench-add-channel = Add a flow channel

# Holes drilled one by one

bench-holes = Drilled holes ({ $holes })
bench-holes-say = Here a hole only takes weight away. Where to drill a real ball is for a qualified pro shop to say.
bench-add-hole = Add a hole
bench-hole = hole { $number }
bench-hole-diameter = Diameter
bench-hole-depth = Depth
bench-hole-enters = It enters at the surface in this direction from the ball's centre (z to the pin, x and y square to it):
bench-enters-x = <name>Enters towards</name> x
bench-enters-y = <name>Enters towards</name> y
bench-enters-z = <name>Enters towards</name> z, to the pin
bench-hole-runs = It runs inward in this direction:
bench-runs-x = <name>Runs towards</name> x
bench-runs-y = <name>Runs towards</name> y
bench-runs-z = <name>Runs towards</name> z, to the pin
bench-hole-straight = Straight to the centre
bench-hole-pitched = Pitch it off the centre
bench-hole-remove = Remove { $hole }

# Drilled for a hand

bench-drill = Drill it for a hand
bench-drilled = The ball is drilled
bench-drill-says = Lays out thumb and fingers from a bowler's <pap>PAP</pap> and shows what the holes change. The recipe above stays as it is.
bench-layouts = Start from a layout
bench-layout = Layout
bench-layout-name = Layout of { $ball }
bench-for = Drilled for
bench-right = Right hand
bench-left = Left hand
bench-pin-to-pap = <pin>Pin</pin> to PAP
bench-drilling-angle = Drilling angle
bench-val-angle = VAL angle
bench-pap-over = <pap>PAP</pap>, over from the <centre>grip centre</centre>
bench-pap-up = <pap>PAP</pap>, up from there
bench-grip = Grip
bench-has-thumb = Thumb hole (without one: a two-handed grip)
bench-bridge = Bridge
bench-drilled-out = The drill takes out { $weight }. Inserts are weighed as tubes that end just below the surface.
bench-layout-save = Save the layout to a file
bench-middle = Middle finger
bench-ring-finger = Ring finger
bench-thumb = Thumb
bench-bore = { $digit }: { $across } across, { $deep } deep
bench-bore-insert = { $digit }: { $across } across, { $deep } deep, insert
bench-bore-sleeve = { $digit }: { $across } across, { $deep } deep, sleeve
bench-bore-across = <hole>Hole</hole>, across
bench-bore-depth = Depth
bench-pitch-forward = <pitch>Pitch</pitch> forward
bench-pitch-side = <pitch>Pitch</pitch> to the PAP's side
bench-span-middle = <span>Span</span> to the middle finger
bench-span-ring = <span>Span</span> to the ring finger
bench-insert = Insert in the hole, which is drilled wider for it
bench-sleeve = Sleeve in the hole, which is drilled wider for it
bench-insert-wall = Its wall
bench-insert-density = Its density
