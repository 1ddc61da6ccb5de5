// What the Saw says about a part of the ball.

import type { Derived } from "../../derive";
import type { Mark } from "../../draw/section";
import { dot } from "../../draw/vectors";
import { holeName, offered } from "../../locale/names";
import type { Units } from "../../store";
import type { Section, Vec3 } from "../../types";
import { LB_KG, reading } from "../../units";
import { say } from "./say";

/** What a cut shows: a ball, its recipe and its numbers. */
export type Shown = Pick<Derived, "ball" | "made" | "weighed">;

/** Names of the parts, cover first. */
export const partNames = ({ made }: Pick<Shown, "made">): string[] => [
  made.cover.name ?? say("saw-part-cover"),
  ...made.pieces.map(({ name, insert }) => (insert ? holeName(name) : name)),
];

/** One sentence about a part: what it is of, its weight, its share of the RG. */
export function aboutPart(derived: Shown, part: number, units: Units): string {
  const { made, weighed } = derived;
  const piece = part === 0 ? made.cover : made.pieces[part - 1];
  const share = weighed.pieces[part];
  if (!piece || !share) return "";
  const name = partNames(derived)[part] ?? "";
  return say(piece.material ? "saw-part-material" : "saw-part", {
    part: `${name[0]?.toUpperCase() ?? ""}${name.slice(1)}`,
    material: offered("material", piece.material ?? ""),
    density: reading(piece.density_g_cc, "density", units),
    weight: reading(share.mass_kg / LB_KG, "weight", units),
    share: reading(share.rg_share, "share", units),
  });
}

/** Pin and centre of gravity, where they lie close enough to the cut to be shown on it. */
export function marksOf(derived: Shown, section: Section, radius_in: number): Mark[] {
  const flat = (name: string, at: Vec3, within_in: number): Mark[] =>
    Math.abs(dot(at, section.normal) - section.depth_in) <= within_in
      ? [{ name, at: [dot(at, section.u), dot(at, section.v)] }]
      : [];
  return [
    ...flat(say("saw-mark-pin"), [0, 0, radius_in], 0.15),
    ...flat(say("saw-mark-cg"), derived.weighed.cg_in, 0.15),
  ];
}
