// Which language the page speaks. English comes with the page's parts; another
// language comes whole, in a file of its own, before the first picture.

import { type FluentBundle, FluentResource } from "@fluent/bundle";
import { negotiateLanguages } from "@fluent/langneg";
import { signal } from "@preact/signals";
import { part } from "../parts/part";
import { bundleOf } from "./bundle";

export const LANGUAGES = { en: "English", es: "Español" } as const;
export type Language = keyof typeof LANGUAGES;

/** English, stretched and set from right to left: shows what a page in Arabic or Hebrew would have to hold. */
export const PSEUDO = "en-XB";

const KEY = "pithball.language";

interface Spoken {
  tag: Language | typeof PSEUDO;
  /** Null for English, whose texts come with the parts that say them. */
  bundle: FluentBundle | null;
}

/** What is spoken now; read while drawing, so that a change draws anew. */
export const spoken = signal<Spoken>({ tag: "en", bundle: null });

/** The language of sentences: that of the page, English where it is only dressed up. */
export const language = (): Language => (spoken.value.tag === PSEUDO ? "en" : spoken.value.tag);

export const isRightToLeft = (): boolean => spoken.value.tag === PSEUDO;

/** What the reader chose, else what the browser asks for. */
export function wantedLanguage(): Spoken["tag"] {
  let kept: string | null = null;
  try {
    kept = localStorage.getItem(KEY);
  } catch {
    // Where nothing can be kept, the browser's wish stands.
  }
  if (kept === PSEUDO) return PSEUDO;
  const asked = kept === null ? navigator.languages : [kept];
  const [tag] = negotiateLanguages(asked, Object.keys(LANGUAGES), {
    defaultLocale: "en",
    strategy: "lookup",
  });
  return tag as Language;
}

const spanish = part(async () => (await import("locales:es")).TEXTS);

/** Speaks a language from now on; where its file does not arrive, nothing changes. */
export async function speak(tag: Spoken["tag"]): Promise<void> {
  let bundle: FluentBundle | null = null;
  if (tag === "es") {
    const texts = await spanish();
    bundle = bundleOf(tag);
    for (const text of texts) bundle.addResource(new FluentResource(text));
  }
  spoken.value = { tag, bundle };
  document.documentElement.lang = language();
  document.documentElement.dir = isRightToLeft() ? "rtl" : "ltr";
}

/** As `speak`, and again on the next visit. */
export async function chooseLanguage(tag: Language): Promise<void> {
  await speak(tag);
  try {
    localStorage.setItem(KEY, tag);
  } catch {
    // The choice holds until the page is left.
  }
}
