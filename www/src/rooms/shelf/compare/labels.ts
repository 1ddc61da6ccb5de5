// Names beside points, the more important first, none over another or over a point.

export interface Label {
  text: string;
  /** null where there is no room for it. */
  at: { x: number; y: number; anchor: "start" | "end" | "middle" } | null;
}

interface Box {
  x0: number;
  x1: number;
  y0: number;
  y1: number;
}

const HEIGHT_PX = 13;
const AWAY_PX = 9;

const meet = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

export function place(
  points: { x: number; y: number; text: string }[],
  frame: { left: number; right: number; top: number; bottom: number; char_px: number },
): Label[] {
  const taken: Box[] = points.map(({ x, y }) => ({ x0: x - 6, x1: x + 6, y0: y - 6, y1: y + 6 }));
  return points.map(({ x, y, text }) => {
    const width = text.length * frame.char_px;
    const places = [
      { x: x + AWAY_PX, y: y + 4, anchor: "start" as const, x0: x + AWAY_PX },
      { x: x - AWAY_PX, y: y + 4, anchor: "end" as const, x0: x - AWAY_PX - width },
      { x, y: y - AWAY_PX, anchor: "middle" as const, x0: x - width / 2 },
      { x, y: y + AWAY_PX + 9, anchor: "middle" as const, x0: x - width / 2 },
    ];
    for (const { x0, ...at } of places) {
      const box = { x0, x1: x0 + width, y0: at.y - HEIGHT_PX + 3, y1: at.y + 3 };
      const inside =
        box.x0 >= frame.left && box.x1 <= frame.right && box.y0 >= frame.top && box.y1 <= frame.bottom;
      if (!inside || taken.some((other) => meet(box, other))) continue;
      taken.push(box);
      return { text, at };
    }
    return { text, at: null };
  });
}
