// What Rust says, in the page's language. Rust writes English and hands over the id and the parts of each
// sentence (`phrase!`); `locales/en/said.ftl` lists them.

import { say, type ToSay, translated } from "./say";

/** A text that is the same in every language, one with its id and parts, or one that the page says itself. */
export type Phrase = string | { text: string; id: string; args: Record<string, Phrase> } | ToSay;

/** A phrase as the reader's language has it; `sentenceIn` has its numbers in the reader's units, too. */
export const worded = (phrase: Phrase): string =>
  typeof phrase === "function" ? phrase() : marked(translatedPhrase(phrase));

/** The same with numbers as Rust writes them. */
export function translatedPhrase(phrase: Phrase): string {
  if (typeof phrase === "string") return phrase;
  if (typeof phrase === "function") return phrase();
  if (phrase.id === "capital") {
    const said = translatedPhrase(phrase.args.said ?? "");
    return said.charAt(0).toUpperCase() + said.slice(1);
  }
  const args = Object.entries(phrase.args).map(([name, arg]) => [name, translatedPhrase(arg)]);
  return translated(`said-${phrase.id}`, Object.fromEntries(args)) ?? phrase.text;
}

/** Numbers with the language's decimal mark; names in quotes stay. */
export function marked(text: string): string {
  const mark = say("decimal-mark");
  return text.replace(/"[^"]*"|(?<![\w.])(\d+)\.(\d+)(?!\.?\d)/g, (found, whole, decimals) =>
    whole === undefined ? found : `${whole}${mark}${decimals}`,
  );
}
