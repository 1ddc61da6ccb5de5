import { useHint } from "../../maker/levers/use-levers";
import { type FieldProps, NumberField } from "../../parts/field";
import { Fixed } from "../../parts/fixed";
import { Fold } from "../../parts/fold";
import { Said } from "../../parts/said";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import type { Cut, Problem, Shape, Vec3 } from "../../types";
import { problemAt } from "./edits";
import { Profile } from "./profile";
import { say } from "./say";
import { asKind, dimensions, KINDS, type Kind, put } from "./shapes";

interface SolidProps<S extends Cut> {
  solid: S;
  /** Where it stands in the file, for its errors. */
  place: string;
  problem: Problem | null;
  /** The largest size worth a slider, in inches. */
  reach_in: number;
  onChange(change: (solid: S) => S, key: string): void;
}

/** The kind of a solid and its sizes. */
export function ShapeFields<S extends Cut>({ solid, place, problem, reach_in, onChange }: SolidProps<S>) {
  const { shape } = solid;
  const set = (next: Shape, key: string) => onChange((old) => ({ ...old, shape: next }), key);
  const group = problem?.place === `${place}.shape` ? problem : null;
  return (
    <>
      <Fixed place={`ball.${place}.shape`} whole>
        <label class="line">
          <span class="field-label">{say("bench-shape")}</span>
          <select
            value={shape.kind}
            onChange={(event) => set(asKind(shape, event.currentTarget.value as Kind), "")}
          >
            {KINDS.map(({ kind, name }) => (
              <option key={kind} value={kind}>
                {say(name)}
              </option>
            ))}
          </select>
        </label>
      </Fixed>
      {dimensions(shape).map((dimension) => (
        <Hinted
          key={`${shape.kind}.${dimension.place}`}
          place={`${place}.shape.${dimension.place}`}
          label={<Term word="piece">{dimension.label}</Term>}
          value={dimension.value}
          quantity="size"
          min={shape.kind === "frustum" && dimension.place !== "height_in" ? 0 : 0.1}
          max={reach_in}
          step={0.05}
          problem={problemAt(problem, `${place}.shape.${dimension.place}`)}
          onChange={(value) => set(dimension.with(value), `shape.${dimension.place}`)}
        />
      ))}
      {shape.kind === "lathe" && (
        <Profile
          profile={shape.profile_in}
          place={`${place}.shape.profile_in`}
          problem={problem}
          onChange={(profile, key) => set({ ...shape, profile_in: profile }, `shape.profile_in.${key}`)}
        />
      )}
      {group && (
        <p class="says says-wrong">
          <Said problem={group} />
        </p>
      )}
    </>
  );
}

/** A number with what it moves more than others do. */
function Hinted({ place, ...field }: FieldProps & { place: string }) {
  return (
    <Fixed place={`ball.${place}`}>
      <NumberField {...field} hint={useHint(place)} />
    </Fixed>
  );
}

const AXES = ["bench-sideways-x", "bench-sideways-y", "bench-towards-pin"];
const TURNS = ["bench-about-x", "bench-about-y", "bench-about-z"];
const WIDTHS = ["bench-along-x", "bench-along-y"];

/** Where a solid stands, how it is tilted and squashed, folded away at first. */
export function PlaceFold<S extends Cut>(props: SolidProps<S>) {
  const { place, problem } = props;
  const wrong = ["at_in", "turn_deg", "shape.squash"].some((key) => problemAt(problem, `${place}.${key}`));
  return (
    <Fold summary={say("bench-place")} wrong={wrong}>
      <PlaceFields {...props} />
    </Fold>
  );
}

function PlaceFields<S extends Cut>({ solid, place, problem, reach_in, onChange }: SolidProps<S>) {
  const at = solid.at_in ?? [0, 0, 0];
  const turn = solid.turn_deg ?? [0, 0, 0];
  const squash = solid.shape.squash ?? [1, 1];
  // Whole steps either way, so that the slider can stand at the centre.
  const sideways_in = Math.floor(reach_in / 2 / 0.05) * 0.05;
  const vector = (key: "at_in" | "turn_deg", old: Vec3, axis: number, value: number) =>
    onChange((was) => ({ ...was, [key]: put(old, axis, value) }), `${key}[${axis}]`);
  return (
    <>
      <fieldset>
        <legend>
          <Term word="position">{say("bench-position")}</Term>
        </legend>
        {AXES.map((label, axis) => (
          <Hinted
            key={label}
            place={`${place}.at_in[${axis}]`}
            label={say(label)}
            value={at[axis] ?? 0}
            quantity="size"
            min={-sideways_in}
            max={sideways_in}
            step={0.05}
            problem={problemAt(problem, `${place}.at_in[${axis}]`)}
            onChange={(value) => vector("at_in", at, axis, value)}
          />
        ))}
        <Group problem={problem} place={`${place}.at_in`} />
      </fieldset>
      <fieldset>
        <legend>
          <SayTerms id="bench-tilt" terms={{ tilt: "position" }} />
        </legend>
        {TURNS.map((label, axis) => (
          <Hinted
            key={label}
            place={`${place}.turn_deg[${axis}]`}
            label={say(label)}
            value={turn[axis] ?? 0}
            quantity="angle"
            min={-180}
            max={180}
            step={1}
            problem={problemAt(problem, `${place}.turn_deg[${axis}]`)}
            onChange={(value) => vector("turn_deg", turn, axis, value)}
          />
        ))}
        <Group problem={problem} place={`${place}.turn_deg`} />
      </fieldset>
      <fieldset>
        <legend>
          <SayTerms id="bench-squash" terms={{ squash: "squash" }} />
        </legend>
        {WIDTHS.map((label, axis) => (
          <Hinted
            key={label}
            place={`${place}.shape.squash[${axis}]`}
            label={say(label)}
            value={squash[axis] ?? 1}
            quantity="ratio"
            min={0.3}
            max={2}
            step={0.01}
            problem={problemAt(problem, `${place}.shape.squash[${axis}]`)}
            onChange={(value) =>
              onChange(
                (was) => ({ ...was, shape: { ...was.shape, squash: putTwo(squash, axis, value) } }),
                `shape.squash[${axis}]`,
              )
            }
          />
        ))}
        <Group problem={problem} place={`${place}.shape.squash`} />
      </fieldset>
    </>
  );
}

/** A problem with a group of numbers as a whole. */
function Group({ problem, place }: { problem: Problem | null; place: string }) {
  return problem?.place === place ? (
    <p class="says says-wrong">
      <Said problem={problem} />
    </p>
  ) : null;
}

function putTwo(pair: [number, number], at: number, value: number): [number, number] {
  return at === 0 ? [value, pair[1]] : [pair[0], value];
}
