# What is said of the reader's work: put on the bench, opened, kept, shared.

work-on-bench = { $name } is on the bench. Undo brings back what was there.
work-held = This step of the lesson leaves the { $what } as it is, so that one thing changes at a time.
work-no-worker = a worker could not be started

# What a step of a lesson leaves as it is, after "the"

held-rest = rest
held-diameter = diameter
held-density = density
held-family = family
held-finish = finish
held-grit = grit
held-kind = kind
held-bottom-diameter = bottom diameter
held-top-diameter = top diameter
held-height = height
held-ring-diameter = ring diameter
held-tube-diameter = tube diameter
held-size = size
held-profile = profile
held-squash = squash
held-position = position
held-turn = turn
held-pieces = pieces
held-cuts = cuts
held-holes = holes
held-entry = entry
held-axis = axis
held-depth = depth
held-hand = hand
held-speed = speed
held-revs = revs
held-axis-rotation = axis rotation
held-axis-tilt = axis tilt
held-launch-angle = launch angle
held-board = board
held-pin-to-pap = pin to pap
held-drilling-angle = drilling angle
held-start-turn = start turn
held-drilling = drilling
held-val-angle = val angle
held-lane = lane
held-oil = oil
held-zones = zones

# Files

work-untitled = untitled
work-too-large = It is larger than { $size }.
work-bytes = { $many } bytes
work-not-readable = It could not be read: it may have been moved, or what it is on is not connected now.
work-no-text = It is not text in UTF-8, as all files of this page are. Where it was changed in another program, save it there as UTF-8.
work-is-ball = It is a ball: “Open…” at the top of the page takes it.
work-is-shot = It is a shot: “Open…” at the top of the page takes it.
work-is-layout = It is a layout: “Open…” at the top of the page takes it.
work-is-oil = It is an oil pattern: “Open…” at the top of the page takes it.
work-is-tolerances = These are tolerances: “Open…” at the top of the page takes them.
work-is-target = It is what is wanted of a core: “Open…” at the top of the page takes it.
work-is-shelf = It is a shelf: “Open…” at the top of the page takes it.
work-is-progress = It is a learner's progress: Lessons takes it, under “Your progress” or “A class”.
work-is-lesson = It is a lesson: Lessons takes it, under “Write one”.
work-kinds = a ball, a shot, a layout, an oil pattern, tolerances, what is wanted of a core, or a shelf
work-no-format = It does not say its "format". What opens here is { $kinds }.
work-other-format = Its "format" is "{ $format }". What opens here is { $kinds }.
work-numbers-before = The numbers that were there come back by “Back to the numbers before”.
work-not-opened = { $file } was not opened. { $why }
work-where = (Where in the file: { $place }.)
work-opening = Opening { $file } …
work-too-long = Its ball takes more than { $seconds } seconds to work out.
work-broke = Whether its shot comes to an end could not be worked out. The browser said: { $why }.
work-opened = Opened { $file }.
work-opened-not-ball = Opened { $file } with the ball on the bench: its own ball is in another file, { $ball }.
work-opened-not-oil = Opened { $file } with the lane as it was: its oil is in another file, { $oil }.
work-opened-not-both = Opened { $file } with the ball on the bench: its own ball is in another file, { $ball }; with the lane as it was: its oil is in another file, { $oil }.
work-opened-oil = Opened { $file }: it is the oil on the lane.
work-opened-layout = Opened { $file }: the ball on the bench is drilled after it.
work-opened-tolerances = Opened { $file }: these are the tolerances, on the Scale.
work-opened-target = Opened { $file }: this is what is wanted of a core, on the Bench.
work-saved = Saved as { $file }.

# Kept between visits

work-nothing-kept = This browser does not let the page keep anything: save your ball to a file before you leave.
work-unreadable = The ball kept from your last visit could not be read, so this is a fresh one.
work-storage-full = The browser's storage for this page is full: changes are no longer kept here. Save your ball to a file.
work-storage-refused = The browser does not keep changes for this page. Save your ball to a file before you leave.
work-aside-unkept = The browser's storage for this page is full: what was set aside for Undo is kept only until you close this page. Save your ball to a file.
work-other-tab = Another tab of this page has changed its bench too. Both are kept: next time the one changed last is here, and Undo brings the other.

# Links

link-not-opened = The link was not opened, and your work is as it was. { $why }
link-already = The ball and shot of the link are on the bench already.
link-opening = Opening the link …
link-opened = Opened from the link: { $ball }. Undo brings back what was on the bench.
link-share = Share link
link-none = No link can be made. { $why }
link-close = Close
link-to = Link to this ball and shot
link-copy = Copy
link-copied = Copied.
link-copy-by-hand = The browser does not let the page copy: copy it from the field.
link-long = The link is { $many } characters long.
link-cut-off = Some programs cut off a link this long: send the file of Save shot instead.
link-holds = The whole state is in the link itself: ball, layout, shot and lane, with their names and notes. Nothing is sent anywhere until you pass it on.
link-file = This page is a file on your computer, so the link opens only there; for somebody else, send the file of Save shot.
