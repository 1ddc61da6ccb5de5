import { offered } from "../../locale/names";
import { Say } from "../../locale/say";
import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Said } from "../../parts/said";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Hole, Problem, Vec3 } from "../../types";
import { count } from "../../units";
import { editHoles, problemAt } from "./edits";
import { say } from "./say";
import { put } from "./shapes";

const newHole = (): Hole => ({
  name: offered("hole", "finger hole"),
  entry: [0.5, 0, 1],
  diameter_in: 0.9,
  depth_in: 2.5,
});
const ENTERS = ["bench-enters-x", "bench-enters-y", "bench-enters-z"];
const RUNS = ["bench-runs-x", "bench-runs-y", "bench-runs-z"];

/** Holes drilled into the finished ball. */
export function Holes({ problem }: { problem: Problem | null }) {
  const store = useStore();
  const holes = store.doc.value.ball.holes ?? [];
  return (
    <Fold
      summary={say("bench-holes", { holes: count(holes.length) })}
      wrong={problemAt(problem, "holes") !== null}
    >
      <p class="hint">{say("bench-holes-say")}</p>
      {holes.map((hole, at) => (
        <HoleFields key={at} hole={hole} at={at} problem={problemAt(problem, `holes[${at}]`)} />
      ))}
      <button type="button" onClick={() => editHoles(store, (was) => [...was, newHole()])}>
        {say("bench-add-hole")}
      </button>
    </Fold>
  );
}

function HoleFields({ hole, at, problem }: { hole: Hole; at: number; problem: Problem | null }) {
  const store = useStore();
  const place = `holes[${at}]`;
  const name = hole.name ?? say("bench-hole", { number: count(at + 1) });
  const change = (edit: (hole: Hole) => Hole, key: string) =>
    editHoles(store, (was) => was.map((old, i) => (i === at ? edit(old) : old)), key && `[${at}].${key}`);
  const straight = hole.entry.map((part) => -part) as Vec3;
  return (
    <fieldset class="nested">
      <legend>{name}</legend>
      {problem && problem.place === place && (
        <p class="says says-wrong">
          <Said problem={problem} />
        </p>
      )}
      <label class="line">
        <span class="field-label">{say("bench-name")}</span>
        <input
          type="text"
          value={name}
          onInput={(event) => {
            const name = event.currentTarget.value;
            change((old) => ({ ...old, name }), "name");
          }}
        />
      </label>
      <NumberField
        label={<Term word="hole">{say("bench-hole-diameter")}</Term>}
        value={hole.diameter_in}
        quantity="size"
        min={0.3}
        max={2}
        step={0.01}
        problem={problemAt(problem, `${place}.diameter_in`)}
        onChange={(diameter_in) => change((old) => ({ ...old, diameter_in }), "diameter_in")}
      />
      <NumberField
        label={<Term word="hole">{say("bench-hole-depth")}</Term>}
        value={hole.depth_in}
        quantity="size"
        min={0.1}
        max={5}
        step={0.05}
        problem={problemAt(problem, `${place}.depth_in`)}
        onChange={(depth_in) => change((old) => ({ ...old, depth_in }), "depth_in")}
      />
      <p class="hint">{say("bench-hole-enters")}</p>
      <Direction
        names={ENTERS}
        value={hole.entry}
        problem={problemAt(problem, `${place}.entry`)}
        onChange={(entry, key) => change((old) => ({ ...old, entry }), `entry.${key}`)}
      />
      {hole.axis ? (
        <>
          <p class="hint">{say("bench-hole-runs")}</p>
          <Direction
            names={RUNS}
            value={hole.axis}
            problem={problemAt(problem, `${place}.axis`)}
            onChange={(axis, key) => change((old) => ({ ...old, axis }), `axis.${key}`)}
          />
          <button type="button" onClick={() => change(({ axis: _, ...rest }) => rest, "")}>
            {say("bench-hole-straight")}
          </button>
        </>
      ) : (
        <button type="button" onClick={() => change((old) => ({ ...old, axis: straight }), "")}>
          {say("bench-hole-pitched")}
        </button>
      )}{" "}
      <button type="button" onClick={() => editHoles(store, (was) => was.toSpliced(at, 1))}>
        {say("bench-hole-remove", { hole: name })}
      </button>
    </fieldset>
  );
}

function Direction(props: {
  /** Texts of the three, in order. */
  names: string[];
  value: Vec3;
  problem: Problem | null;
  onChange(value: Vec3, key: string): void;
}) {
  const { names, value, problem, onChange } = props;
  return (
    <div class="trio">
      {names.map((name, axis) => (
        <NumberField
          bare
          key={name}
          label={
            <Term word="position">
              <Say id={name} parts={{ name: (said) => <span class="visually-hidden">{said}</span> }} />
            </Term>
          }
          value={value[axis] ?? 0}
          quantity="ratio"
          min={-1}
          max={1}
          step={0.05}
          problem={axis === 0 ? problem : null}
          onChange={(next) => onChange(put(value, axis, next), String(axis))}
        />
      ))}
    </div>
  );
}
