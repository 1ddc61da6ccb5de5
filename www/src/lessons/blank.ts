// The shortest lesson that is sound, to begin a lesson of one's own from.

export const BLANK = `+++
format = "pithball.lesson/1"
id = "my-lesson"
title = "My lesson"
course = "My course"
order = 1
minutes = 5
aim = "You can say what the lesson is about."
words = ["RG"]
teacher = "What a teacher should know."

[start]
ball = "../balls/no-3-three-piece.ball.json"
shot = "../shots/opening.shot.json"

[given]
goal_mph = "16.5 mph"
+++

## Look

\`\`\`step
kind = "explore"
rooms = ["saw", "scale"]
free = []
watch = ["rg_in"]
\`\`\`

This ball weighs {weight_lb}. Its [[RG]] is {rg_in}.

## Guess

\`\`\`step
kind = "predict"
rooms = ["saw", "scale"]

[[option]]
text = "It comes in on a low board."
right = "board_at_pins < centre_board"
say = "It comes in on board {board_at_pins}."

[[option]]
text = "It comes in on a high board."
right = "board_at_pins >= centre_board"
say = "No. It comes in on board {board_at_pins}, and the middle is board {centre_board}."
\`\`\`

Where does the ball come in?

## Do

\`\`\`step
kind = "do"
rooms = ["lane"]
free = ["shot.release.speed_mph"]
watch = ["roll_start_ft"]
hints = [
  "Only the speed is free.",
  "Throw it more slowly.",
  "Set the speed to {goal_mph}.",
]
done = "At {shot.release.speed_mph} it rolls after {roll_start_ft}."

[[check]]
want = "shot.release.speed_mph <= goal_mph"

[solution.set]
"shot.release.speed_mph" = 16.5
\`\`\`

Throw the ball at {goal_mph} or slower.

## Why

\`\`\`step
kind = "explain"
\`\`\`

Say here why it is so.
`;
