// The lessons in Spanish, in a file of their own: fetched in the quiet like the rooms.

import { signal } from "@preact/signals";
import { language } from "../locale/language";
import { part } from "../parts/part";

/** In the order of those in English; null until they are there. */
export const inSpanish = signal<string[] | null>(null);

const spanish = part(async () => {
  inSpanish.value = (await import("lessons:es")).LESSONS;
});

/** Waits for the lessons in the page's language; those in English stand in where they do not arrive. */
export async function startEditions(): Promise<void> {
  if (language() === "es") await spanish().catch(() => {});
}
