import type { ComponentChildren } from "preact";
import type { TaskState } from "../task";
import { count } from "../units";
import { Said } from "./said";
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
  if (state.is === "stopped") return <p role="status">{say("parts-stopped")}</p>;
  if (state.is === "refused") {
    return (
      <p class="says says-wrong" role="status">
        <Said problem={state.problem} />
      </p>
    );
  }
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
