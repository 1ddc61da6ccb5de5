import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Said } from "../../parts/said";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Hole, Problem, Vec3 } from "../../types";
import { editHoles, problemAt } from "./edits";
import { put } from "./shapes";

const NEW_HOLE: Hole = { name: "finger hole", entry: [0.5, 0, 1], diameter_in: 0.9, depth_in: 2.5 };
const WAYS = ["x", "y", "z, to the pin"];

/** Holes drilled into the finished ball. */
export function Holes({ problem }: { problem: Problem | null }) {
  const store = useStore();
  const holes = store.doc.value.ball.holes ?? [];
  return (
    <Fold summary={`Drilled holes (${holes.length})`} wrong={problemAt(problem, "holes") !== null}>
      <p class="hint">
        Here a hole only takes weight away. Where to drill a real ball is for a qualified pro shop to say.
      </p>
      {holes.map((hole, at) => (
        <HoleFields key={at} hole={hole} at={at} problem={problemAt(problem, `holes[${at}]`)} />
      ))}
      <button type="button" onClick={() => editHoles(store, (was) => [...was, structuredClone(NEW_HOLE)])}>
        Add a hole
      </button>
    </Fold>
  );
}

function HoleFields({ hole, at, problem }: { hole: Hole; at: number; problem: Problem | null }) {
  const store = useStore();
  const place = `holes[${at}]`;
  const name = hole.name ?? `hole ${at + 1}`;
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
        <span class="field-label">Name</span>
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
        label={<Term word="hole">Diameter</Term>}
        value={hole.diameter_in}
        quantity="size"
        min={0.3}
        max={2}
        step={0.01}
        problem={problemAt(problem, `${place}.diameter_in`)}
        onChange={(diameter_in) => change((old) => ({ ...old, diameter_in }), "diameter_in")}
      />
      <NumberField
        label={<Term word="hole">Depth</Term>}
        value={hole.depth_in}
        quantity="size"
        min={0.1}
        max={5}
        step={0.05}
        problem={problemAt(problem, `${place}.depth_in`)}
        onChange={(depth_in) => change((old) => ({ ...old, depth_in }), "depth_in")}
      />
      <p class="hint">
        It enters at the surface in this direction from the ball's centre (z to the pin, x and y square to
        it):
      </p>
      <Direction
        name="Enters towards"
        value={hole.entry}
        problem={problemAt(problem, `${place}.entry`)}
        onChange={(entry, key) => change((old) => ({ ...old, entry }), `entry.${key}`)}
      />
      {hole.axis ? (
        <>
          <p class="hint">It runs inward in this direction:</p>
          <Direction
            name="Runs towards"
            value={hole.axis}
            problem={problemAt(problem, `${place}.axis`)}
            onChange={(axis, key) => change((old) => ({ ...old, axis }), `axis.${key}`)}
          />
          <button type="button" onClick={() => change(({ axis: _, ...rest }) => rest, "")}>
            Straight to the centre
          </button>
        </>
      ) : (
        <button type="button" onClick={() => change((old) => ({ ...old, axis: straight }), "")}>
          Pitch it off the centre
        </button>
      )}{" "}
      <button type="button" onClick={() => editHoles(store, (was) => was.toSpliced(at, 1))}>
        Remove {name}
      </button>
    </fieldset>
  );
}

function Direction(props: {
  name: string;
  value: Vec3;
  problem: Problem | null;
  onChange(value: Vec3, key: string): void;
}) {
  const { name, value, problem, onChange } = props;
  return (
    <div class="trio">
      {WAYS.map((way, axis) => (
        <NumberField
          bare
          key={way}
          label={
            <Term word="position">
              <span class="visually-hidden">{name} </span>
              {way}
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
