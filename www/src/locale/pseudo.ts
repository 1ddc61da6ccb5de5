// A language that is none: shows texts that are not translated, boxes that are
// too narrow and layouts that only know left to right.

const ACCENTS: Record<string, string> = {
  a: "á", e: "é", i: "í", o: "ó", u: "ú", n: "ñ", c: "ç", y: "ý",
  A: "Á", E: "É", I: "Í", O: "Ó", U: "Ú", N: "Ñ", C: "Ç", Y: "Ý",
}; // biome-ignore format: a table
/** Right-to-left mark and override, and its end: letters run, and count, as those of a right-to-left script. */
const [OVERRIDE, END] = ["\u200f\u202e", "\u202c"];

/** Text with accents, about a third longer and set from right to left; tags, spaces at its ends and what has no letters stay. */
export function stretched(text: string): string {
  return text.replace(
    /(<\/?[a-z][a-z0-9-]*\/?>)|([^<]+)/g,
    (_, tag: string | undefined, plain: string) =>
      tag ??
      plain.replace(
        /\S*\p{L}\S*/gu,
        (word) =>
          OVERRIDE +
          word
            .replace(/[aeioAEIO]/g, (c) => (ACCENTS[c] ?? c) + c)
            .replace(/[uncyUNCY]/g, (c) => ACCENTS[c] ?? c) +
          END,
      ),
  );
}
