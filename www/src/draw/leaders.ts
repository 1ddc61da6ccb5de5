// Where the names beside a section drawing go, so that none covers another.

export interface Target {
  part: number;
  /** Point inside the region the leader ends at, in drawing pixels. */
  x: number;
  y: number;
}
export interface Leader extends Target {
  side: "left" | "right";
  /** Height of the name. */
  text_y: number;
}

/** Moves heights apart to at least `gap`, in order, inside `top` to `bottom`. */
export function spread(heights: number[], gap: number, top: number, bottom: number): number[] {
  const out: number[] = [];
  for (const height of heights) {
    const above = out.at(-1);
    out.push(Math.max(height, above === undefined ? top : above + gap));
  }
  let limit = bottom;
  for (let i = out.length - 1; i >= 0; i--) {
    out[i] = Math.min(out[i] as number, limit);
    limit = (out[i] as number) - gap;
  }
  return out;
}

/**
 * Deals the targets to the two sides: by where they lie about `centre_x`, else
 * to the side with fewer; all to the right where it is null.
 */
export function leaders(
  targets: Target[],
  centre_x: number | null,
  top: number,
  bottom: number,
  gap = 18,
): Leader[] {
  const sides: Record<"left" | "right", Target[]> = { left: [], right: [] };
  const byHeight = [...targets].sort((a, b) => a.y - b.y);
  for (const target of byHeight) {
    const off = centre_x === null ? 1 : target.x - centre_x;
    const nearMiddle = centre_x !== null && Math.abs(off) < 6;
    const fewer = sides.left.length < sides.right.length ? "left" : "right";
    sides[nearMiddle ? fewer : off < 0 ? "left" : "right"].push(target);
  }
  return (["left", "right"] as const).flatMap((side) => {
    // Of two at one height the one nearer to the names comes first, so that leaders do not cross.
    const towards = side === "left" ? 1 : -1;
    sides[side].sort((a, b) => Math.round((a.y - b.y) / 4) || (a.x - b.x) * towards);
    const heights = spread(
      sides[side].map((target) => target.y),
      gap,
      top,
      bottom,
    );
    return sides[side].map((target, i) => ({ ...target, side, text_y: heights[i] as number }));
  });
}
