# What is on the lane: oil, or friction by distance; friction; oil as games go by.

## The fold and its choice

oil-none = Oil
oil-summary = Oil: { $name }, { $length }, { $volume }
oil-summary-ratio = Oil: { $name }, { $length }, { $volume }, { $ratio }:1
oil-zones-summary = Lane: friction { $zones }
oil-zone-until = { $friction } to { $end }
oil-zone-then = then { $friction }
oil-choose = <pattern>Pattern</pattern>
oil-by-distance = Friction by distance
oil-by-distance-says = Friction given like this is that of this ball on this lane: the ball's cover and finish do not change it. With an oil pattern they do.
oil-length = <pattern>Length</pattern>
oil-volume = <pattern>Volume</pattern>
oil-ratio = <ratio>Outside : inside</ratio>
oil-thickest = Thickest <film>film</film>
oil-no-number = none
oil-drawn = Drawn by hand, cell by cell. To go back to a pattern in numbers, undo or choose one above.
oil-name = Name
oil-save = Save oil
oil-open = Open oil…
oil-open-label = Oil to open
# The name of what was made of a pattern of this name.
oil-changed = { $name }, changed

## Friction by distance

oil-zones = <friction>Friction</friction> by distance
oil-zone-end =
    { $zone ->
        [oil] Oil length
        [full] Full oil ends
        [thin] Thin oil ends
       *[other] Zone { $number } ends
    }
oil-zone-friction =
    { $zone ->
        [oil] <friction>Friction</friction> in oil
        [full] <friction>Friction</friction> in oil
        [thin] <friction>Friction</friction> in thin oil
        [beyond] <friction>Friction</friction> beyond
       *[other] <friction>Friction</friction> in zone { $number }
    }

## The film across the lane

oil-across = Across the lane at { $distance }
oil-across-distance = <pattern>Distance</pattern>
oil-across-title = Film across the lane
oil-across-says = Film on each board at { $distance }: from { $least } to { $most }. Board 1 is on the right. The same is in the table.
oil-across-ends = Film across, at { $distance }: { $least } to { $most }
oil-across-tables = The same as tables
oil-across-table = Film at { $distance }
oil-across-board = Board from the right
oil-across-film = <film>Film</film>, { $unit }
oil-down-table = Down the lane, mean of all boards
oil-down-to = To, { $unit }

## The drawing, and drawing on it

oil-map = The oil from above
oil-map-says = { $name }: oil over boards, counted from the lane's right edge, and distance, { $length } long, at its thickest { $thickest }. The dashed line is the ball's path. The same is in the tables.
oil-map-hint = Lines and tint: film of 0.1, 0.5, 1, 2, 4, 8 µm and so on. Boards from the lane's right edge, whichever hand bowls. Dashed: the ball's path.
oil-draw = Draw on the oil
oil-look-only = Look only
oil-pencil-more = Pencil: more oil
oil-pencil-less = Pencil: less oil
oil-boards-wide = Boards wide
oil-feet-long = Long
oil-each-time = Each time
oil-both-sides = The same on both sides
oil-part = Part of it, in numbers
oil-part-from-board = <board>From board</board>
oil-part-to-board = <board>To board</board>
oil-part-from = <pattern>From</pattern>
oil-part-to = <pattern>To</pattern>
oil-part-film = <film>Film</film>
oil-part-set = Set to it
oil-part-add = Add it
oil-part-take = Take it off

## The pattern in numbers

oil-pattern = The <pattern>pattern</pattern> in numbers
oil-pattern-length = Length
oil-pattern-volume = Volume
oil-pattern-ratio = <ratio>Inside to outside</ratio>
oil-pattern-thin = Thin out to board
oil-pattern-full = Full from board
oil-pattern-front = Full as far as
oil-pattern-end = <taper>Left at the end</taper>
oil-pattern-buff = Brushed out over
oil-pattern-says = Boards from either edge: thin up to the first, then more and more, full from the second to the middle. Down the lane: full at first, then less and less to what is left, and brushed out to nothing. That form is a model choice.

## Friction from film

