import { useId } from "preact/hooks";
import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Bore, Problem, ThumbBore } from "../../types";
import { type Quantity, reading } from "../../units";
import { problemAt } from "./edits";
import { type Digit, editBore, FIRST_INSERT } from "./grip";
import { say } from "./say";

/** The texts that name them. */
const NAMES: Record<Digit, string> = {
  middle: "bench-middle",
  ring: "bench-ring-finger",
  thumb: "bench-thumb",
};

interface Row {
  key: Exclude<keyof ThumbBore, "insert">;
  label: () => preact.ComponentChildren;
  min: number;
  max: number;
  step: number;
}

const ROWS: Row[] = [
  {
    key: "diameter_in",
    label: () => <SayTerms id="bench-bore-across" terms={{ hole: "hole" }} />,
    min: 0.5,
    max: 1.25,
    step: 0.0156,
  },
  {
    key: "depth_in",
    label: () => <Term word="hole">{say("bench-bore-depth")}</Term>,
    min: 0.5,
    max: 3.5,
    step: 0.0625,
  },
  {
    key: "forward_pitch_in",
    label: () => <SayTerms id="bench-pitch-forward" terms={{ pitch: "pitch" }} />,
    min: -1,
    max: 1,
    step: 0.0625,
  },
  {
    key: "side_pitch_in",
    label: () => <SayTerms id="bench-pitch-side" terms={{ pitch: "pitch" }} />,
    min: -1,
    max: 1,
    step: 0.0625,
  },
];
const SPANS: Row[] = [
  {
    key: "middle_span_in",
    label: () => <SayTerms id="bench-span-middle" terms={{ span: "span" }} />,
    min: 2.5,
    max: 5,
    step: 0.0625,
  },
  {
    key: "ring_span_in",
    label: () => <SayTerms id="bench-span-ring" terms={{ span: "span" }} />,
    min: 2.5,
    max: 5,
    step: 0.0625,
  },
];

interface BoreProps {
  digit: Digit;
  bore: Bore | ThumbBore;
  problem: Problem | null;
}

/** One hole of the grip, folded away. */
export function BoreFields({ digit, bore, problem }: BoreProps) {
  const store = useStore();
  const units = store.view.value.units;
  const insert = useId();
  const own = problemAt(problem, `drilling.${digit}`);
  const rows = digit === "thumb" ? [...SPANS, ...ROWS] : ROWS;
  return (
    <Fold summary={summary(digit, bore, units)} wrong={own !== null}>
      <fieldset class="bore" aria-label={say(NAMES[digit])}>
        {rows.map(({ key, label, ...row }) => (
          <NumberField
            {...row}
            label={label()}
            key={key}
            quantity="size"
            value={(bore as ThumbBore)[key] ?? 0}
            problem={problemAt(own, `drilling.${digit}.${key}`)}
            onChange={(value) => editBore(store, digit, { [key]: value }, key)}
          />
        ))}
        <label class="tick" for={insert}>
          <input
            id={insert}
            type="checkbox"
            checked={bore.insert !== undefined}
            onChange={(event) =>
              editBore(store, digit, {
                insert: event.currentTarget.checked ? { ...FIRST_INSERT } : undefined,
              })
            }
          />
          <span>{say(digit === "thumb" ? "bench-sleeve" : "bench-insert")}</span>
        </label>
        {bore.insert && (
          <>
            <Insert
              key="wall_in"
              name="wall_in"
              label={<Term word="insert">{say("bench-insert-wall")}</Term>}
              quantity="size"
              min={0.03}
              max={0.25}
              step={0.0156}
              {...{ digit, bore, own }}
            />
            <Insert
              key="density_g_cc"
              name="density_g_cc"
              label={<Term word="density">{say("bench-insert-density")}</Term>}
              quantity="density"
              min={0.9}
              max={1.5}
              step={0.01}
              {...{ digit, bore, own }}
            />
          </>
        )}
      </fieldset>
    </Fold>
  );
}

interface InsertProps {
  name: "wall_in" | "density_g_cc";
  label: preact.ComponentChildren;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
  digit: Digit;
  bore: Bore;
  own: Problem | null;
}

function Insert({ name, digit, bore, own, ...row }: InsertProps) {
  const store = useStore();
  const insert = bore.insert ?? FIRST_INSERT;
  return (
    <NumberField
      {...row}
      value={insert[name]}
      problem={problemAt(own, `drilling.${digit}.insert.${name}`)}
      onChange={(value) => editBore(store, digit, { insert: { ...insert, [name]: value } }, `insert.${name}`)}
    />
  );
}

function summary(digit: Digit, bore: Bore, units: Units): string {
  const lined = digit === "thumb" ? "bench-bore-sleeve" : "bench-bore-insert";
  return say(bore.insert ? lined : "bench-bore", {
    digit: say(NAMES[digit]),
    across: reading(bore.diameter_in, "size", units),
    deep: reading(bore.depth_in, "size", units),
  });
}
