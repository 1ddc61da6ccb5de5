import type { ComponentChildren } from "preact";
import { useAloud } from "../aloud";
import type { TaskState } from "../task";
import { count } from "../units";
import { Broken } from "./broken";
import { Refused } from "./refused";
import { Result } from "./result";
import { say } from "./say";

interface WorkingProps {
  /** What is being done, and that it was stopped. */
  doing: string;
  state: TaskState<unknown>;
  onStop(): void;
  children?: ComponentChildren;
}

/** How far some work is, with a button that stops it; why there is nothing, where it was stopped or refused. */
export function Working({ doing, state, onStop, children }: WorkingProps) {
  const running = state.is === "running";
  // That it has begun; how far it is can be asked for, and what came of it says itself.
  useAloud(running, running ? doing : null);
  if (state.is === "stopped") return <Result of={state}>{say("parts-stopped")}</Result>;
  if (state.is === "refused") {
    return <Refused problem={state.problem} />;
  }
  if (state.is === "broken") return <Broken broken={state.broken} />;
  if (state.is !== "running") return null;
  return (
    <div class="working">
      <label>
        {say("parts-working", { doing, percent: count(Math.round(100 * state.share)) })}
        <progress max={1} value={state.share} />
      </label>
      <button type="button" onClick={onStop}>
        {say("parts-stop")}
      </button>
      {children}
    </div>
  );
}
