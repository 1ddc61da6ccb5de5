import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { SectionDrawing } from "../../parts/section-drawing";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { Section, Sought, SoughtCore, TargetFile } from "../../types";
import { digits, measure, number, type Quantity, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { controlName, controlWord, figureWord, quantityOf } from "../controls";

const ALONG: Pick<Section, "normal" | "depth_in"> = { normal: [1, 0, 0], depth_in: 0 };

const NUMBERS: {
  name: string;
  quantity: Quantity;
  want: keyof TargetFile["want"];
  of(core: SoughtCore): number;
}[] = [
  { name: "weight", quantity: "weight", want: "weight_lb", of: ({ weighed }) => weighed.weight_lb },
  { name: "low RG", quantity: "rg", want: "rg_in", of: ({ weighed }) => weighed.rg_in.low },
  {
    name: "differential",
    quantity: "rg",
    want: "differential_in",
    of: ({ weighed }) => weighed.differential_in,
  },
  {
    name: "intermediate differential",
    quantity: "rg",
    want: "intermediate_differential_in",
    of: ({ weighed }) => weighed.intermediate_differential_in,
  },
  {
    name: "top weight",
    quantity: "imbalance",
    want: "top_weight_oz",
    of: ({ weighed }) => weighed.top_weight_oz,
  },
  { name: "least cover", quantity: "rg", want: "cover_at_least_in", of: ({ cover_in }) => cover_in },
];

/** The cores found side by side, or the nearest one and what stands in its way. */
export function Cores({ sought, target }: { sought: Sought; target: TargetFile }) {
  const store = useStore();
  const jobs = useJobs();
  const { units } = store.view.value;
  const met = sought.answers.length > 0;
  const cores = met ? sought.answers : sought.nearest ? [sought.nearest] : [];
  const [sections, setSections] = useState<(Section | null)[]>([]);
  useWhenStill(
    0,
    async (signal) => {
      setSections([]);
      setSections(await jobs.run("sections", { balls: cores.map(({ file }) => file), plane: ALONG }, signal));
    },
    store.fail,
    [sought],
  );
  const name = (n: number) => (met ? `Core ${n + 1}` : "Nearest");
  return (
    <section aria-label="What was found">
      <p class="why-says" role="status">
        {says(sought)}
      </p>
      {sought.blocks.length > 0 && (
        <ul class="plain">
          {sought.blocks.map((block) => (
            <li key={block}>{sentenceIn(block, units)}</li>
          ))}
        </ul>
      )}
      {cores.length > 0 && (
        <>
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
                    aria-label={`To the bench: ${name(n)}`}
                    onClick={() => store.replace({ ball: file }, name(n))}
                  >
                    To the bench
                  </button>
                </li>
              );
            })}
          </ul>
          <Numbers cores={cores} name={name} target={target} />
        </>
      )}
      <p class="readout-says">{sentenceIn(sought.note, units)} Cut along the pin, all to one scale.</p>
    </section>
  );
}

/** What came of it in a sentence. */
function says({ answers, met, tried, nearest }: Sought): string {
  const starts = `${tried} ${tried === 1 ? "start" : "starts"}`;
  if (answers.length === 1)
    return `${met} of ${starts} ${met === 1 ? "meets" : "meet"} it${met === 1 ? "" : ", all with the same core"}.`;
  if (answers.length > 1) return `${met} of ${starts} meet it, with ${answers.length} different cores.`;
  return nearest
    ? `None of ${starts} meets it. The nearest core, and what stands in its way:`
    : `None of ${starts} leads to a ball that can be made.`;
}

interface NumbersProps {
  cores: SoughtCore[];
  name(n: number): string;
  target: TargetFile;
}

function Numbers({ cores, name, target }: NumbersProps) {
  const { units } = useStore().view.value;
  const values = cores[0]?.values ?? [];
  return (
    <Wide label="The cores in numbers">
      <table>
        <thead>
          <tr>
            <th scope="col">Number</th>
            <th scope="col">Wanted</th>
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
                  <Term word={figureWord(want)}>{called}</Term>{" "}
                  <span class="unit">{measure(quantity, units).unit}</span>
                </th>
                <td>
                  {wanted === undefined
                    ? "–"
                    : `${want === "cover_at_least_in" ? "at least " : ""}${number(wanted, quantity, units, 1)}`}
                </td>
                {cores.map((core, n) => (
                  <td key={n}>{number(of(core), quantity, units, 1)}</td>
                ))}
              </tr>
            );
          })}
          {values.map((value, k) => {
            const { unit, factor } = measure(quantityOf(value), units);
            const bounds = target.free[k];
            const say = (one: number) => digits(one * factor, 3);
            return (
              <tr key={value.control}>
                <th scope="row">
                  <Term word={controlWord(value)}>{controlName(value)}</Term>{" "}
                  <span class="unit">{unit || "times"}</span>
                </th>
                <td>{bounds ? `${say(bounds.from)} to ${say(bounds.to)}` : "–"}</td>
                {cores.map((core, n) => (
                  <td key={n}>{say(core.values[k]?.value ?? 0)}</td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </Wide>
  );
}
