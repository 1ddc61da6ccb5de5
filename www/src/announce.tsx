import { heard, useNews } from "./aloud";
import { say } from "./frame";
import { whatHappened } from "./rooms/lane/sentence";
import { useStore } from "./store";
import { reading, sentenceIn } from "./units";

/** Says the numbers of the ball and what the shot did aloud once an edit has come to rest. */
export function Announcer() {
  const store = useStore();
  const { weighed, roll, shot, ballProblem, shotProblem } = store.derived.value;
  const { units } = store.view.value;
  const problem = ballProblem ?? shotProblem;
  const wrong =
    problem &&
    say(ballProblem ? "announce-problem" : "announce-shot-problem", {
      problem: sentenceIn(problem.message, units),
    });
  const ball = say("announce-ball", {
    weight: reading(weighed.weight_lb, "weight", units),
    rg: reading(weighed.rg_in.low, "rg", units),
    differential: reading(weighed.differential_in, "rg", units),
  });
  const did = whatHappened(roll, shot.hand, units);
  useNews(wrong ?? ball, wrong ?? ball);
  useNews(did, did);
  return <Heard />;
}

/** The place where everything is said aloud; a dialog that shuts the page off has one of its own. */
export function Heard() {
  const { text, nth } = heard.value;
  return (
    <div class="visually-hidden" role="status">
      <p key={nth}>{text}</p>
    </div>
  );
}
