// The one place where the bytes of a file that the reader chose become text.

import { ownProblem } from "./own-problem";
import { count } from "./units";
import { say } from "./work";

export const MIB = 1024 * 1024;

/**
 * The text of a file of at most so many bytes; a byte order mark is passed over. Throws a `Problem` where the
 * browser cannot read it, it is larger, or it is no UTF-8: nothing of it is replaced in silence.
 */
export async function textOf(file: File, most: number): Promise<string> {
  if (file.size > most) {
    const size = most >= MIB ? `${count(most / MIB)} MiB` : say("work-bytes", { many: count(most) });
    throw ownProblem(() => say("work-too-large", { size }));
  }
  const bytes = await file.arrayBuffer().catch(() => {
    throw ownProblem(() => say("work-not-readable"));
  });
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw ownProblem(() => say("work-no-text"));
  }
}
