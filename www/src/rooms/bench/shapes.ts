// What a person can change about each kind of shape, and how one kind turns
// into another of about the same size.

import type { Shape, Vec3 } from "../../types";
import { say } from "./say";

export type Kind = Shape["kind"];

/** Each with the text that names it. */
export const KINDS: { kind: Kind; name: string }[] = [
  { kind: "sphere", name: "bench-sphere" },
  { kind: "ellipsoid", name: "bench-ellipsoid" },
  { kind: "cylinder", name: "bench-cylinder" },
  { kind: "frustum", name: "bench-frustum" },
  { kind: "ring", name: "bench-ring" },
  { kind: "box", name: "bench-box" },
  { kind: "lathe", name: "bench-lathe" },
];

/** One number of a shape: its key in the file, its name, how to read and change it. */
export interface Dimension {
  /** As the file's errors name it, after the shape's own place. */
  place: string;
  label: string;
  value: number;
  with(value: number): Shape;
}

/** To be called while drawing: the names are in the page's language. */
export function dimensions(shape: Shape): Dimension[] {
  const one = <K extends string>(key: K, label: string): Dimension => ({
    place: key,
    label,
    value: (shape as unknown as Record<K, number>)[key],
    with: (value) => ({ ...shape, [key]: value }) as Shape,
  });
  switch (shape.kind) {
    case "sphere":
      return [one("diameter_in", say("bench-diameter"))];
    case "cylinder":
      return [one("diameter_in", say("bench-diameter")), one("height_in", say("bench-height"))];
    case "frustum":
      return [
        one("bottom_diameter_in", say("bench-diameter-below")),
        one("top_diameter_in", say("bench-diameter-above")),
        one("height_in", say("bench-height")),
      ];
    case "ring":
      return [
        one("ring_diameter_in", say("bench-ring-diameter")),
        one("tube_diameter_in", say("bench-tube-diameter")),
      ];
    case "ellipsoid":
    case "box":
      return ["bench-width-x", "bench-width-y", "bench-height-z"].map((label, at) => ({
        place: `size_in[${at}]`,
        label: say(label),
        value: shape.size_in[at] ?? 0,
        with: (value) => ({ ...shape, size_in: put(shape.size_in, at, value) }),
      }));
    case "lathe":
      return [];
  }
}

export function put(vector: Vec3, at: number, value: number): Vec3 {
  const next: Vec3 = [...vector];
  next[at] = value;
  return next;
}

/** Full size along x, y and z before any squash. */
export function extent(shape: Shape): Vec3 {
  switch (shape.kind) {
    case "sphere":
      return [shape.diameter_in, shape.diameter_in, shape.diameter_in];
    case "ellipsoid":
    case "box":
      return shape.size_in;
    case "cylinder":
      return [shape.diameter_in, shape.diameter_in, shape.height_in];
    case "frustum": {
      const across = Math.max(shape.bottom_diameter_in, shape.top_diameter_in);
      return [across, across, shape.height_in];
    }
    case "ring": {
      const across = shape.ring_diameter_in + shape.tube_diameter_in;
      return [across, across, shape.tube_diameter_in];
    }
    case "lathe": {
      const across = 2 * Math.max(...shape.profile_in.map(([r]) => r));
      const heights = shape.profile_in.map(([, z]) => z);
      return [across, across, Math.max(...heights) - Math.min(...heights)];
    }
  }
}

/** The shape as another kind, about as large. */
export function asKind(shape: Shape, kind: Kind): Shape {
  const [x, y, z] = extent(shape);
  const across = round(Math.max(x, y));
  const height = round(z);
  const squash = shape.squash ? { squash: shape.squash } : {};
  switch (kind) {
    case "sphere":
      return { kind, diameter_in: round(Math.min(x, y, z)), ...squash };
    case "ellipsoid":
    case "box":
      return { kind, size_in: [round(x), round(y), height], ...squash };
    case "cylinder":
      return { kind, diameter_in: across, height_in: height, ...squash };
    case "frustum":
      return {
        kind,
        bottom_diameter_in: across,
        top_diameter_in: round(across * 0.6),
        height_in: height,
        ...squash,
      };
    case "ring": {
      const tube = round(Math.min(z, across / 3));
      return { kind, ring_diameter_in: round(across - tube), tube_diameter_in: tube, ...squash };
    }
    case "lathe": {
      const r = across / 2;
      const h = height / 2;
      const profile: [number, number][] = [
        [0, -h],
        [round(r * 0.7), -h],
        [round(r), 0],
        [round(r * 0.7), h],
        [0, h],
      ];
      return { kind, profile_in: profile, ...squash };
    }
  }
}

function round(value: number): number {
  return Number(value.toFixed(3));
}
