import { worded } from "../../locale/worded";
import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Optional } from "../../parts/optional";
import { Term } from "../../parts/term";
import { problemAt } from "../../rooms/bench/edits";
import { useStore } from "../../store";
import type { BallFile } from "../../types";
import { measure, type Quantity } from "../../units";
import {
  controlWord,
  figureWord,
  partName,
  partSays,
  placeOfPart,
  quantityOf,
  usualRange,
} from "../controls";
import { say } from "../say";
import type { Target, Want } from "./target";

interface Wanted {
  key: keyof Want;
  /** The name of its text. */
  name: string;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}
const WANTS: Wanted[] = [
  { key: "weight_lb", name: "maker-want-weight", quantity: "weight", min: 8, max: 16, step: 0.1 },
  { key: "rg_in", name: "maker-want-low-rg", quantity: "rg", min: 2.46, max: 2.8, step: 0.005 },
  { key: "differential_in", name: "maker-want-differential", quantity: "rg", min: 0, max: 0.06, step: 0.001 },
  {
    key: "intermediate_differential_in",
    name: "maker-want-intermediate",
    quantity: "rg",
    min: 0,
    max: 0.03,
    step: 0.001,
  },
  { key: "top_weight_oz", name: "maker-want-top-weight", quantity: "imbalance", min: -1, max: 6, step: 0.1 },
  { key: "cover_at_least_in", name: "maker-want-least-cover", quantity: "size", min: 0, max: 2, step: 0.05 },
];

/** The wanted numbers; what is not ticked may come out as it likes. */
export function WantFields({ target }: { target: Target }) {
  const { undrilled } = useStore().derived.value;
  const { file, problem, change } = target;
  const { want } = file;
  const here: Required<Want> = {
    weight_lb: undrilled.weight_lb,
    rg_in: undrilled.rg_in.low,
    differential_in: undrilled.differential_in,
    intermediate_differential_in: undrilled.intermediate_differential_in,
    top_weight_oz: undrilled.top_weight_oz,
    cover_at_least_in: 0.5,
  };
  return (
    <fieldset class="seek-want">
      <legend>{say("seek-wanted")}</legend>
      {WANTS.map(({ key, name, ...range }) => {
        const { [key]: value, ...rest } = want;
        return (
          <Optional
            key={key}
            label={<Term word={figureWord(key)}>{say(name)}</Term>}
            on={value !== undefined}
            onTurn={(on) => change({ want: on ? { ...rest, [key]: Number(here[key].toFixed(3)) } : rest })}
          >
            <NumberField
              {...range}
              label={<span class="visually-hidden">{say("seek-wanted-of", { number: say(name) })}</span>}
              value={value ?? 0}
              problem={problemAt(problem, `want.${key}`)}
              onChange={(next) => change({ want: { ...want, [key]: next } })}
            />
          </Optional>
        );
      })}
    </fieldset>
  );
}

/** What may change, and between which bounds. */
export function FreeFields({ target, ball }: { target: Target; ball: BallFile }) {
  const { units } = useStore().view.value;
  const { file, controls, problem, change } = target;
  const groups = new Map<string, typeof controls>();
  for (const control of controls) {
    const place = placeOfPart(control.control);
    groups.set(place, [...(groups.get(place) ?? []), control]);
  }
  const at = (control: string) => file.free.findIndex((one) => one.control === control);
  return (
    <fieldset class="seek-want">
      <legend>{say("seek-may-change")}</legend>
      {[...groups].map(([place, own]) => {
        const free = own.filter(({ control }) => at(control) >= 0);
        const part = own[0]?.part ?? null;
        const says = free.map(({ what }) => worded(what)).join(", ") || say("seek-as-it-is");
        return (
          <Fold
            key={place}
            summary={partSays(part, says)}
            wrong={free.some(({ control }) => problemAt(problem, `free[${at(control)}]`) !== null)}
          >
            {own.map((control) => {
              const n = at(control.control);
              const bounds = file.free[n];
              const quantity = quantityOf(control);
              const wrong = n < 0 ? null : problemAt(problem, `free[${n}]`);
              const bound = (end: "from" | "to") =>
                bounds && (
                  <NumberField
                    bare
                    label={
                      <>
                        <span class="visually-hidden">
                          {say("seek-bound-of", { part: partName(part), what: worded(control.what) })}{" "}
                        </span>
                        {say(end === "from" ? "seek-from" : "seek-to")}
                      </>
                    }
                    value={bounds[end]}
                    quantity={quantity}
                    min={0}
                    max={1}
                    step={control.unit === "deg" ? 1 : 0.05}
                    problem={end === "from" ? wrong : null}
                    onChange={(value) =>
                      change({ free: file.free.map((one, k) => (k === n ? { ...one, [end]: value } : one)) })
                    }
                  />
                );
              return (
                <Optional
                  key={control.control}
                  label={
                    <>
                      <Term word={controlWord(control)}>{worded(control.what)}</Term>{" "}
                      <span class="unit">{measure(quantity, units).unit || say("seek-times")}</span>
                    </>
                  }
                  on={n >= 0}
                  onTurn={(on) => {
                    const [from, to] = usualRange(ball, control);
                    change({
                      free: on
                        ? [...file.free, { control: control.control, from, to }]
                        : file.free.filter((_, k) => k !== n),
                    });
                  }}
                >
                  <div class="seek-bounds">
                    {bound("from")}
                    {bound("to")}
                  </div>
                </Optional>
              );
            })}
          </Fold>
        );
      })}
    </fieldset>
  );
}
