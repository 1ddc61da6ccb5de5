// What every control moves, as a ranked list.
import { Broken } from "../../parts/broken";
import { Term } from "../../parts/term";
import "../maker.css";
import { useContext, useState } from "preact/hooks";
import { useAloud } from "../../aloud";
import { LazyFold } from "../../parts/lazy-fold";
import { Wide } from "../../parts/wide";
import { type Units, useStore } from "../../store";
import type { Figures, Lever } from "../../types";
import { change, measure, QUANTITY_OF, type Quantity, reading } from "../../units";
import { controlName, controlWord, figureWord } from "../controls";
import { say } from "../say";
import { type Levered, LeversContext, ranked } from "./use-levers";

const SHOWN = 12;
/** By the names of their texts. */
const COLUMNS: { figure: keyof Figures; name: string; quantity: Quantity }[] = [
  { figure: "weight_lb", name: "maker-weight", quantity: "weight" },
  { figure: "low_rg_in", name: "maker-low-rg", quantity: "rg" },
  { figure: "differential_in", name: "maker-differential", quantity: "rg" },
  { figure: "intermediate_differential_in", name: "maker-intermediate", quantity: "rg" },
  { figure: "top_weight_oz", name: "maker-top-weight", quantity: "imbalance" },
];

export function LeversFold() {
  return (
    <LazyFold class="maker" summary={say("levers-title")}>
      <Panel />
    </LazyFold>
  );
}

function Panel() {
  const { found, broken } = useContext(LeversContext);
  if (broken) return <Broken broken={broken} />;
  return found ? <Ranked found={found} /> : <p>{say("maker-working")}</p>;
}

function Ranked({ found }: { found: Levered }) {
  const store = useStore();
  const { units } = store.view.value;
  const { file } = store.derived.value;
  const [figure, setFigure] = useState<keyof Figures>("differential_in");
  const [all, setAll] = useState(false);
  const first = ranked(found.levers, figure);
  const rest = found.levers.filter((lever) => !first.includes(lever));
  const order = [...first, ...rest];
  const name = COLUMNS.find((column) => column.figure === figure)?.name ?? "maker-differential";
  const [top] = first;
  const most = top
    ? say("levers-most", {
        figure: say(name),
        control: controlName(top),
        by: says(top, figure, units),
        step: stepSays(top, units),
      })
    : say("levers-nothing", { figure: say(name) });
  const stale = found.file !== file;
  useAloud(stale || most, stale ? null : most);
  return (
    <>
      <label class="line">
        <span class="field-label">{say("levers-ranked-by")}</span>
        <select value={figure} onChange={(event) => setFigure(event.currentTarget.value as keyof Figures)}>
          {COLUMNS.map((column) => (
            <option key={column.figure} value={column.figure}>
              {say(column.name)}
            </option>
          ))}
        </select>
      </label>
      <p class="levers-say">
        {stale ? `${say("maker-working-anew")} ` : ""}
        {most}
      </p>
      <Wide label={say("levers-table")}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say("levers-control")}</th>
              <th scope="col">{say("levers-per")}</th>
              {COLUMNS.map((column) => (
                <th
                  scope="col"
                  key={column.figure}
                  aria-sort={column.figure === figure ? "descending" : undefined}
                >
                  <Term word={figureWord(column.figure)}>{say(column.name)}</Term>{" "}
                  <span class="unit">{measure(column.quantity, units).unit}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {(all ? order : order.slice(0, SHOWN)).map((lever) => (
              <tr key={lever.control}>
                <th scope="row">
                  <Term word={controlWord(lever)}>{controlName(lever)}</Term>
                </th>
                <td>{stepSays(lever, units)}</td>
                {COLUMNS.map((column) => (
                  <td key={column.figure}>{says(lever, column.figure, units)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
      {order.length > SHOWN && (
        <button type="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say("levers-only-first", { shown: SHOWN }) : say("levers-all", { all: order.length })}
        </button>
      )}
      <p class="readout-says">{say("levers-note")}</p>
    </>
  );
}

const stepSays = ({ step, unit }: Lever, units: Units) => reading(step, QUANTITY_OF[unit], units);

/** What a step changes: one number, or one each way where they differ. */
function says({ raised, lowered }: Lever, figure: keyof Figures, units: Units): string {
  const quantity = COLUMNS.find((column) => column.figure === figure)?.quantity ?? "rg";
  const by = (value: number) => change(value, quantity, units, 2) ?? "0";
  if (raised && lowered) {
    const [up, down] = [raised.by[figure], lowered.by[figure]];
    const error = raised.error[figure] + lowered.error[figure] + 1e-12;
    return Math.abs(up + down) <= error ? by(up) : say("levers-both-ways", { up: by(up), down: by(down) });
  }
  if (raised) return say("levers-up", { by: by(raised.by[figure]) });
  return lowered ? say("levers-down", { by: by(lowered.by[figure]) }) : "–";
}
