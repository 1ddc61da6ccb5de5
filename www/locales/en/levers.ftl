# What every control of the ball moves, and the hints beside the sliders.

levers-title = What moves what: the ball's levers
levers-ranked-by = Ranked by
levers-most = The { $figure } moves most with { $control }: { $by } per { $step }.
levers-nothing = Nothing moves the { $figure }.
levers-table = What every control moves
levers-control = Control
levers-per = Per
levers-only-first = Only the first { $shown }
levers-all = All { $all }
levers-note = How much each number changes for one small step. Where up and down are told apart, a step up does not change it by as much as a step down takes back.
levers-up = { $by } up
levers-down = { $by } down
levers-both-ways = { $up } up, { $down } down
levers-hint-most = moves { $most } most
levers-hint-here = moves { $here } most within this part
levers-hint-both = moves { $most } most, and { $here } most within this part
levers-hint-rg = RG
levers-hint-differential = differential
levers-hint-weight = weight
