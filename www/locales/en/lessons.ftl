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
words-stretch = from { $from } to { $to }
words-cover = { $thinnest } at its thinnest, { $mean } on average
words-cover-mean = { $mean } on average
words-pouring = Pouring { $balls } balls …
words-scrap = { $shows } Here: { $shares } Filled, hatched, white.
words-histogram = { $balls } balls from { $least } to { $most }
words-deviation = mean { $mean }, standard deviation { $deviation }
words-percentile = 1 % below { $first }, 50 % below { $half }, 99 % below { $last }
words-interval = { $share } of { $balls } balls
words-none = 0 %
words-all = 100 %
words-costs = { $shows } Here { $name } does most: { $first } by itself, { $total } with others.

## The list

lessons-first = Each lesson takes about ten minutes and works without a network: look, say what you expect, try it on the bench, and see why.
lessons-finished = You have finished { $finished } of { $all }.
lessons-to-mine = Your progress: name it, save it, hand it in
lessons-reading = One moment. Reading the lessons …
lessons-after = What comes next
lessons-next = The next one: { $title }. { $course }.
lessons-no-next = There is no lesson after this one that you have not finished.
lessons-go-on-next = Go on with it
lessons-save-progress = Save your progress
lessons-going = The lesson you are in
lessons-going-says = You are in a lesson, at step { $step }. Your own ball and shot are kept aside.
lessons-back-to-it = Back to it
lessons-leave-it = Leave it
lessons-state-done = done
lessons-begun = begun: { $passed } of { $steps } steps
lessons-facts = About { $minutes } minutes, { $steps } steps
lessons-its-words = Words: <words/>
lessons-go-on = Go on at step { $step }, { $title }<of>, of { $lesson }</of>
lessons-take = Take this lesson<of> { $lesson }</of>
lessons-take-again = Take it again<of> { $lesson }</of>
lessons-take-anew = Take it from the beginning<of> { $lesson }</of>
lessons-to-room = Show to a room<of> { $lesson }</of>
lessons-on-paper = On paper<of> { $lesson }</of>

## What this learner has done

mine-title = Your progress
mine-says = It stays in this browser: nothing is sent anywhere. Save it to a file to hand it in or to go on elsewhere.
mine-name = Your name, or what you want to be called
mine-save = Save progress to a file
mine-file = Progress to take in
mine-take-in = Take in a progress file…
mine-taken = Taken in from { $file }: { $lessons ->
        [one] 1 lesson
       *[other] { $lessons } lessons
    }.
mine-no-further = Nothing in { $file } goes further than what is here.
mine-refused = { $file } was not taken in. { $why }
mine-forgotten = Your progress is forgotten.
mine-sure = Yes, forget all of it
mine-keep = No, keep it
mine-forget = Forget it…

## A class

class-says = Your learners save their progress to a file and give it to you. Open all of the files at once: they are read here, in this tab, and nothing is sent or kept.
class-files = Progress files of a class
class-open = Open progress files…
class-away = Put them away
class-read = { $files ->
        [one] 1 file read.
       *[other] { $files } files read.
    }
class-twice = These were there already and are counted once:
class-same = { $file } holds the same as { $other }.
class-not-read = These were not read:
class-refused = { $file }: { $why }
class-only-first = Only the first { $files } files were read.
class-who = Who did what
class-learner = Learner
class-finished-many = Finished
class-finished-of = { $finished } of { $learners } finished
class-finished-middle = { $finished } of { $learners } finished, { $middle } in the middle of it
class-no-name = no name
class-finished = finished
class-passed = { $passed } of { $steps } steps
class-right = { $right } of { $predicted } predicted right
class-tries = { $tries ->
        [one] 1 failed try
       *[other] { $tries } failed tries
    }
class-hints = { $hints ->
        [one] 1 hint
       *[other] { $hints } hints
    }
