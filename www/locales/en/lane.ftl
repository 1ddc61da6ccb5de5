# The Lane: what the shot did, its pictures, controls, numbers and charts.

## What the shot did, in one sentence

lane-phases =
    { $phases ->
        [skid-hook-roll] Skids { $skid }, hooks for { $hook }, rolls the last { $roll }
        [skid-hook] Skids { $skid } and hooks for { $hook }
        [skid-roll] Skids { $skid } and rolls the last { $roll }
        [hook-roll] Hooks for { $hook } and rolls the last { $roll }
        [skid] Skids { $skid }
        [hook] Hooks for { $hook }
        [roll] Rolls the last { $roll }
        [only-roll] Rolls all the way without slipping
        [only-skid] Skids all the way and never comes to roll
       *[none] Hardly leaves the foul line
    }{ $slips ->
        [yes] , still slipping at the pins
       *[no] {""}
    }
lane-at-board =
    { $hand ->
        [left] board { $board }, counted from the left
       *[right] board { $board }
    }
lane-did-gutter =
    { $side ->
        [left] { lane-phases }, then drops into the left gutter { $end } down the lane.
       *[right] { lane-phases }, then drops into the right gutter { $end } down the lane.
    }
lane-did-stop = { lane-phases }, and never reaches the pins: it comes no further than { $reach }.
lane-did-straight = { lane-phases }; comes in straight, on { lane-at-board }.
lane-did-away = { lane-phases }; comes in at { $angle } away from the pocket side, on { lane-at-board }.
lane-did-enter = { lane-phases }; enters at { $angle } on { lane-at-board }.

## The pictures

lane-reading = On the lane: dots and tint are oil, stronger where there is more; long dashes are skid, short dashes hook, a solid line roll; ball, pins and arrows are marks, not to scale. On the ball: rings (thin, thicker, thick) show where the lane has touched it, the wedge where it touches now, the diamond the PAP, where the axis it spins about left the ball at release. At the end of the run a bar stands where the rings lie widest apart and a bow-tie where they cross.
lane-stale = <problem/> The shot shown is the last good one.
lane-above = The lane from above
lane-moment = { $time }, { $distance }, { $phase }
lane-close = The ball close up, from behind and a little above
lane-close-says = Rings where the lane has touched it, at { $revs }. { $band }
lane-close-moment = { $speed }, { $revs }
lane-close-end = { $speed }, { $revs }; at the bar the rings lie { $width } wide
lane-eye = The lane as the bowler sees it
lane-eye-caption = As the bowler sees it, true to scale
lane-stretch = Drawn { $times } times too wide, so angles look larger. <how>How to read the pictures</how>
lane-playing = Playing the shot
lane-play = Play
lane-pause = Pause
lane-step-back = Step back
lane-step-on = Step on
lane-scrub = Moment of the shot
lane-rate = Playing speed

## Release and ball in the hand

lane-release = Release
lane-hand = Hand
lane-right-hand = Right hand
lane-left-hand = Left hand
lane-speed = <speed>Speed</speed>
lane-rev-rate = <revs>Rev rate</revs>
lane-axis-rotation = <rotation>Axis rotation</rotation>
lane-axis-tilt = <tilt>Axis tilt</tilt>
lane-launch-angle = <angle>Launch angle</angle>, to the right
lane-board = <board>Board</board>
lane-in-hand = Ball in the hand
lane-pin-to-pap = <pin>Pin</pin> to <pap>PAP</pap>
lane-drilling-angle = <angle>Drilling angle</angle>
lane-start-turn = <turn>Start turn</turn>

## Example shots

lane-examples = Example shots
lane-example = Example shot
lane-throw-with-mine = Throw it with my ball
lane-throw-with-its-own = With its own: { $ball }

## Numbers

lane-entry = <entry>Entry angle</entry>
lane-entry-says = As published, 4° to 6° into the pocket strikes best.
lane-board-at-pins = <board>Board</board> at the pins
lane-board-at-pins-says = The pocket is near board 17.5.
lane-breakpoint = <breakpoint>Breakpoint</breakpoint>
lane-breakpoint-says = How far down the lane it is furthest out.
lane-breakpoint-board = <breakpoint>Breakpoint</breakpoint> board
lane-breakpoint-board-says = How far out it gets.
lane-time = <time>Time</time>
lane-time-says = From release to the pins.
lane-speed-lost = <speed>Speed lost</speed>
lane-speed-lost-says = { $least } to { $most } is usual; common practice, no source.
lane-revs-at-pins = <revs>Revs at the pins</revs>
lane-revs-at-pins-says = The lane spins the ball up until it rolls.
lane-flare = <flare>Flare</flare>
lane-flare-says = How far the axis it spins about moves over the ball.
lane-migration = <migration>Axis migration</migration>
lane-migration-says = How far the spin axis wanders on the ball.
lane-error = At release { $revs }; the numbers at the pins are right to { $board } board and { $angle }°.

## Why the shot changed

