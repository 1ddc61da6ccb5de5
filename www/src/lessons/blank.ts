// The shortest lesson that is sound, to begin a lesson of one's own from.

import { type Language, language } from "../locale/language";

const SAID = {
  en: {
    title: "My lesson",
    course: "My course",
    aim: "You can say what the lesson is about.",
    teacher: "What a teacher should know.",
    looking: "This ball weighs {weight_lb}. Its [[RG]] is {rg_in}.",
    look: "Look",
    guess: "Guess",
    do: "Do",
    why: "Why",
    low: "It comes in on a low board.",
    wrong: "No. It comes in on board {board_at_pins}, and the middle is board {centre_board}.",
    right: "It comes in on board {board_at_pins}.",
    high: "It comes in on a high board.",
    asked: "Where does the ball come in?",
    first: "Only the speed is free.",
    second: "Throw it more slowly.",
    last: "Set the speed to {goal_mph}.",
    done: "At {shot.release.speed_mph} it rolls after {roll_start_ft}.",
    task: "Throw the ball at {goal_mph} or slower.",
    explained: "Say here why it is so.",
  },
  es: {
    title: "Mi lección",
    course: "Mi curso",
    aim: "Puedes decir de qué trata la lección.",
    teacher: "Lo que conviene que sepa quien enseña.",
    looking: "Esta bola pesa {weight_lb}. Su [[RG]] es {rg_in}.",
    look: "Mira",
    guess: "Predice",
    do: "Hazlo",
    why: "Por qué",
    low: "Llega por una tabla baja.",
    wrong: "No. Llega por la tabla {board_at_pins}, y la del medio es la {centre_board}.",
    right: "Llega por la tabla {board_at_pins}.",
    high: "Llega por una tabla alta.",
    asked: "¿Por dónde llega la bola?",
    first: "Solo la velocidad se puede cambiar.",
    second: "Lánzala más despacio.",
    last: "Pon la velocidad en {goal_mph}.",
    done: "A {shot.release.speed_mph} rueda a partir de {roll_start_ft}.",
    task: "Lanza la bola a {goal_mph} o más despacio.",
    explained: "Di aquí por qué es así.",
  },
} satisfies Record<Language, Record<string, string>>;

/** In the page's language. */
export const blank = (): string => written(SAID[language()]);

const written = (said: typeof SAID.en): string => `+++
format = "pithball.lesson/1"
id = "my-lesson"
title = "${said.title}"
course = "${said.course}"
order = 1
minutes = 5
aim = "${said.aim}"
words = ["RG"]
teacher = "${said.teacher}"

[start]
ball = "../balls/no-3-three-piece.ball.json"
shot = "../shots/opening.shot.json"

[given]
goal_mph = "16.5 mph"
+++

## ${said.look}

\`\`\`step
kind = "explore"
rooms = ["saw", "scale"]
free = []
watch = ["rg_in"]
\`\`\`

${said.looking}

## ${said.guess}

\`\`\`step
kind = "predict"
rooms = ["saw", "scale"]

[[option]]
text = "${said.low}"
right = "board_at_pins < centre_board"
say = "${said.right}"

[[option]]
text = "${said.high}"
right = "board_at_pins >= centre_board"
say = "${said.wrong}"
\`\`\`

${said.asked}

## ${said.do}

\`\`\`step
kind = "do"
rooms = ["lane"]
free = ["shot.release.speed_mph"]
watch = ["roll_start_ft"]
hints = [
  "${said.first}",
  "${said.second}",
  "${said.last}",
]
done = "${said.done}"

[[check]]
want = "shot.release.speed_mph <= goal_mph"

[solution.set]
"shot.release.speed_mph" = 16.5
\`\`\`

${said.task}

## ${said.why}

\`\`\`step
kind = "explain"
\`\`\`

${said.explained}
`;
