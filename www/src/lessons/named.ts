// What a lesson in Spanish puts on the bench has its names in Spanish too. Lesson files call
// pieces by the names that scenarios/ has; files and text are renamed alike, so that both agree.

import { offered, offeredBall, offeredOil, offeredShot } from "../locale/names";
import type { Doc } from "../store";
import type { BallFile, OilFile, ShotFile } from "../types";

type Files = Record<string, unknown>;

const piece = (name: string): string => offered("piece", name);

/** `heart` of `pieces["heart"]`, `disc` of `name = "disc"`. */
const NAMES = /(?<=\w\[\\?")[^"\\]+(?=\\?"\])|(?<=\bname = ")[^"]+(?=")/g;

/** A lesson's text with the names of the page's language. */
export const namedText = (text: string): string => text.replace(NAMES, piece);

/** Where a column of a line of `namedText` is in that line as it was; the beginning of a name for all of it. */
export function columnBefore(line: string, column: number): number {
  let longer = 0;
  for (const { 0: name, index } of line.matchAll(NAMES)) {
    const begins = index + longer + 1;
    if (column <= begins) break;
    const now = piece(name).length;
    if (column < begins + now) return index + 1;
    longer += now - name.length;
  }
  return column - longer;
}

/** The files that lessons name, with names in the page's language. */
export const namedFiles = (files: Files): Files =>
  Object.fromEntries(
    Object.entries(files).map(([path, file]) => {
      if (path.endsWith(".ball.json")) return [path, offeredBall(file as BallFile)];
      if (path.endsWith(".shot.json")) return [path, offeredShot(file as ShotFile)];
      if (path.endsWith(".oil.json")) return [path, offeredOil(file as OilFile)];
      return [path, file];
    }),
  );

/** Gives a bench with the names of some benches those of the same benches in another language. */
export function renaming(from: Doc[], to: Doc[]): (doc: Doc) => Doc {
  const names = new Map<string, string>();
  pair(from, to, names);
  return (doc) => walk(doc, names) as Doc;
}

/** Every `name` and `note` of a thing beside that of the other. */
function pair(a: unknown, b: unknown, names: Map<string, string>): void {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return;
  for (const [key, value] of Object.entries(a)) {
    const other = (b as Record<string, unknown>)[key];
    if ((key === "name" || key === "note") && typeof value === "string" && typeof other === "string") {
      names.set(value, other);
    } else pair(value, other, names);
  }
}

function walk(value: unknown, names: Map<string, string>): unknown {
  if (Array.isArray(value)) return value.map((item) => walk(item, names));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [
      key,
      (key === "name" || key === "note") && typeof item === "string"
        ? (names.get(item) ?? item)
        : walk(item, names),
    ]),
  );
}