oil-friction = Friction: { $oil } in thick oil, { $dry } dry
oil-friction-table = The same as a table
oil-plain-cover = <friction>Friction</friction> of a plain cover
oil-mu-oil = In thick oil
oil-mu-oil-source = The value usually quoted from the physics literature (C. Frohlich, American Journal of Physics 72, 1170, 2004); from memory, unverified.
oil-mu-dry = On dry boards
oil-mu-dry-source = The value usually quoted from the physics literature (C. Frohlich, American Journal of Physics 72, 1170, 2004); from memory, unverified. The published limit of a ball is 0.32.
oil-film-half = Half-way film
oil-film-half-source = The film on which friction lies half-way between the two; a model choice, no figure is published.
oil-with-cover = { $value } with this cover; <source>where that comes from</source>
oil-with-cover-choice = { $value } with this cover; <source>model choice</source>
oil-form = How the curve is made
oil-form-says = The form is that of mixed lubrication: the thinner the film beside the roughness, the more of the load rubs dry (A. V. Olver and H. A. Spikes, Proc. Inst. Mech. Eng. J 212, 321, 1998; from memory). That it holds for a ball on a lane, and the factors of family and finish, are model choices; that a rougher surface grips more is common practice, no source.
oil-usual = The usual figures
oil-curve = Friction by film
oil-met = This shot meets films from { $most } down to { $least }.
oil-curve-says =
    { $met ->
        [yes] With this cover from { $dry } dry to { $oil } in thick oil; with a plain one from { $plain-dry } dry to { $plain-oil } in thick oil. { oil-met }
       *[no] With this cover from { $dry } dry to { $oil } in thick oil; with a plain one from { $plain-dry } dry to { $plain-oil } in thick oil.
    }
oil-curve-hint =
    { $met ->
        [yes] Solid: this cover. Dashed: a plain one. Ticks below the line: films this shot meets. { oil-met }
       *[no] Solid: this cover. Dashed: a plain one. Ticks below the line: films this shot meets.
    }
oil-curve-table = <friction>Friction</friction> by <film>film</film>
oil-curve-film = Film, { $unit }
oil-curve-own = This cover
oil-curve-plain = A plain one

## As games go by

# How many games are followed; further ones where the lane is worn already.
oil-games-of =
    { $further ->
        [yes] { $games ->
            [one] { $games } further game
           *[other] { $games } further games
        }
       *[no] { $games ->
            [one] { $games } game
           *[other] { $games } games
        }
    }
oil-wear = As games go by: { oil-games-of }
oil-games = <pattern>Games</pattern>
oil-wear-following = Following { oil-games-of }…
oil-wear-after = After { oil-games-of }
oil-wear-gutter = { oil-wear-after } the same shot falls into the gutter.
oil-wear-apart = { oil-wear-after } the same shot does not compare: one of the two does not reach the pins.
oil-wear-arrives =
    { $where ->
        [left] { oil-wear-after } the same shot arrives { $boards } boards further left, on board { $board }
        [right] { oil-wear-after } the same shot arrives { $boards } boards further right, on board { $board }
       *[same] { oil-wear-after } the same shot arrives on the same board
    }{ $turn ->
        [changed] , at { $angle } instead of { $angle-before }.
       *[same] , at the same angle.
    }{ $breakpoint ->
        [further] {" "}Its breakpoint lies { $distance } further down the lane.
        [sooner] {" "}Its breakpoint lies { $distance } sooner.
       *[same] {""}
    }
oil-wear-begun =
    { $further ->
        [yes] { $before ->
            [one] The lane as it is, worn by { $before } game
           *[other] The lane as it is, worn by { $before } games
        }
       *[no] The lane as it is
    }
oil-wear-key = Dashed: the shot on the lane as it is. Solid: the same shot after the games.
oil-wear-where = Of { $all }, { $left } is still on the lane and { $taken } went with the balls; { $moved } was taken up and laid down again further on.
oil-wear-table = Game by game, as a table
oil-wear-model = A model choice: no published figures say how much oil a ball takes up and carries. Here a ball takes up { $share }% of the film in a band one board wide, and over { $carried } would lay down all but a third of what it carries; a game is { $shots } first balls, each up to { $spread } boards off its line. No oil is made or lost.
oil-wear-use = Use the worn lane
oil-wear-caption = { $title }: { $volume }, { $length } long
oil-wear-picture = Oil over boards and distance, at its thickest { $thickest }, and the ball's path.
oil-games-table = The lane and the shot after each game
oil-game = Game
oil-game-begun = as it is
oil-game-left = <pattern>On lane</pattern>, { $unit }
oil-game-gone = <film>Gone</film>, { $unit }
oil-game-moved = <film>Moved</film>, { $unit }
oil-game-board = <board>Board</board>
oil-game-angle = <angle>Angle</angle>, °

# The name and the note of what was made of a pattern of this name by play.
oil-worn =
    { $games ->
        [one] { $name } after { $games } game
       *[other] { $name } after { $games } games
    }
oil-worn-note = Worn by a model, not measured.
