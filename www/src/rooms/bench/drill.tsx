import { useId } from "preact/hooks";
import { LayoutDrawing, layoutWords } from "../../draw/layout";
import { remPx } from "../../draw/use-size";
import { saveLayout } from "../../files";
import { offered } from "../../locale/names";
import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Result } from "../../parts/result";
import { Said } from "../../parts/said";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Drilling, Hand, Problem } from "../../types";
import { type Quantity, reading, sentenceIn } from "../../units";
import { BoreFields } from "./bore-fields";
import { problemAt } from "./edits";
import { editGrip, LAYOUTS, setDrilled, setThumb, withLayout } from "./grip";
import { say } from "./say";

/** The ball drilled for a hand: off until it is asked for. */
export function Drill() {
  const store = useStore();
  const { drilling } = store.doc.value.shot;
  const problem = problemAt(store.derived.value.shotProblem, "drilling");
  const id = useId();
  return (
    <Fold summary={say("bench-drill")} wrong={problem !== null}>
      <label class="tick" for={id}>
        <input
          id={id}
          type="checkbox"
          checked={drilling !== undefined}
          onChange={(event) => setDrilled(store, event.currentTarget.checked)}
        />
        {say("bench-drilled")}
      </label>
      {drilling ? (
        <Grip drilling={drilling} problem={problem} />
      ) : (
        <p class="hint">
          <SayTerms id="bench-drill-says" terms={{ pap: "PAP" }} />
        </p>
      )}
    </Fold>
  );
}

interface Row {
  key: "val_angle_deg" | "pap_over_in" | "pap_up_in" | "bridge_in";
  label: () => preact.ComponentChildren;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}

const VAL: Row = {
  key: "val_angle_deg",
  label: () => <Term word="VAL angle">{say("bench-val-angle")}</Term>,
  quantity: "angle",
  min: 0,
  max: 120,
  step: 1,
};
const BOWLER: Row[] = [
  {
    key: "pap_over_in",
    label: () => <SayTerms id="bench-pap-over" terms={{ pap: "PAP", centre: "grip centre" }} />,
    quantity: "size",
    min: 2,
    max: 6.5,
    step: 0.0625,
  },
  {
    key: "pap_up_in",
    label: () => <SayTerms id="bench-pap-up" terms={{ pap: "PAP" }} />,
    quantity: "size",
    min: -2,
    max: 2,
    step: 0.0625,
  },
];
const BRIDGE: Row = {
  key: "bridge_in",
  label: () => <Term word="bridge">{say("bench-bridge")}</Term>,
  quantity: "size",
  min: 0.1,
  max: 0.75,
  step: 0.0625,
};

function Grip({ drilling, problem }: { drilling: Drilling; problem: Problem | null }) {
  const store = useStore();
  const { shot } = store.doc.value;
  const { drilled, roll, shotProblem, made } = store.derived.value;
  const { units } = store.view.value;
  const thumb = useId();
  const row = (row: Row) => (
    <NumberField
      {...row}
      label={row.label()}
      key={row.key}
      value={drilling[row.key]}
      problem={problemAt(problem, `drilling.${row.key}`)}
      onChange={(value) => editGrip(store, (old) => ({ ...old, [row.key]: value }), row.key)}
    />
  );
  const layout = (key: "pin_to_pap_in" | "drilling_angle_deg") => ({
    value: shot.layout[key],
    problem: problemAt(shotProblem, `layout.${key}`),
    onChange: (value: number) =>
      store.editShot((old) => ({ ...old, layout: { ...old.layout, [key]: value } }), `layout.${key}`),
  });
  return (
    <div class="drill">
      {drilled && (
        <figure class="drill-picture">
          <LayoutDrawing
            id="bench-layout"
            drilled={drilled}
            hand={shot.hand}
            track={roll.track}
            radius_in={made.diameter_in / 2}
            size_px={remPx(18.75)}
            units={units}
          />
          <figcaption class="hint">{layoutWords(drilled, shot.hand, units)}</figcaption>
        </figure>
      )}
      {drilled && drilled.conflicts.length > 0 && (
        <div>
          {drilled.conflicts.map(({ message }, n) => {
            const says = sentenceIn(message, units);
            return (
              <Result class="says says-caution" key={n} of={says}>
                {says}
              </Result>
            );
          })}
        </div>
      )}
      <fieldset class="choices" aria-label={say("bench-layouts")}>
        {LAYOUTS.map((file) => (
          <button
            type="button"
            key={file.name}
            onClick={() => store.editShot((old) => withLayout(old, structuredClone(file)))}
          >
            {offered("layout", file.name ?? "")}
          </button>
        ))}
      </fieldset>
      <fieldset class="nested">
        <legend>{say("bench-layout")}</legend>
        <Hands hand={shot.hand} />
        <NumberField
          label={<SayTerms id="bench-pin-to-pap" terms={{ pin: "pin" }} />}
          quantity="size"
          min={0}
          max={6.75}
          step={0.05}
          {...layout("pin_to_pap_in")}
        />
        <NumberField
          label={<Term word="drilling angle">{say("bench-drilling-angle")}</Term>}
          quantity="angle"
          min={0}
          max={180}
          step={1}
          {...layout("drilling_angle_deg")}
        />
        {row(VAL)}
        {BOWLER.map(row)}
      </fieldset>
      <fieldset class="nested">
        <legend>{say("bench-grip")}</legend>
        <label class="tick" for={thumb}>
          <input
            id={thumb}
            type="checkbox"
            checked={drilling.thumb !== undefined}
            onChange={(event) => setThumb(store, event.currentTarget.checked)}
          />
          {say("bench-has-thumb")}
        </label>
        {row(BRIDGE)}
        {(["middle", "ring", "thumb"] as const).map((digit) => {
          const bore = drilling[digit];
          return bore && <BoreFields key={digit} digit={digit} bore={bore} problem={problem} />;
        })}
      </fieldset>
      {problem && !/_(in|deg|cc)$/.test(problem.place) && (
        <p class="says says-wrong">
          <Said problem={problem} />
        </p>
      )}
      {drilled && (
        <p class="hint">
          {say("bench-drilled-out", {
            weight: reading(drilled.change.drilled_out_oz, "imbalance", units),
          })}
        </p>
      )}
      <button type="button" class="drill-save" onClick={() => saveLayout(store.doc.value)}>
        {say("bench-layout-save")}
      </button>
      {drilled && (
        <p class="fine-print">{drilled.cautions.map((caution) => sentenceIn(caution, units)).join(" ")}</p>
      )}
    </div>
  );
}

function Hands({ hand }: { hand: Hand }) {
  const store = useStore();
  return (
    <fieldset class="choices" aria-label={say("bench-for")}>
      {(["right", "left"] as const).map((one) => (
        <button
          type="button"
          key={one}
          aria-pressed={hand === one}
          onClick={() =>
            store.editShot((old) => {
              const { layout, drilling } = old;
              return drilling && old.hand !== one
                ? withLayout(old, { format: "pithball.layout/1", hand: one, layout, drilling })
                : old;
            })
          }
        >
          {say(one === "right" ? "bench-right" : "bench-left")}
        </button>
      ))}
    </fieldset>
  );
}