class-shown = was shown the way: { $steps }
class-steps-open = open: { $steps }
class-not-named = a step not named in the file
class-wrong-first = What was predicted wrong, the most often mistaken first
class-wrong = What was predicted wrong
class-question = Question
class-answered-right = Right
class-wrong-answers = Wrong answers
class-none = none
class-of = { $part } of { $all }
class-times = { $count } ×: { $said }
class-tasks-first = What had to be done, the most failed tries first
class-tasks = What had to be done
class-task = Task
class-done-by = Done by
class-failed-tries = Failed tries
class-hints-taken = Hints
class-failed-try = A failed try: a change that was left standing and was not what was wanted.

## Writing a lesson

write-title = Write a lesson
write-says = A lesson is a text file. Begin from one that is there, change it, and see what is wrong and how it reads. Save it to a file to give it to others: they open it here and take it.
write-file = Lesson file to open
write-open = Open a lesson file…
write-begin-from = Begin from
write-choose = choose a lesson …
write-short = a short blank one
write-short-says = A short lesson with one step of each kind, to be filled in.
write-copy-says = This is a copy: the lesson of the page stays as it is.
write-take-back = Back to what you wrote
write-before = What you wrote before is kept.
write-is-back = What you wrote is back.
write-not-opened = { $file } was not opened. { $why }
write-opened = Opened { $file }.
write-save = Save to a file
write-try = Try it
write-to-room = Show it to a room
write-on-paper = On paper
write-not-kept = The browser does not keep this text: save it to a file before you leave.
write-text = The lesson as text
write-nothing = Nothing yet
write-reading = Being read …
write-sound = It is sound
write-wrong = What is wrong
write-sound-says = Its own solutions pass every check, its start passes none, and every number in it is computed.
write-line = Line { $line }
write-is-sound = It is sound.
write-mistakes = { $many ->
    [one] Line { $line }: { $message }
   *[other] { $many } mistakes. The first, line { $line }: { $message }
}
write-more = More may show once this is mended: expressions are looked at where the form is right, and the lesson is worked through where they can be read.
write-reads = How it reads: { $title }
write-names = Names that can be used
write-names-says = Any number of the ball or shot can be used by its place too, such as <piece/> or <revs/>. With <start/> before it a name speaks of the bench as the step opened, with the name of a state before it of that state.

## On paper

paper-sheet-title = Worksheet: { $title }
paper-key-title = Key: { $title }
paper-what = What to print
paper-sheet = the worksheet
paper-key = the answer key
paper-print = Print…
paper-back = Back to the lessons
paper-name = Name
paper-date = Date
paper-words = Words
paper-read-later = Read this when the rest is done.
paper-because = Because
paper-your-number = Your number
paper-draw = Draw the path of the ball.
paper-at-first = at first
paper-found = what you found
paper-fill-in = to fill in
paper-changed = What I changed
paper-key-of = { $course }: answer key
paper-teacher = For the teacher
paper-one-way = One way to do it ends with this ball and these numbers; others are as good.

## Shown to a room

coach-label = { $title }, for a room
coach-back = Back
coach-at = { $at } of { $all }
coach-next = Next
coach-full = Full screen
coach-end = End
coach-keys = On with → or Page Down, back with ← or Page Up: a clicker sends the same. Where the room is asked, 1 counts a hand for A, 2 for B and so on; with Shift a hand less.
coach-change = What would you change?
coach-one-way = <strong>One way to do it.</strong> <done/>
coach-over = That was the lesson. What was new to you?
coach-hint = A hint
coach-another-hint = Another hint
coach-hands-keys = Press 1 for a hand for A, 2 for B and so on; with Shift a hand less. ← and → move on.
coach-room-says = What the room says
coach-take-down = Take it down
coach-taken-down = Taken down.
coach-field-keys = In the field ← and → stay in the text: Page Down and Page Up move on.
coach-take-path = Take the path down
coach-path-keys = On a point of the path the arrow keys move it: Page Down and Page Up move on.
coach-right = Right
coach-fewer = One hand fewer for { $letter }
coach-hands = Hands for { $letter }
coach-more = One hand more for { $letter }
coach-letter = { $letter } { $hands }
coach-now = Hands: { $hands }.
coach-counted = { $hands ->
        [one] 1 hand
       *[other] { $hands } hands
    }
coach-sum = { $all ->
        [one] { $right } of { $all } hand was up for what is right.
       *[other] { $right } of { $all } hands were up for what is right.
    }
