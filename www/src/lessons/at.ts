// What the Lessons room shows.

import { signal } from "@preact/signals";
import type { Store } from "../store";
import type { Word } from "../words";

export type LessonsPage =
  | { page: "list" | "class" | "write" }
  /** The words, beginning at one. */
  | { page: "words"; word: Word | null }
  /** A lesson on paper, or told to a room. */
  | { page: "paper" | "coach"; text: string };

export const lessonsAt = signal<LessonsPage>({ page: "list" });

/** Where a word is shown with its picture. */
export function toGlossary(store: Store, word: Word): void {
  lessonsAt.value = { page: "words", word };
  store.look({ room: "lessons" });
}
