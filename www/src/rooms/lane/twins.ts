// Balls made up to tell the effects of a core apart: round inside, so that they
// have no differential, with a weight and an RG as asked.

import { isProblem } from "../../problem";
import type { Shot, Store } from "../../store";
import type { BallFile, Coverstock, Roll, WasmBall, Weighed } from "../../types";

const G_PER_KG = 1000;
const CC_PER_IN3 = 2.54 ** 3;
const CORE_SHARE = 0.75;

/** The RG a ball has on average over all axes, in inches. */
export const averageRg = ({ rg_in: { low, middle, high } }: Weighed): number =>
  Math.sqrt((low ** 2 + middle ** 2 + high ** 2) / 3);

/**
 * A sphere in a sphere with this weight and RG; null where that asks for a
 * density that is not above 0. Mass and moment of two nested spheres are
 * linear in the two densities: M = ρ₁V₁ + ρ₂V₂ and M·RG² = ρ₁J₁ + ρ₂J₂, with
 * J = ⅖·V·r² for a sphere and the difference of two for the shell (handbook).
 */
export function roundBall(
  mass_kg: number,
  rg_in: number,
  diameter_in: number,
  { family, finish }: Pick<Coverstock, "family" | "finish"> = {},
): BallFile | null {
  const r = diameter_in / 2;
  const core = r * CORE_SHARE;
  const volume = (radius: number) => (4 / 3) * Math.PI * radius ** 3;
  const moment = (radius: number) => 0.4 * volume(radius) * radius ** 2;
  const mass = (mass_kg * G_PER_KG) / CC_PER_IN3;
  const [v1, v2] = [volume(r) - volume(core), volume(core)];
  const [j1, j2] = [moment(r) - moment(core), moment(core)];
  const determinant = v1 * j2 - v2 * j1;
  const cover = (mass * j2 - v2 * mass * rg_in ** 2) / determinant;
  const inside = (v1 * mass * rg_in ** 2 - mass * j1) / determinant;
  if (!(cover > 0 && inside > 0)) return null;
  return {
    format: "pithball.ball/1",
    name: "round",
    diameter_in,
    // The same surface as the ball it stands beside: oil tells them apart.
    cover: { density_g_cc: cover, ...(family && { family }), ...(finish && { finish }) },
    pieces: [{ name: "core", density_g_cc: inside, shape: { kind: "sphere", diameter_in: 2 * core } }],
  };
}

/** Throws a made-up ball, undrilled; null where it cannot be made or thrown so. */
export function throwBall(store: Store, file: BallFile | null, shot: Shot): Roll | null {
  if (!file) return null;
  let ball: WasmBall | null = null;
  try {
    ball = new store.wasm.Ball(file);
    const { drilling: _, ...rest } = shot;
    return ball.roll(rest);
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  } finally {
    ball?.free();
  }
}
