import { ASYMMETRIC_SHARE, DIFFERENTIAL, RG } from "../../limits";
import { Term } from "../../parts/term";
import type { Units } from "../../store";
import type { Cover, Drilled, Weighed } from "../../types";
import { change, type Quantity, reading } from "../../units";
import type { Word } from "../../words";
import { bandOf } from "../scale/verdict";
import { type Told, useCover } from "./told";

interface Row {
  name: string;
  word: Word;
  quantity: Quantity;
  /** null where the ball has no such number. */
  of(told: Measured): number | null;
  /** What the number is. */
  says: string;
  /** What this one means. */
  means?(told: Measured): string;
}

interface Measured {
  weighed: Weighed;
  drilled: Drilled | null;
  cover: Cover;
}

const BESIDE_USUAL: Record<Cover["beside_usual"], string> = {
  thinner: "Thinner than usual: such covers crack or come away sooner.*",
  usual: "As usual.*",
  thicker: "Thicker than usual: such covers last longer.*",
  no_core: "",
};

const ROWS: Row[] = [
  {
    name: "Weight",
    word: "weight",
    quantity: "weight",
    of: ({ weighed }) => weighed.weight_lb,
    says: "What the arm lifts.",
  },
  {
    name: "RG",
    word: "RG",
    quantity: "rg",
    of: ({ weighed }) => weighed.rg_in.low,
    says: "How far out the weight sits: the larger, the harder to spin up.",
    means: ({ weighed }) => `Usually called ${bandOf(weighed.rg_in.low, RG)}.*`,
  },
  {
    name: "Differential",
    word: "differential",
    quantity: "rg",
    of: ({ weighed }) => weighed.differential_in,
    says: "How strongly it prefers one axis: room for the track to move to fresh cover.",
    means: ({ weighed }) => `Usually called ${bandOf(weighed.differential_in, DIFFERENTIAL)}.*`,
  },
  {
    name: "Intermediate differential",
    word: "intermediate differential",
    quantity: "rg",
    of: ({ weighed }) => weighed.intermediate_differential_in,
    says: "How far from round the core is about its pin.",
    means: ({ weighed }) =>
      weighed.intermediate_differential_in > ASYMMETRIC_SHARE * weighed.differential_in + 1e-6
        ? "Asymmetric.*"
        : "Symmetric.*",
  },
  {
    name: "Top weight, undrilled",
    word: "top weight",
    quantity: "imbalance",
    of: ({ weighed, drilled }) => (drilled?.before ?? weighed).top_weight_oz,
    says: "How far its balance lies towards the pin before any hole.",
  },
  {
    name: "Cover, thinnest",
    word: "coverstock",
    quantity: "cover",
    of: ({ cover }) => cover.thinnest?.thickness_in ?? null,
    says: "How deep the core lies below the surface.",
    means: ({ cover }) => BESIDE_USUAL[cover.beside_usual],
  },
];

/** The numbers with what they mean; of two balls, side by side with the difference. */
export function Numbers({ balls, units }: { balls: Told[]; units: Units }) {
  const two = balls.length > 1;
  const measured = balls.map((told) => ({ ...told, cover: useCover(told) }));
  return (
    <table class="sheet-numbers">
      <caption class="visually-hidden">The ball in numbers</caption>
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
                <Term word={word}>{name}</Term>
                <span class="sheet-says">
                  {says}
                  {!two && means && first && ` ${means(first)}`}
                </span>
              </th>
              {values.map((value, n) => (
                <td key={n}>{value === null ? "–" : reading(value, quantity, units)}</td>
              ))}
              {two && <td>{a == null || b == null ? "–" : (change(a - b, quantity, units) ?? "same")}</td>}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
