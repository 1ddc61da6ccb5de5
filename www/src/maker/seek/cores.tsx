import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { Broken } from "../../parts/broken";
import { Result } from "../../parts/result";
import { SectionDrawing } from "../../parts/section-drawing";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { Section, Sought, SoughtCore, TargetFile } from "../../types";
import { digits, measure, number, type Quantity, roughlyIn, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { controlName, controlWord, figureWord, quantityOf } from "../controls";
import { say } from "../say";

const ALONG: Pick<Section, "normal" | "depth_in"> = { normal: [1, 0, 0], depth_in: 0 };

const NUMBERS: {
  /** The name of its text. */
  name: string;
  quantity: Quantity;
  want: keyof TargetFile["want"];
  of(core: SoughtCore): number;
}[] = [
  { name: "maker-weight", quantity: "weight", want: "weight_lb", of: ({ weighed }) => weighed.weight_lb },
  { name: "maker-low-rg", quantity: "rg", want: "rg_in", of: ({ weighed }) => weighed.rg_in.low },
  {
    name: "maker-differential",
    quantity: "rg",
    want: "differential_in",
    of: ({ weighed }) => weighed.differential_in,
  },
  {
    name: "maker-intermediate",
    quantity: "rg",
    want: "intermediate_differential_in",
    of: ({ weighed }) => weighed.intermediate_differential_in,
  },
  {
    name: "maker-top-weight",
    quantity: "imbalance",
    want: "top_weight_oz",
    of: ({ weighed }) => weighed.top_weight_oz,
  },
  { name: "maker-least-cover", quantity: "rg", want: "cover_at_least_in", of: ({ cover_in }) => cover_in },
];

/** The cores found side by side, or the nearest one and what stands in its way. */
export function Cores({ sought, target }: { sought: Sought; target: TargetFile }) {
  const store = useStore();
  const jobs = useJobs();
  const { units } = store.view.value;
  const met = sought.answers.length > 0;
  const cores = met ? sought.answers : sought.nearest ? [sought.nearest] : [];
  const [sections, setSections] = useState<(Section | null)[]>([]);
  const { broken } = useWhenStill(
    0,
    async (signal) => {
      setSections([]);
      setSections(await jobs.run("sections", { balls: cores.map(({ file }) => file), plane: ALONG }, signal));
    },
    store.fail,
    [sought],
  );
  const name = (n: number) => (met ? say("seek-core", { n: n + 1 }) : say("seek-nearest"));
  return (
    <section aria-label={say("seek-found")}>
      <Result class="why-says" of={sought}>
        {says(sought)}
      </Result>
      {sought.blocks.length > 0 && (
        <ul class="plain">
          {sought.blocks.map((block) => (
            <li key={block}>{sentenceIn(block, units)}</li>
          ))}
        </ul>
      )}
      {cores.length > 0 && (
        <>
          {broken && <Broken broken={broken} />}
          <ul class="rung-cards">
            {cores.map(({ file }, n) => {
              const section = sections[n];
              return (
                <li class="rung-card" key={n}>
                  {section ? (
                    <SectionDrawing section={section} diameter_in={file.diameter_in} />
                  ) : (
                    <svg class="section-drawing" viewBox="0 0 1 1" aria-hidden="true" />
                  )}
                  <p>
                    <strong>{name(n)}</strong>
                  </p>
                  <button
                    type="button"
                    aria-label={say("seek-to-bench-of", { core: name(n) })}
                    onClick={() => store.replace({ ball: file }, name(n))}
                  >
                    {say("seek-to-bench")}
                  </button>
                </li>
              );
            })}
          </ul>
          <Numbers cores={cores} name={name} target={target} />
        </>
      )}
      <p class="readout-says">
        {roughlyIn(sought.note, units)} {say("seek-cut")}
      </p>
    </section>
  );
}

/** What came of it in a sentence. */
function says({ answers, met, tried, nearest }: Sought): string {
  if (answers.length === 1) return say("seek-met-one", { met, tried });
  if (answers.length > 1) return say("seek-met-many", { met, tried, cores: answers.length });
  return say(nearest ? "seek-met-none" : "seek-no-ball", { tried });
}

const wantedSays = (want: keyof TargetFile["want"], number: string) =>
  want === "cover_at_least_in" ? say("seek-at-least", { number }) : number;

interface NumbersProps {
  cores: SoughtCore[];
  name(n: number): string;
  target: TargetFile;
}

function Numbers({ cores, name, target }: NumbersProps) {
  const { units } = useStore().view.value;
  const values = cores[0]?.values ?? [];
  return (
    <Wide label={say("seek-numbers")}>
      <table>
        <thead>
          <tr>
            <th scope="col">{say("seek-number")}</th>
            <th scope="col">{say("seek-wanted")}</th>
            {cores.map((_, n) => (
              <th scope="col" key={n}>
                {name(n)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {NUMBERS.map(({ name: called, quantity, want, of }) => {
            const wanted = target.want[want];
            return (
              <tr key={called}>
                <th scope="row">
                  <Term word={figureWord(want)}>{say(called)}</Term>{" "}
                  <span class="unit">{measure(quantity, units).unit}</span>
                </th>
                <td>{wanted === undefined ? "–" : wantedSays(want, number(wanted, quantity, units, 1))}</td>
                {cores.map((core, n) => (
                  <td key={n}>{number(of(core), quantity, units, 1)}</td>
                ))}
              </tr>
            );
          })}
          {values.map((value, k) => {
            const { unit, factor } = measure(quantityOf(value), units);
            const bounds = target.free[k];
            const written = (one: number) => digits(one * factor, 3);
            return (
              <tr key={value.control}>
                <th scope="row">
                  <Term word={controlWord(value)}>{controlName(value)}</Term>{" "}
                  <span class="unit">{unit || say("maker-times")}</span>
                </th>
                <td>
                  {bounds ? say("maker-range", { from: written(bounds.from), to: written(bounds.to) }) : "–"}
                </td>
                {cores.map((core, n) => (
                  <td key={n}>{written(core.values[k]?.value ?? 0)}</td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </Wide>
  );
}
