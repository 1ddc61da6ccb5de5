import { useEffect, useState } from "preact/hooks";
import { say } from "./frame";
import { useStore } from "./store";
import { reading, sentenceIn } from "./units";

const QUIET_MS = 800;

/** Says the results aloud once an edit has come to rest. */
export function Announcer() {
  const store = useStore();
  const { weighed, roll, ballProblem, shotProblem } = store.derived.value;
  const { units } = store.view.value;
  const [said, setSaid] = useState("");
  const [first, setFirst] = useState(true);

  const angle = roll.summary.entry_angle_deg;
  const problem = ballProblem ?? shotProblem;
  const text = problem
    ? say("announce-problem", { problem: sentenceIn(problem.message, units) })
    : say(angle === null ? "announce-gutter" : "announce-results", {
        weight: reading(weighed.weight_lb, "weight", units),
        rg: reading(weighed.rg_in.low, "rg", units),
        differential: reading(weighed.differential_in, "rg", units),
        angle: reading(angle ?? 0, "angle", units),
      });

  useEffect(() => {
    if (first) {
      setFirst(false);
      return;
    }
    const timer = setTimeout(() => setSaid(text), QUIET_MS);
    return () => clearTimeout(timer);
  }, [text]);

  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}
