import type { ComponentChildren } from "preact";
import { type Args, Say } from "../locale/say";
import type { Word } from "../words";
import { Term } from "./term";

interface SayTermsProps {
  id: string;
  args?: Args;
  /** The elements of the text, each with the word of the trade that it is. */
  terms: Record<string, Word>;
}

/** A text with words of the trade in it, each opening its meaning. */
export function SayTerms({ id, args, terms }: SayTermsProps) {
  const parts = Object.entries(terms).map(([name, word]) => [
    name,
    (inner: ComponentChildren) => <Term word={word}>{inner}</Term>,
  ]);
  return <Say id={id} args={args} parts={Object.fromEntries(parts)} />;
}
