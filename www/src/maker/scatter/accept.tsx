import { Say } from "../../locale/say";
import { NumberField } from "../../parts/field";
import { Fold } from "../../parts/fold";
import { Optional } from "../../parts/optional";
import { Term } from "../../parts/term";
import { problemAt } from "../../rooms/bench/edits";
import { useStore } from "../../store";
import type { Quantity } from "../../units";
import type { Word } from "../../words";
import { figureWord } from "../controls";
import { say } from "./say";
import type { Accept, Tolerances } from "./tolerances";

type Within = {
  [Key in keyof Accept]-?: NonNullable<Accept[Key]> extends number ? Key : never;
}[keyof Accept];
type Windowed = Exclude<keyof Accept, Within>;

const WINDOWS: {
  key: Windowed;
  /** The name of its text. */
  name: string;
  quantity: Quantity;
  half: number;
  span: number;
  step: number;
}[] = [
  { key: "weight_lb", name: "maker-want-weight", quantity: "weight", half: 0.1, span: 0.5, step: 0.01 },
  {
    key: "top_weight_oz",
    name: "maker-want-top-weight",
    quantity: "imbalance",
    half: 0.75,
    span: 3,
    step: 0.05,
  },
  { key: "pin_to_cg_in", name: "accept-pin-to-cg", quantity: "rg", half: 1, span: 4, step: 0.05 },
];
const WITHIN: { key: Within; word: Word; name: string; start: number; most: number }[] = [
  { key: "rg_within_in", word: "RG", name: "accept-rg", start: 0.01, most: 0.03 },
  {
    key: "differential_within_in",
    word: "differential",
    name: "accept-differential",
    start: 0.003,
    most: 0.02,
  },
  {
    key: "intermediate_differential_within_in",
    word: "intermediate differential",
    name: "accept-intermediate",
    start: 0.003,
    most: 0.02,
  },
  { key: "low_rg_mark_within_in", word: "pin", name: "accept-low-rg-mark", start: 1, most: 2 },
  {
    key: "high_rg_mark_within_in",
    word: "mass bias",
    name: "accept-high-rg-mark",
    start: 0.5,
    most: 2,
  },
];

const ENDS = { at_least: "accept-at-least", at_most: "accept-at-most" } as const;

/** What the maker sells as good. */
export function AcceptFields({ tolerances }: { tolerances: Tolerances }) {
  const { undrilled } = useStore().derived.value;
  const { file, problem, change } = tolerances;
  const accept = file.accept ?? {};
  const here: Record<Windowed, number> = {
    weight_lb: undrilled.weight_lb,
    top_weight_oz: undrilled.top_weight_oz,
    pin_to_cg_in: 0,
  };
  const set = <Key extends keyof Accept>(key: Key, value: Accept[Key]) => {
    const { [key]: _, ...rest } = accept;
    change({ accept: value === undefined ? rest : { ...rest, [key]: value } });
  };
  return (
    <Fold summary={say("accept-title")} wrong={problemAt(problem, "accept") !== null}>
      <p class="hint">{say("accept-says")}</p>
      {WINDOWS.flatMap(({ key, name, quantity, half, span, step }) =>
        (["at_least", "at_most"] as const).map((end) => {
          const { [end]: value, ...other } = accept[key] ?? {};
          const middle = here[key];
          const start = Number((middle + (end === "at_least" ? -half : half)).toFixed(2));
          return (
            <Optional
              key={`${key}.${end}`}
              label={
                <Say
                  id={ENDS[end]}
                  args={{ number: say(name) }}
                  parts={{ number: (words) => <Term word={figureWord(key)}>{words}</Term> }}
                />
              }
              on={value !== undefined}
              onTurn={(on) => {
                const next = on ? { ...other, [end]: start } : other;
                set(key, Object.keys(next).length > 0 ? next : undefined);
              }}
            >
              <NumberField
                label={
                  <span class="visually-hidden">
                    <Say id={ENDS[end]} args={{ number: say(name) }} parts={{ number: (words) => words }} />
                  </span>
                }
                value={value ?? start}
                quantity={quantity}
                min={Number((middle - span).toFixed(2))}
                max={Number((middle + span).toFixed(2))}
                step={step}
                problem={
                  problemAt(problem, `accept.${key}.${end}`) ?? (end === "at_most" ? wholeWindow(key) : null)
                }
                onChange={(next) => set(key, { ...accept[key], [end]: next })}
              />
            </Optional>
          );
        }),
      )}
      {WITHIN.map(({ key, word, name, start, most }) => (
        <Optional
          key={key}
          label={<Term word={word}>{say(name)}</Term>}
          on={accept[key] !== undefined}
          onTurn={(on) => set(key, on ? start : undefined)}
        >
          <NumberField
            label={<span class="visually-hidden">{say(name)}</span>}
            value={accept[key] ?? start}
            quantity="rg"
            min={0}
            max={most}
            step={most > 1 ? 0.05 : 0.001}
            problem={problemAt(problem, `accept.${key}`)}
            onChange={(next) => set(key, next)}
          />
        </Optional>
      ))}
    </Fold>
  );

  function wholeWindow(key: Windowed) {
    return problem?.place === `accept.${key}` ? problem : null;
  }
}
