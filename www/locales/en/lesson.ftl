# A lesson that has the bench, and what the lessons share.

## Pictures of the lane

lesson-lane-above = The lane from above
lesson-lane-path = With the path of the ball.
lesson-lane-empty = Empty, to draw a path on.

## Numbers to watch

lesson-watch = Numbers to watch
lesson-at-first = at first
lesson-now = now

## The step in front

lesson-unreadable = This lesson cannot be read any more: it was begun with another edition of the page.
lesson-leave = Leave the lesson
lesson-of = { $title }. { $trial ->
        [yes] Trying it out. Step { $step } of { $steps }: { $kind }
       *[no] Step { $step } of { $steps }: { $kind }
    }
lesson-far = How far you are
lesson-aside = Your own ball and shot are kept aside, and come back when the lesson ends or you leave it.
lesson-stale = Until the mistake on the bench is mended, the numbers are those before it.
lesson-back = Back
lesson-end-without = End without it
lesson-go-on-without = Go on without it
lesson-finish = Finish
lesson-next = Next
lesson-again = Begin this step again
lesson-kind-explore = look round
lesson-kind-predict = predict
lesson-kind-do = do it
lesson-kind-observe = watch
lesson-kind-explain = why

## A question

lesson-think = What do you think?
lesson-said-right = You said: right
lesson-said-wrong = You said: not right
lesson-said-low = You said: too small
lesson-said-high = You said: too large
lesson-right-answer = The right answer: { $answer }
lesson-computed = Computed: <number/>
lesson-answer = Answer
lesson-your-number = Your number
lesson-your-number-in = Your number<unit>, { $unit }</unit>
lesson-no-number = this is no number.
lesson-answer-path = Answer with this path
lesson-by-boards = by boards { $points }
lesson-by-board = { $board } at { $far }

## A path drawn on the lane

lesson-draw = The lane from above, to draw a path on
lesson-draw-says = Drag the points across the lane, or go to one with the Tab key and move it with the arrow keys.
lesson-path-point = board { $board } at { $far }
lesson-your-path = Your path: { $points }.
lesson-balls-path = The ball's: { $points }.
lesson-path-at = Your path at { $far }
lesson-on-board = board { $board }
lesson-path-key = Dashed with points: yours. The line without: the ball's.
lesson-type-boards = Type the boards instead
lesson-board-at = <board>Board</board> at { $far }

## Something to do

lesson-hint-first = A hint
lesson-hint-second = A second hint
lesson-hint-last = The last hint
lesson-hints = Hints
lesson-one-way = This is one way to do it
lesson-done = Done
lesson-so-before = So it stood before
lesson-missing = Still missing
lesson-mistake = There is a mistake on the bench: { $says }
lesson-already = You have changed nothing yet: this was reached as the step opened.
lesson-own-way-open = It is the lesson's own, so the step stays open. Begin it again to find a way yourself.
lesson-own-way = It is the lesson's own. To find another, begin the step again.
lesson-show-way = Show me one way to do it

## The end of a lesson

lesson-open-step = step { $step }, “{ $title }”
lesson-finished = “{ $title }” is finished. Your own ball and shot are back on the bench.
lesson-at-end = “{ $title }” is at its end. Still open: { $open }. Your own ball and shot are back on the bench.
lesson-left = You left the lesson. Your own ball and shot are back on the bench.

## What was done, and that it is kept

progress-refused = This browser does not let the page keep your progress: save it to a file before you leave.
progress-unreadable = The progress kept from your last visit could not be read, so this is a fresh one.
progress-full = The browser's storage for this page is full: your progress is not kept. Save it to a file.
progress-not-kept = This browser does not keep your progress. Save it to a file before you leave.
progress-no-file = { $why } A progress file is what a learner saves here under Lessons, “Your progress”; its name ends in .progress.json.
progress-where = { $says } (Where: { $place }.)
# What a file of it is called where the learner has no name
progress-file = my progress
# A wrong answer, as a class is told of it
class-too-little = too little, such as { $what }
class-too-much = too much, such as { $what }
class-another-path = another path, such as { $what }
