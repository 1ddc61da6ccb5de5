# The Shelf: balls to keep, side by side.

shelf-on-bench = On the bench now
shelf-on-shelf = On the shelf
shelf-on-shelf-count = On the shelf: { $count }
shelf-looking = Looking what is there…
shelf-empty = Nothing yet. Put the ball on the bench here, as it is thrown now, before you change it further: then the two stand side by side. A ball stays here with its shot until you take it off.
shelf-from-house = From the house
shelf-sorted = Sorted by
shelf-by-saved = when saved, latest first
shelf-by-name = name
shelf-by-weight = weight, heaviest first
shelf-by-rg = RG, lowest first
shelf-by-differential = differential, lowest first
shelf-files = Files to put on the shelf
shelf-add = Add from a file…
shelf-save-all = Save the shelf to a file

## One of them

shelf-no-name = without a name
shelf-not-kept = not kept by the browser
shelf-saved = saved { $when }
shelf-more = More<aloud> for { $name }</aloud>
shelf-name-and-note = Name and note
shelf-duplicate = Duplicate
shelf-save-shot = Save as shot file
shelf-save-ball = Save as ball file
shelf-take-off = Take off the shelf
shelf-unread = One that cannot be read
shelf-unread-where = (Where: { $place }.)
shelf-unread-stays = It stays as it is. You can save it to a file for somebody who can mend it.
shelf-save-as-is = Save it as it is
shelf-measuring = being measured…
shelf-numbers = { $weight }, RG { $rg }, differential { $differential }
shelf-four-chosen = Four are chosen: take one out to choose another.
shelf-compare = Compare<aloud> { $name }</aloud>
shelf-is-out = { $name } is out of the comparison.
shelf-is-in = { $name } is { $letter } in the comparison.
shelf-to-bench = Put on the bench
shelf-to-bench-name = Put on the bench: { $name }
shelf-name = Name
shelf-note = Note
shelf-note-for = for whom, why, what to try
shelf-done = Done
shelf-leave = Leave as it was
shelf-put = Put on the shelf
shelf-last-good = the ball or the shot on the bench has a mistake now; what stands here, and is kept, is the last good one.

## Whether the browser keeps it

shelf-forbidden = This browser does not let the page keep anything: what you put on the shelf lasts for this visit only.
shelf-newer = Another tab has the shelf in a newer version of this page. Load this page again; until then what you put here lasts for this visit only.
shelf-broken = What this browser kept of the shelf cannot be opened, so what you put here lasts for this visit only. Closing the browser and coming back may help.
shelf-start-afresh = Throw it away and begin a new shelf
shelf-unkept = { $many ->
        [one] One entry is
       *[other] { $many } entries are
    } not kept. { $why } Save the shelf to a file before you leave.
shelf-unkept-retry = { $many ->
        [one] One entry is
       *[other] { $many } entries are
    } not kept. { $why } Save the shelf to a file before you leave, or take something off it and try again.
shelf-save-now = Save the shelf to a file now
shelf-try-again = Try again
shelf-put-back = Put back { $name }
shelf-put-back-unread = Put back what could not be read

## Side by side

compare-name = Side by side
compare-how = Mark up to four balls with Compare: those of the house, those on the shelf, the one on the bench. The first is what the others are held against. One ball put on the shelf with several releases compares those.
compare-make-first = Make it the first
compare-make-first-name = Make it the first: { $name }
compare-is-first = { $name } is now what the others are held against.
compare-take-out = Take out
compare-take-out-name = Take out: { $name }
compare-thrown = How they are thrown
compare-same-shot = Same shot for all: A's hand, release and lane
compare-own-shot = Each its own shot, as it was put there
compare-one-ball = these are one and the same ball: choose each its own shot to see releases apart.
compare-own-layout = How a ball is laid out and drilled stays its own. A ball of the house has none of that: with the same shot for all it takes A's, else it is thrown as the opening shot.
compare-balls = The balls
compare-why = Why { $other } differs from { $first }

## Every ball on a map

