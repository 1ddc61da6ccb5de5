// What the page says, by its name in the Fluent files (`www/locales`).

import { type FluentBundle, FluentResource, type FluentVariable } from "@fluent/bundle";
import { type ComponentChildren, Fragment } from "preact";
import { bundleOf } from "./bundle";
import { isRightToLeft, spoken } from "./language";

/** A text is written as it is to be read; numbers come written by `units.ts`. */
export type Args = Record<string, string | number>;
export type Say = (id: string, args?: Args) => string;
/** What is to be said when it is drawn, in the language and the units of then. */
export type ToSay = () => string;

const english = bundleOf("en");
const pseudo = bundleOf("en", true);

/** Adds one of `locales/en`; what says its texts adds it, so that texts come with the part of the page they are for. */
export function phrases(text: string): Say {
  const resource = new FluentResource(text);
  for (const bundle of [english, pseudo]) {
    const [wrong] = bundle.addResource(resource);
    if (wrong) throw wrong;
  }
  return say;
}

/**
 * A text in the page's language, English where it is missing. `id.attribute` is
 * an attribute of a message. To be called while drawing, so that a change of
 * language reaches it.
 */
export function say(id: string, args?: Args): string {
  const now = spoken.value.bundle ?? (isRightToLeft() ? pseudo : english);
  return said(now, id, args) ?? said(english, id, args) ?? id;
}

function said(bundle: FluentBundle, id: string, args?: Args): string | null {
  const [name = id, attribute] = id.split(".");
  const message = bundle.getMessage(name);
  const pattern = attribute ? message?.attributes[attribute] : message?.value;
  return pattern ? bundle.formatPattern(pattern, args as Record<string, FluentVariable>) : null;
}

/** A translation that is there in the page's language, else null: for texts that come in English from elsewhere. */
export function translated(id: string, args?: Args): string | null {
  const { bundle } = spoken.value;
  return bundle && said(bundle, id, args);
}

export interface SayProps {
  id: string;
  args?: Args;
  /** What stands for `<name>…</name>` in the text, given what is between; `<name/>` has nothing. */
  parts: Record<string, (inner: ComponentChildren) => ComponentChildren>;
}

/** A text with elements in it: `The <rg>RG</rg> is low.` with `parts={{ rg: (word) => <Term word="RG">{word}</Term> }}`. */
export function Say({ id, args, parts }: SayProps) {
  return <>{withParts(say(id, args), parts)}</>;
}

const TAG = /<([a-z][a-z0-9-]*)(?:\/>|>(.*?)<\/\1>)/gs;

function withParts(text: string, parts: SayProps["parts"]): ComponentChildren {
  const all: ComponentChildren[] = [];
  let from = 0;
  for (const found of text.matchAll(TAG)) {
    const [whole, name = "", inner = ""] = found;
    const part = parts[name];
    if (!part) continue;
    all.push(text.slice(from, found.index));
    all.push(<Fragment key={found.index}>{part(withParts(inner, parts))}</Fragment>);
    from = found.index + whole.length;
  }
  all.push(text.slice(from));
  return all;
}
