// The cover in words: what is computed, and what is common practice.

import { holeName } from "../locale/names";
import type { Units } from "../store";
import type { Cover, Vec3 } from "../types";
import { digits, number, reading } from "../units";
import { say } from "./say";
import { COLUMNS, type Covered, ROWS } from "./use-cover";

/** Round a ball, a thickness that differs by less is the same. */
const EVEN_IN = 0.002;

/** Whether a share reads as all, none or a part, and the part. */
function share(value: number): { how: "all" | "none" | "some"; part: string } {
  const percent = 100 * value;
  const how = percent > 99.95 ? "all" : percent < 0.05 ? "none" : "some";
  return { how, part: `${digits(percent, percent < 10 ? 1 : 0)}\u00a0%` };
}

/** Down from the pin, and round the pin axis from the ball's +x. */
function angles([x, y, z]: Vec3): { down_deg: number; round_deg: number } {
  const down_deg = (Math.acos(Math.min(1, Math.max(-1, z / Math.hypot(x, y, z)))) * 180) / Math.PI;
  return { down_deg, round_deg: ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360 };
}

/** Where a place is on the ball, from the pin. */
export function whereabouts(place: Vec3): string {
  const { down_deg, round_deg } = angles(place);
  if (down_deg < 2) return say("cover-at-pin");
  if (down_deg > 178) return say("cover-opposite-pin");
  return say("cover-at-angles", {
    down: digits(down_deg, 0),
    round: digits(Math.round(round_deg) % 360, 0),
  });
}

/** Where the thinnest place is, or that it runs all round. */
function thinnestPlace({ cover, map }: Covered, direction: Vec3): string {
  const { down_deg } = angles(direction);
  const row = Math.min(ROWS - 1, Math.floor((down_deg / 180) * ROWS));
  const ring = map.slice(row * COLUMNS, (row + 1) * COLUMNS);
  const even = Math.max(...ring) - Math.min(...ring) < EVEN_IN;
  return even && cover.as_thin_share > 0.002 && down_deg > 2 && down_deg < 178
    ? say("cover-all-round", { down: digits(down_deg, 0) })
    : whereabouts(direction);
}

/** What was computed, sentence by sentence. */
export function computed(covered: Covered, units: Units): string[] {
  const { thinnest, mean_in, ...cover } = covered.cover;
  const size = (inches: number) => reading(inches, "cover", units);
  if (!thinnest) return [say("cover-no-piece")];
  const { piece } = thinnest;
  const [least, most] = cover.usual_in.map((inches) => reading(inches, "size", units));
  const mean = { mean: size(mean_in), least: least ?? "" };
  const [under, over] = [share(cover.under_usual_share), share(cover.under_most_share)];
  return [
    thinnestWords(covered, thinnest, size),
    cover.under_usual_share === 1
      ? say("cover-mean-all-thin", mean)
      : say("cover-mean", {
          ...mean,
          under: under.how,
          "under-share": under.part,
          over: over.how,
          "over-share": over.part,
          most: most ?? "",
        }),
    say("cover-pieces", {
      share: reading(cover.core_share, "share", units),
      piece,
      density: reading(thinnest.piece_g_cc, "density", units),
      cover: number(cover.cover_g_cc, "density", units),
    }),
  ];
}

function thinnestWords(
  covered: Covered,
  { thickness_in, error_in, piece, direction }: NonNullable<Cover["thinnest"]>,
  size: (inches: number) => string,
): string {
  const [thickness, error] = [size(thickness_in), size(error_in)];
  const exact = error_in < 5e-4;
  if (thickness_in > 0 && covered.cover.as_thin_share > 0.995) {
    return say(exact ? "cover-thin-all-over" : "cover-thin-all-over-error", { thickness, error, piece });
  }
  const place = thinnestPlace(covered, direction);
  if (thickness_in === 0) return say("cover-none-there", { piece, place });
  return say(exact ? "cover-thinnest" : "cover-thinnest-error", { thickness, error, piece, place });
}

/** What holes leave standing. */
export function besideHoles({ holes, webs }: Cover, units: Units): string[] {
  const size = (inches: number) => reading(inches, "cover", units);
  return [
    ...holes.map(({ name: plain, core_from_in, to_core_in }) => {
      const name = holeName(plain);
      const hole = `${name[0]?.toUpperCase() ?? ""}${name.slice(1)}`;
      if (core_from_in !== null) return say("cover-drilled-to-core", { hole, depth: size(core_from_in) });
      if (to_core_in === null) return say("cover-all-round-hole", { hole });
      if (to_core_in === 0) return say("cover-opens-into-core", { hole });
      return say("cover-to-core", { hole, thickness: size(to_core_in) });
    }),
    ...webs.map(({ holes, least_in, depth_in }) => {
      const [one, other] = [holeName(holes[0]), holeName(holes[1])];
      return least_in === 0
        ? say("cover-holes-meet", { one, other })
        : say("cover-between-holes", { one, other, least: size(least_in), depth: size(depth_in) });
    }),
  ];
}

/** What common practice says to such a cover. */
export function inPractice(
  { beside_usual, usual_in, under_most_share, thinnest }: Cover,
  units: Units,
): string {
  const [low, most = ""] = usual_in.map((inches) => reading(inches, "size", units));
  const usual = { least: low?.split("\u00a0")[0] ?? "", most };
  switch (beside_usual) {
    case "thinner":
      return say("cover-thinner", usual);
    case "usual":
      return under_most_share > 0.5
        ? say("cover-usual", usual)
        : say("cover-usual-in-part", { ...usual, piece: thinnest?.piece ?? say("cover-core") });
    case "thicker":
      return say("cover-thicker", usual);
    case "no_core":
      return say("cover-no-core");
  }
}

/** Thickness at a point of the map, as read on the page. */
export const thickness = (inches: number, radius_in: number, units: Units): string =>
  Number.isNaN(inches)
    ? say("cover-hole-here")
    : inches >= radius_in - 1e-9
      ? say("cover-to-centre")
      : reading(inches, "cover", units);
