// The few vector and quaternion operations the drawings need.
import type { Vec3 } from "../types";

export type Quaternion = [number, number, number, number];

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** The unit vector along `a`; `a` itself where its length is 0. */
export function unit(a: Vec3): Vec3 {
  const length = Math.hypot(...a);
  return length > 0 ? scale(a, 1 / length) : a;
}

/** `a` turned by the unit quaternion `[w, x, y, z]`. */
export function turned(q: Quaternion, a: Vec3): Vec3 {
  const axis: Vec3 = [q[1], q[2], q[3]];
  const t = scale(cross(axis, a), 2);
  return add(add(a, scale(t, q[0])), cross(axis, t));
}

/** `a` turned by the inverse of `q`: from lane axes back to ball axes. */
export const turnedBack = (q: Quaternion, a: Vec3): Vec3 => turned([q[0], -q[1], -q[2], -q[3]], a);

/** From turn `p` (share 0) to turn `q` (share 1) at constant speed, the short way round. */
export function between(p: Quaternion, q: Quaternion, share: number): Quaternion {
  let cosine = p[0] * q[0] + p[1] * q[1] + p[2] * q[2] + p[3] * q[3];
  const sign = cosine < 0 ? -1 : 1;
  cosine = Math.min(1, Math.abs(cosine));
  const angle = Math.acos(cosine);
  const sine = Math.sin(angle);
  const a = sine < 1e-6 ? 1 - share : Math.sin((1 - share) * angle) / sine;
  const b = (sine < 1e-6 ? share : Math.sin(share * angle) / sine) * sign;
  const mixed: Quaternion = [
    a * p[0] + b * q[0],
    a * p[1] + b * q[1],
    a * p[2] + b * q[2],
    a * p[3] + b * q[3],
  ];
  const length = Math.hypot(...mixed);
  return [mixed[0] / length, mixed[1] / length, mixed[2] / length, mixed[3] / length];
}
