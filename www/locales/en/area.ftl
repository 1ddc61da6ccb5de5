# Room for error: the shot thrown again and again, and where the throws arrive.

area-name = Room for error
area-stopped = Stopped.
area-again = Throw again
area-throwing = Throwing it again and again …
area-stop = Stop
area-table = Where the throws come in, in every 100: the <pocket>pocket</pocket> and beside it
area-comes-in = Comes in
area-of-map = Of the map
area-of-hand = Of a steady hand
area-pocket = Pocket
area-pocket-says = boards 17 to 18.5 at 4° to 6°
area-shallow = Too flat
area-shallow-says = those boards, under 4°
area-steep = Too steep
area-steep-says = those boards, over 6°
area-light = Short of it
area-light-says = below board 17
area-high = Past it
area-high-says = above board 18.5
area-lost = Gutter
area-lost-says = never reaches the pins
area-on-boards = The board
area-on-boards-says = 17 to 18.5, at any angle
area-at-angles = The angle
area-at-angles-says = 4° to 6°, on any board
# The stretch that will do while the other stays.
area-board-room =
    { $room ->
        [reaches] Board at the foul line: reaches the pocket from { $from } to { $to }.
        [reaches-further] Board at the foul line: reaches the pocket from { $from } to { $to }, and further than the map goes.
        [would-reach] Board at the foul line: would reach the pocket from { $from } to { $to }.
        [would-reach-further] Board at the foul line: would reach the pocket from { $from } to { $to }, and further than the map goes.
       *[none] Board at the foul line: none near it reaches the pocket while the other stays.
    }
area-angle-room =
    { $room ->
        [reaches] Launch angle: reaches the pocket from { $from } to { $to }.
        [reaches-further] Launch angle: reaches the pocket from { $from } to { $to }, and further than the map goes.
        [would-reach] Launch angle: would reach the pocket from { $from } to { $to }.
        [would-reach-further] Launch angle: would reach the pocket from { $from } to { $to }, and further than the map goes.
       *[none] Launch angle: none near it reaches the pocket while the other stays.
    }
area-how = { $throws } throws. The map: boards { $from-board } to { $to-board } by launch angles { $from-angle } to { $to-angle }, evenly. A steady hand: board, angle, speed and revs vary together with standard deviations of { $boards }, { $angle }, { $speed } and { $revs } (model choice). The window: { $window }.
area-map = Map of throws about this one
area-map-board = board { $board }
area-map-boards = board at the foul line
area-map-says = Each point is a throw from that board at that launch angle (to the right upwards); the cross is this shot.
