// What speaks against some of the weights: densities that a material does not
// have, published limits that the ball would not keep to.
import { offered, partCalled } from "../../locale/names";
import { worded } from "../../locale/worded";
import { shorten } from "../../shorten";
import type { Units } from "../../store";
import type { BallFile, Ladder } from "../../types";
import { digits, sentenceIn } from "../../units";
import { say } from "./say";

/** Letters of a name in a sentence. */
const MOST_NAME = 40;

/** What to mind at the weights where a part would be lighter than any filler. */
export const cautionNotes = ({ rungs }: Ladder, weight: (lb: number) => string, units: Units): string[] =>
  rungs.flatMap(({ weight_lb, caution }) =>
    caution ? [say("scale-line-note", { weight: weight(weight_lb), note: sentenceIn(caution, units) })] : [],
  );

/** A sentence for every part whose material is known and some weights are beyond it. */
export function materialNotes(file: BallFile, ladder: Ladder, weight: (lb: number) => string): string[] {
  return ladder.parts.flatMap((name, n) => {
    const piece = file.pieces.find((piece) => piece.name === name) ?? file.cover;
    const usual = ladder.rungs[0]?.changed[n]?.usual_g_cc;
    if (!usual) return [];
    const [low, high] = usual;
    const beyond = ladder.rungs.filter(({ feasible, changed }) => {
      const density = changed[n]?.density_g_cc;
      return feasible && density != null && (density < low || density > high);
    });
    if (beyond.length === 0) return [];
    const weights = beyond.map(({ weight_lb }) => weight(weight_lb)).join(", ");
    const density =
      low === high ? digits(low, 2) : say("scale-line-range", { low: digits(low, 2), high: digits(high, 2) });
    const material = shorten(offered("material", piece.material ?? ""), MOST_NAME);
    const part = shorten(partCalled(name), MOST_NAME);
    return [say("scale-line-material", { weights, material, density, part })];
  });
}

/** Whether a ball can be made at a weight, with densities that its materials have. */
export const canBeMade = ({ feasible, caution, unusual }: Ladder["rungs"][number]): boolean =>
  feasible && caution === null && unusual.length === 0;

/** A sentence for every published limit that some weights would not keep to. */
export function limitNotes({ rungs }: Ladder, weight: (lb: number) => string): string[] {
  const names = new Set(rungs.flatMap(({ limits_broken }) => limits_broken.map(({ name }) => worded(name))));
  return [...names].map((name) => {
    const beyond = rungs.filter(({ limits_broken }) =>
      limits_broken.some((broken) => worded(broken.name) === name),
    );
    const weights = beyond.map(({ weight_lb }) => weight(weight_lb)).join(", ");
    return say("scale-line-limit", { weights, limit: name });
  });
}
