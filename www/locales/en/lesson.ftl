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
