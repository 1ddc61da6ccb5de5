# The Lessons room: the list, the trade's words, a class, writing a lesson, paper and projector.

lessons-in = In Lessons
lessons-list = Lessons
lessons-words = Words
lessons-class = A class
lessons-write = Write one

## The trade's words with their pictures

words-back-to-lesson = Back to the lesson
words-back = Back to where you were
words-says = Each picture is worked out by this page, from a ball and a shot of Harbour Street Lanes. Wherever a word has a dotted line under it, it opens its meaning, and from there you come here.
words-trade = Words of the trade
words-counting = Words of counting
words-here = { $shows } Here: { $number }.
words-on-lane = { $word }, on the lane from above
words-on-ball = { $word }, on the ball
words-drawn = { $word }, drawn
words-gutter = into the gutter
words-enters = enters at { $angle }
words-comes = comes to board { $board } and { $enters }
words-shot = { $letter }, { $name }, { $end }
words-shots = { $shots }.
words-shots-alike = { $shots }. They come in at nearly the same angle; what differs is how far each has come back by then.
words-grit = grit { $grit }
words-polished = polished
words-revs = { $revs } rpm
words-to-the-right = { $angle }° to the right
words-oiled = oil to the usual length
words-drier = a drier lane
words-hole = the middle finger's { $across } across and { $deep } deep
words-hand-and-pins = { $hand } from the hand, { $pins } at the pins
words-slip = { $first } at first, { $last } at the end
words-pocket = board { $board } at the pins
words-limits = { $within } within, { $outside } outside
words-pours = { $pours ->
        [one] one pour
       *[other] { $pours } pours
    }
words-cg = { $far } from the middle towards the pin
words-pin-to-pap = pin to PAP { $far }
words-flare = { $wide } wide at its widest
words-bow-tie = { $wide } wide
words-board = laid down on board { $board }
words-breakpoint = board { $board } after { $far }
words-span = to the middle finger { $far }
words-pouring = Pouring { $balls } balls …
words-scrap = { $shows } Here: { $shares } Filled, hatched, white.
words-histogram = { $balls } balls from { $least } to { $most }
words-deviation = mean { $mean }, standard deviation { $deviation }
words-percentile = 1 % below { $first }, 50 % below { $half }, 99 % below { $last }
words-interval = { $share } of { $balls } balls
words-none = 0 %
words-all = 100 %
words-costs = { $shows } Here { $name } does most: { $first } by itself, { $total } with others.