lane-why = Why did the shot change?
lane-why-from-here = Measure from here
lane-why-from-last = From the last change
lane-why-pinned = Measured from “{ $ball }” as you set it aside; change what you like and see what each change does.
lane-why-unpinned = Measured from before your last change.
lane-why-before = before
lane-why-now = Your shot now
lane-why-same = Change the ball, the release or the lane, and this says how much of the difference each thing makes.

## Rings on the ball

lane-rings = Rings on the ball ({ $rings })
lane-rings-says = A ring is the circle the lane draws on the ball in one turn. The rings cross near two places, the <ties>bow-ties</ties>, and are widest apart between them.
lane-band-none = Fewer than two whole turns: there is no band of rings to measure.
lane-band = { $rings } rings; the band of them is { $widest } at its widest and { $narrowest } at its narrowest, a bow-tie.
lane-passes-hole = The track passes a hole, { $hole }, by only { $clearance }.
lane-over-hole = The track goes over a hole, { $hole }: first in turn { $turn }. The ball would click there and lose its line; choose another layout.
lane-clear = How far the track clears every hole
lane-clear-hole = Hole
lane-clear-by = Clears by
lane-clear-turn = In turn
lane-clear-over =
    { $turns ->
        [one] over it in { $turns } turn
       *[other] over it in { $turns } turns
    }

## Before and after drilling

lane-drilling = This throw before and after drilling
lane-drilling-not-yet = The undrilled ball cannot be followed for this throw, or is not rolled yet.
lane-drilling-table = The same throw with the ball undrilled and drilled
lane-undrilled = Undrilled
lane-drilled = Drilled
lane-hook-starts = <hook>Hook starts</hook>
lane-roll-starts = <roll>Roll starts</roll>

## What RG and differential do

lane-honest = What RG and differential do here
lane-honest-says = Let go in the same way, a ball with a lower <rg>RG</rg> is easier to spin up: it revs up and rolls earlier, so it makes its move sooner. But it stores less spin, and once both balls roll it ends at a slightly smaller angle. A higher-RG ball saves its motion for later. Trade talk often says otherwise.
lane-honest-other =
    { $other ->
        [before] the one before
       *[other] the other
    }
# What one ball does beside another, as the next sentences have it.
lane-honest-does =
    { $rolls ->
        [never] is still slipping at the end, where { lane-honest-other } already rolls
        [alone] comes to roll, where { lane-honest-other } is still slipping at the end
        [sooner] rolls { $distance } sooner{ lane-honest-angle }
        [later] rolls { $distance } later{ lane-honest-angle }
       *[same] rolls at the same place{ lane-honest-angle }
    }
lane-honest-angle =
    { $enters ->
        [same] {" "}and enters at the same angle
        [smaller] {" "}and enters at an angle { $angle } smaller
        [larger] {" "}and enters at an angle { $angle } larger
       *[none] {""}
    }
lane-honest-rg = RG alone, thrown like this: of two balls of your ball's weight with round cores, RG { $low } and { $high }, the lower one { lane-honest-does }.
lane-honest-core =
    { $moves ->
        [yes] The rest of your core: beside a round one of the same weight and average RG, your ball { lane-honest-does }. The <differential>differential</differential> does that: on the way the spin axis moves { $migration } over the ball.
       *[no] The rest of your core: beside a round one of the same weight and average RG, your ball { lane-honest-does }. The <differential>differential</differential> does that.
    }
lane-honest-last = Your last change took the RG from { $before } to { $now }: the ball now { lane-honest-does }.

## Phases in numbers

lane-phases-meaning = The order skid, hook, roll is that of the United States Bowling Congress's ball motion study. Where each begins is this page's choice: the hook where the sideways pull of friction first reaches half of its greatest value, the roll where slip ends, or stays below a fiftieth of the ball's speed.
lane-phases-name = Skid, hook and roll
lane-phases-label = The phases in numbers
lane-phases-table = What the ball loses, gains and turns in each
lane-phase = Phase
lane-phase-from = From, { $unit }
lane-phase-to = To
lane-phase-length = Length
lane-phase-time = <time>Time</time>, { $unit }
lane-phase-speed = <speed>Speed</speed>, { $unit }
lane-phase-revs = <revs>Revs</revs>, { $unit }
lane-phase-turns = Path turns

## Charts

lane-charts = Charts by distance: speed, revs and { $more } more
lane-charts-ripples = Ripples once a turn are a centre of gravity that is not in the middle going round.
lane-charts-table = The same as a table
lane-charts-by-distance = The shot by distance
lane-chart-speed = Speed
lane-chart-revs = Revs
lane-chart-slip = Slip
lane-chart-bend = Bend of the path
lane-chart-rotation = Axis rotation
lane-chart-tilt = Axis tilt
lane-chart-friction = Friction met
lane-chart-film = Oil under the ball
lane-chart-title = { $name } by distance
lane-chart-says = From { $from } at release to { $to } at the end.
lane-chart-says-mean = On average { $mean }.
lane-chart-ends = { $name }: { $from } to { $to }
lane-chart-mean = { $name }: { $mean }
lane-chart-distance = Distance, { $unit }
