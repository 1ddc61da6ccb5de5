# Seeking a core for wanted numbers.

seek-title = Find a core for wanted numbers
seek-says = Say what the ball should have and what may change. Several different cores may do the same job.
seek-wanted = Wanted
seek-wanted-of = Wanted: { $number }
seek-may-change = May change
seek-as-it-is = as it is
seek-bound-of = { $part }, { $what }:
seek-from = from
seek-to = to
seek-times = times what it is
seek-nothing-free = Nothing may change: tick something.
seek-go = Seek a core
seek-seeking = Seeking
seek-stale = What is wanted has changed since. Seek again to see what that does.
seek-tried = { $tried } of { $starts } starts are tried.
seek-keep-looking = Keep looking
seek-so-far = { $cores ->
        [0] No core so far, from { $tried } starts.
        [one] One core so far, from { $tried } starts.
       *[other] { $cores } different cores so far, from { $tried } starts.
    }
seek-limits = Keep to the published limits
seek-starts = Starts
seek-back = As the ball is
seek-found = What was found
seek-core = Core { $n }
seek-nearest = Nearest
seek-to-bench = To the bench
seek-to-bench-of = To the bench: { $core }
seek-cut = Cut along the pin, all to one scale.
seek-met-one = { $met ->
        [one] { $met } of { $tried ->
            [one] { $tried } start
           *[other] { $tried } starts
        } meets it.
       *[other] { $met } of { $tried ->
            [one] { $tried } start
           *[other] { $tried } starts
        } meet it, all with the same core.
    }
seek-met-many = { $met } of { $tried ->
        [one] { $tried } start
       *[other] { $tried } starts
    } meet it, with { $cores } different cores.
seek-met-none = None of { $tried ->
        [one] { $tried } start
       *[other] { $tried } starts
    } meets it. The nearest core, and what stands in its way:
seek-no-ball = None of { $tried ->
        [one] { $tried } start
       *[other] { $tried } starts
    } leads to a ball that can be made.
seek-numbers = The cores in numbers
seek-number = Number
seek-at-least = at least { $number }
