// What a lesson says: text with numbers in the reader's units and words of the trade.

import { worded } from "../locale/worded";
import { Term } from "../parts/term";
import { type Units, useStore } from "../store";
import type { ProseBlock, Said } from "../types";
import { measure, reading } from "../units";
import { isWord } from "../words";

/** A value with its unit; as many decimals more or fewer as the lesson wants beside the usual ones. */
function valueIn(said: Extract<Said, { kind: "value" }>, units: Units): string {
  const { decimals, factor } = measure(said.quantity, units);
  const wanted = said.decimals === null ? 0 : said.decimals - measure(said.quantity, "trade").decimals;
  const more = Math.max(wanted, -decimals);
  // The difference of two numbers as they are shown, so that the three agree.
  const shown = (value: number) => Number((value * factor).toFixed(decimals + more)) / factor;
  const value = said.between ? shown(said.between[0]) - shown(said.between[1]) : said.value;
  return reading(value, said.quantity, units, more);
}

/** The same as plain text. */
export function plain(said: Said[], units: Units): string {
  return said
    .map((part) => {
      if (part.kind === "value") return valueIn(part, units);
      return part.kind === "text" || part.kind === "term" ? worded(part.text) : plain(part.said, units);
    })
    .join("");
}

/** One sentence or more; `still` without words to open, where it is on a control itself. */
export function Line({ said, still }: { said: Said[]; still?: boolean }) {
  const { units } = useStore().view.value;
  return (
    <>
      {said.map((part, at) => {
        switch (part.kind) {
          case "text":
            return worded(part.text);
          case "value":
            return (
              <span key={at} class="said-value">
                {valueIn(part, units)}
              </span>
            );
          case "term":
            return !still && isWord(part.word) ? (
              <Term key={at} word={part.word}>
                {worded(part.text)}
              </Term>
            ) : (
              worded(part.text)
            );
          case "strong":
            return (
              <strong key={at}>
                <Line said={part.said} still={still} />
              </strong>
            );
          case "emphasis":
            return (
              <em key={at}>
                <Line said={part.said} still={still} />
              </em>
            );
        }
        return null;
      })}
    </>
  );
}

/** Paragraphs and lists. */
export function Prose({ blocks, still }: { blocks: ProseBlock[]; still?: boolean }) {
  return (
    <div class="prose">
      {blocks.map((block, at) => {
        if (block.kind === "paragraph") {
          return (
            <p key={at}>
              <Line said={block.said} still={still} />
            </p>
          );
        }
        const items = block.items.map((item, n) => (
          <li key={n}>
            <Line said={item} still={still} />
          </li>
        ));
        return block.ordered ? <ol key={at}>{items}</ol> : <ul key={at}>{items}</ul>;
      })}
    </div>
  );
}
