import { ASYMMETRIC_SHARE, DIFFERENTIAL, RG } from "../../limits";
import { Term } from "../../parts/term";
import type { Units } from "../../store";
import type { Cover, Drilled, Weighed } from "../../types";
import { apart, change, type Quantity, reading } from "../../units";
import type { Word } from "../../words";
import { bandOf } from "../scale/words";
import { say } from "./say";
import { type Told, useCover } from "./told";

interface Row {
  /** Of its text. */
  name: string;
  word: Word;
  quantity: Quantity;
  /** null where the ball has no such number. */
  of(told: Measured): number | null;
  /** What the number is, by its text. */
  says: string;
  /** What this one means. */
  means?(told: Measured): string;
}

interface Measured {
  weighed: Weighed;
  drilled: Drilled | null;
  cover: Cover;
}

const BESIDE_USUAL = {
  thinner: "sheet-cover-thinner",
  usual: "sheet-cover-usual",
  thicker: "sheet-cover-thicker",
  no_core: null,
};

const ROWS: Row[] = [
  {
    name: "sheet-weight",
    word: "weight",
    quantity: "weight",
    of: ({ weighed }) => weighed.weight_lb,
    says: "sheet-weight-says",
  },
  {
    name: "sheet-rg",
    word: "RG",
    quantity: "rg",
    of: ({ weighed }) => weighed.rg_in.low,
    says: "sheet-rg-says",
    means: ({ weighed }) => say("sheet-called", { band: bandOf(weighed.rg_in.low, RG) }),
  },
  {
    name: "sheet-differential",
    word: "differential",
    quantity: "rg",
    of: ({ weighed }) => weighed.differential_in,
    says: "sheet-differential-says",
    means: ({ weighed }) => say("sheet-called", { band: bandOf(weighed.differential_in, DIFFERENTIAL) }),
  },
  {
    name: "sheet-intermediate",
    word: "intermediate differential",
    quantity: "rg",
    of: ({ weighed }) => weighed.intermediate_differential_in,
    says: "sheet-intermediate-says",
    means: ({ weighed }) =>
      weighed.intermediate_differential_in > ASYMMETRIC_SHARE * weighed.differential_in + 1e-6
        ? say("sheet-asymmetric")
        : say("sheet-symmetric"),
  },
  {
    name: "sheet-top-weight",
    word: "top weight",
    quantity: "imbalance",
    of: ({ weighed, drilled }) => (drilled?.before ?? weighed).top_weight_oz,
    says: "sheet-top-weight-says",
  },
  {
    name: "sheet-cover",
    word: "coverstock",
    quantity: "cover",
    of: ({ cover }) => cover.thinnest?.thickness_in ?? null,
    says: "sheet-cover-says",
    means: ({ cover }) => {
      const usual = BESIDE_USUAL[cover.beside_usual];
      return usual === null ? "" : say(usual);
    },
  },
];

/** The numbers with what they mean; of two balls, side by side with the difference. */
export function Numbers({ balls, units }: { balls: Told[]; units: Units }) {
  const two = balls.length > 1;
  const measured = balls.map((told) => ({ ...told, cover: useCover(told) }));
  return (
    <table class="sheet-numbers">
      <caption class="visually-hidden">{say("sheet-numbers")}</caption>
      {two && (
        <thead>
          <tr>
            <td />
            <th scope="col">A</th>
            <th scope="col">B</th>
            <th scope="col">A − B</th>
          </tr>
        </thead>
      )}
      <tbody>
        {ROWS.map(({ name, word, quantity, of, says, means }) => {
          const values = measured.map(of);
          const [a, b] = values;
          const [first] = measured;
          if (values.every((value) => value === null)) return null;
          return (
            <tr key={name}>
              <th scope="row">
                <Term word={word}>{say(name)}</Term>
                <span class="sheet-says">
                  {say(says)}
                  {!two && means && first && ` ${means(first)}`}
                </span>
              </th>
              {values.map((value, n) => (
                <td key={n}>{value === null ? "–" : reading(value, quantity, units)}</td>
              ))}
              {two && (
                <td>
                  {a == null || b == null
                    ? "–"
                    : (change(apart(b, a, quantity, units), quantity, units) ?? say("sheet-same"))}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
