# The Saw: the ball sawn open.

saw-picture = Picture
saw-solid = Solid
saw-drawing = Drawing
saw-two-cuts = Two cuts
saw-cover = Cover
saw-no-part = No part chosen.
saw-flat-instead = This browser cannot draw in three dimensions (no WebGL2), so the flat drawing of the same cut stands in.
saw-map-instead = This browser cannot draw in three dimensions (no WebGL2), so a flat map stands in.
saw-show-cover = Show the cover
saw-on-ball = On the ball
saw-as-map = As a map
saw-click-finger = Tap a part, in the picture or in the list, to learn what it is.
saw-click = Click a part, in the picture or in the list, to learn what it is.
saw-whole-ball = The ball is whole: choose a cut to see a drawing of it.
saw-turn-and-zoom = Turn and zoom the picture
saw-turn-left = Turn left
saw-turn-right = Turn right
saw-higher = Look from higher
saw-lower = Look from lower
saw-zoom-in = Zoom in
saw-zoom-out = Zoom out
saw-face-cut = Face the cut
saw-drag-finger = Drag to turn; two fingers zoom.
saw-drag = Drag to turn; click the ball, then the wheel zooms.
saw-save-section = Save section as SVG
saw-save-picture = Save 3D view as PNG

## Parts

saw-parts = Parts
saw-show-part = Show { $part }
saw-shown = shown
saw-marks = Mark the pin, the centre of gravity, the low and high RG axes
saw-marks-drilled = Mark the pin, the centre of gravity, the low and high RG axes, PAP and grip centre
saw-part-cover = cover
saw-part = { $part }: { $density }. It weighs { $weight } and carries { $share } of the ball's RG.
saw-part-material = { $part }: { $material }, { $density }. It weighs { $weight } and carries { $share } of the ball's RG.
saw-mark-pin = pin
saw-mark-cg = CG
saw-mark-low-rg = low RG
saw-mark-high-rg = high RG
saw-mark-pap = PAP
saw-mark-grip-centre = grip centre

## The cut

saw-cut = <cut>Cut</cut>
saw-through-holes = Through the holes
saw-along = Along the pin
saw-across = Across
saw-aslant = Off-axis
saw-whole = Whole
saw-other-half = Other half
saw-depth = Depth
saw-turn = Turn
saw-lean = Lean
saw-pull-apart = Pull apart

## How a plane lies: completes "cut …"

saw-plane-across = across the pin axis, { $at ->
        [centre] through the centre
       *[off] { $distance } from the centre
    }
saw-plane-along = along the pin axis, { $at ->
        [centre] through the centre
       *[off] { $distance } from the centre
    }
saw-plane-along-turned = along the pin axis, turned { $turn }° about it, { $at ->
        [centre] through the centre
       *[off] { $distance } from the centre
    }
saw-plane-aslant = off the pin axis by { $lean }°, { $at ->
        [centre] through the centre
       *[off] { $distance } from the centre
    }
saw-plane-aslant-turned = off the pin axis by { $lean }°, turned { $turn }° about it, { $at ->
        [centre] through the centre
       *[off] { $distance } from the centre
    }

## The cut in words

saw-passes-by = The plane passes the ball by: it cuts nothing.
saw-is-cut = The ball is cut { $plane }.
saw-from-top = From the top of the cut down to its middle: { $layers }.
saw-from-side = From its right side in to the middle: { $layers }.
saw-layer = { $part } { $thickness }
saw-layers = { $first }, then { $next }
saw-drilled-hole = drilled hole
saw-areas = Area of each part on the <cut>cut</cut>
saw-narrowest = The narrowest cover on this cut is { $thickness }.
saw-narrowest-askew = The narrowest cover on this cut looks { $thickness }; off the centre the saw meets it askew, so it is thinner than it looks.
saw-section-title = Section of { $ball }, cut { $plane }
saw-section-shows = From the largest area to the smallest it shows: { $parts }.

## Two cuts

saw-cut-caption = Cut { $plane }
saw-two-cuts-say = One ball, one core, two saw cuts at the same scale. The parts differ by { $area } of cut face, and nothing in the ball has changed. People in the trade are regularly fooled by this: before you say that two cores differ, ask how each was cut.
saw-second-cut = Second cut
saw-quarter = A quarter turn on
saw-beside = Beside the centre

## In three dimensions

saw-3d-picture = 3D picture
saw-3d-ball = The ball sawn open. Arrow keys turn it, plus and minus zoom.
saw-3d-cover = The thickness of the cover on the ball. Arrow keys turn it, plus and minus zoom.
saw-3d-lost = The graphics card let go of the 3D picture. Your ball is safe; the picture comes back by itself when the card does. Until then, Drawing above shows the same cut.