compare-map = Every ball by RG and differential
compare-map-title = Every ball by low RG and differential
compare-map-below = The table below says the same.
compare-map-limits = published limits, { $weight } and up
compare-map-rg = low RG, { $unit }: harder to spin up to the right
compare-map-differential = diff.
compare-map-signs = Filled: on the shelf. Open: of the house. Diamond: on the bench. Where names would cover each other, the table has them.
compare-map-same = The same as a table
compare-map-table = Every ball as a table
compare-map-by-rg = Every ball by RG
compare-map-ball = Ball
compare-map-where = Where
compare-map-low-rg = <rg>Low RG</rg>, { $unit }
compare-map-diff = <differential>Differential</differential>, { $unit }
compare-map-weight = <weight>Weight</weight>, { $unit }
compare-on-bench = on the bench
compare-on-shelf = on the shelf
compare-of-house = of the house

## Cut open

compare-sections = Cut open alike
compare-cut = Cut
compare-as-on-saw = As on the Saw
compare-to-scale = All to one scale, cut { $plane }.
compare-section = { $letter }: section of { $ball }
compare-shows = It shows { $parts }.

## Down one lane

compare-shots = Down one lane
compare-wrong = { $letter }: { $what }
compare-drawing = { $many ->
        [one] One shot
       *[other] { $many } shots
    } on one lane, from above
compare-same-moment = All leave the foul line at the same moment; a mark rides with each ball.
compare-at-rest = The run is over: the marks only say which path is which, they are not where the balls are. Played, all leave the foul line at the same moment and a mark rides with each ball.
compare-other-lanes = The lane drawn is { $first }'s; { $others } rolled on another.
compare-other-hands = Boards are counted from { $first }'s side; in the table { $others } counts from the other.
compare-not-followed = { $letter } cannot be followed.
compare-gutter = { $letter } drops into the gutter.
compare-reaches = { $letter } reaches the pins.
compare-same = { $letter } rolls as { $first } does.
compare-steeper = { $much } steeper
compare-flatter = { $much } flatter
compare-further-in = { $much } boards further in
compare-further-out = { $much } boards further out
compare-both-ways = { $one } and { $other }
compare-later = turns back { $much } later
compare-sooner = turns back { $much } sooner
compare-comes = { $letter } comes in { $ways } than { $first }.
compare-turns = { $letter } { $turns }.
compare-comes-and-turns = { $letter } comes in { $ways } than { $first } and { $turns }.

## In numbers

compare-balls-table = The balls in numbers
compare-shots-table = The shots in numbers
compare-apart = { $table }; in the others' columns, what sets them apart from { $first }
compare-limits = <limits>Published limits</limits>
compare-within = { $within } within
compare-outside = <out>outside or too close: { $rules }</out>; { $within } within
compare-none = none
compare-no-change = same
compare-row-weight = <word>Weight</word>
compare-row-low-rg = <word>RG, low</word>
compare-row-middle-rg = <word>RG, middle</word>
compare-row-high-rg = <word>RG, high</word>
compare-row-differential = <word>Differential</word>
compare-row-intermediate = <word>Intermediate differential</word>
compare-row-cg = <word>CG off the centre</word>
compare-row-top-weight = <word>Top weight</word>, undrilled
compare-row-top = <word>Static balance</word> over the grip: top, bottom below 0
compare-row-finger = <word>Static balance</word>: finger, thumb below 0
compare-row-side = <word>Static balance</word>: positive side
compare-row-speed = <word>Speed at release</word>
compare-row-revs = <word>Revs at release</word>
compare-row-entry = <word>Entry angle</word>
compare-row-board = <word>Board</word> at the pins
compare-row-breakpoint = <word>Breakpoint</word>
compare-row-breakpoint-board = <word>Breakpoint</word> board
compare-row-hook = <word>Hook starts</word>
compare-row-roll = <word>Roll starts</word>
compare-row-speed-at-pins = <word>Speed at the pins</word>
compare-row-revs-at-pins = <word>Revs at the pins</word>
compare-row-flare = <word>Flare</word>
compare-row-time = <word>Time to the pins</word>
