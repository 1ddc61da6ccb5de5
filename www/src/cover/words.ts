// The cover in words: what is computed, and what is common practice.

import type { Units } from "../store";
import type { Cover, Vec3 } from "../types";
import { number, reading } from "../units";
import { COLUMNS, type Covered, ROWS } from "./use-cover";

/** Round a ball, a thickness that differs by less is the same. */
const EVEN_IN = 0.002;

const share = (value: number): string => {
  const percent = 100 * value;
  if (percent > 99.95) return "all";
  if (percent < 0.05) return "none";
  return `${percent < 10 ? percent.toFixed(1) : percent.toFixed(0)}\u00a0%`;
};

/** Down from the pin, and round the pin axis from the ball's +x. */
function angles([x, y, z]: Vec3): { down_deg: number; round_deg: number } {
  const down_deg = (Math.acos(Math.min(1, Math.max(-1, z / Math.hypot(x, y, z)))) * 180) / Math.PI;
  return { down_deg, round_deg: ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360 };
}

/** Where a place is on the ball, from the pin. */
export function whereabouts(place: Vec3): string {
  const { down_deg, round_deg } = angles(place);
  if (down_deg < 2) return "at the pin";
  if (down_deg > 178) return "opposite the pin";
  return `${down_deg.toFixed(0)}° down from the pin, ${Math.round(round_deg) % 360}° round from the ball's +x`;
}

/** Where the thinnest place is, or that it runs all round. */
function thinnestPlace({ cover, map }: Covered, direction: Vec3): string {
  const { down_deg } = angles(direction);
  const row = Math.min(ROWS - 1, Math.floor((down_deg / 180) * ROWS));
  const ring = map.slice(row * COLUMNS, (row + 1) * COLUMNS);
  const even = Math.max(...ring) - Math.min(...ring) < EVEN_IN;
  return even && cover.as_thin_share > 0.002 && down_deg > 2 && down_deg < 178
    ? `all round at ${down_deg.toFixed(0)}° down from the pin`
    : whereabouts(direction);
}

/** What was computed, sentence by sentence. */
export function computed(covered: Covered, units: Units): string[] {
  const { thinnest, mean_in, ...cover } = covered.cover;
  const size = (inches: number) => reading(inches, "cover", units);
  if (!thinnest) return ["There is no piece in this ball: it is cover all through."];
  const { thickness_in, error_in, piece, direction } = thinnest;
  const error = error_in < 5e-4 ? "" : ` (at most ${size(error_in)} less)`;
  const first =
    thickness_in === 0
      ? `The ${piece} comes to the surface ${thinnestPlace(covered, direction)}: there is no cover there.`
      : `The cover is ${size(thickness_in)}${error} at its thinnest, over the ${piece}`;
  const where =
    thickness_in === 0
      ? ""
      : cover.as_thin_share > 0.995
        ? ", and as thin all over."
        : `, ${thinnestPlace(covered, direction)}.`;
  const under = (limit_in: number, part: number) =>
    `${share(part)} of the surface has less than ${reading(limit_in, "size", units)}`;
  const [least_in, most_in] = cover.usual_in;
  return [
    `${first}${where}`,
    `On average it is ${size(mean_in)}; ${
      cover.under_usual_share === 1
        ? under(least_in, 1)
        : `${under(least_in, cover.under_usual_share)}, ${share(cover.under_most_share)} of it less than ${reading(most_in, "size", units)}`
    }.`,
    `The pieces under it fill ${reading(cover.core_share, "share", units)} of the ball. The ${piece} beneath is of ` +
      `${reading(thinnest.piece_g_cc, "density", units)}, the cover of ${number(cover.cover_g_cc, "density", units)}.`,
  ];
}

/** What holes leave standing. */
export function besideHoles({ holes, webs }: Cover, units: Units): string[] {
  const size = (inches: number) => reading(inches, "cover", units);
  return [
    ...holes.map(({ name, core_from_in, to_core_in }) => {
      const hole = `${name[0]?.toUpperCase() ?? ""}${name.slice(1)}`;
      if (core_from_in !== null) return `${hole}: the drill leaves the cover ${size(core_from_in)} down.`;
      if (to_core_in === null) return `${hole}: cover all round it.`;
      if (to_core_in === 0) return `${hole}: its wall opens into the core.`;
      return `${hole}: ${size(to_core_in)} of cover between it and the core.`;
    }),
    ...webs.map(({ holes: [one, other], least_in, depth_in }) =>
      least_in === 0
        ? `${one} and ${other} meet inside the ball.`
        : `Between ${one} and ${other}: ${size(least_in)} at the least, ${size(depth_in)} below the surface.`,
    ),
  ];
}

/** What common practice says to such a cover. */
export function inPractice(
  { beside_usual, usual_in, under_most_share, thinnest }: Cover,
  units: Units,
): string {
  const [least, most] = usual_in.map((inches) => reading(inches, "size", units));
  const usual = `the ${least?.split("\u00a0")[0]} to ${most} of common balls`;
  switch (beside_usual) {
    case "thinner":
      return `That is thinner than ${usual}. A thin cover over a big core tends to come away and crack with age.*`;
    case "usual":
      return under_most_share > 0.5
        ? `That is within ${usual}. A thin cover over a big outer core tends to come away and crack with age, so the thin end of that range lasts less long.*`
        : `That is within ${usual}, and only near the ${thinnest?.piece ?? "core"}: most of the ball has more, which lasts longer.*`;
    case "thicker":
      return `That is more than ${usual}, as is usual where a core sits in the cover with no outer core between: a thicker cover lasts longer.*`;
    case "no_core":
      return "There is no core for the cover to come away from.*";
  }
}

/** Thickness at a point of the map, as read on the page. */
export const thickness = (inches: number, radius_in: number, units: Units): string =>
  Number.isNaN(inches)
    ? "a hole"
    : inches >= radius_in - 1e-9
      ? "cover to the centre"
      : reading(inches, "cover", units);
