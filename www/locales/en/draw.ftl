# What stands in the drawings of lane, ball and layout.

draw-skid = skid
draw-hook = hook
draw-roll = roll
draw-gutter = into the gutter
draw-breakpoint = breakpoint, board { $board }
draw-pin = pin
draw-opposite-pin = opposite the pin
draw-pap = PAP
draw-bow-tie = bow-tie
draw-midline = midline
draw-val = VAL
draw-grip-centre = grip centre
draw-mass-bias = mass bias
draw-layout = The layout, seen at the grip with the fingers up
draw-layout-says = Seen at the grip with the fingers up: the pin is { $pin }, { $pin-to-grip } from the grip centre and { $pin-to-val } from the vertical axis line; the PAP is { $pap }, { $pap-to-grip } away; the mass bias side is { $bias }. Holes: { $holes }.
# Where a mark lies, as the sentence above has it.
draw-layout-where =
    { $up ->
        [above]
            { $across ->
                [right] above and to the right
                [left] above and to the left
               *[middle] above
            }
        [below]
            { $across ->
                [right] below and to the right
                [left] below and to the left
               *[middle] below
            }
       *[middle]
            { $across ->
                [right] to the right
                [left] to the left
               *[middle] at the middle
            }
    }{ $side ->
        [far] , on the far side
       *[near] {""}
    }

draw-close = The last third of the lane, closer
draw-stretch = Drawn { $wide } times too wide.
draw-stretch-both = Drawn { $wide } times too wide, closer up { $close } times.
