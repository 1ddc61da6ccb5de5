// The shot at any moment: between two samples the ball moves evenly and turns
// at constant speed, which is closer than a picture can show.
import type { Phase, Roll, Sample } from "../types";
import { between, type Quaternion } from "./vectors";

export interface Moment {
  t_s: number;
  x_in: number;
  y_ft: number;
  speed_mph: number;
  revs_rpm: number;
  phase: Phase;
  turn: Quaternion;
}

const RPM_PER_RAD_S = 30 / Math.PI;

export const revsOf = (sample: Sample): number => Math.hypot(...sample.omega_rad_s) * RPM_PER_RAD_S;

/** When the run ends, in seconds after release. */
export const endOf = (roll: Roll): number => roll.samples.at(-1)?.t_s ?? 0;

/** The first sample after `t_s`, or the last. */
export function sampleAfter(samples: Sample[], t_s: number): number {
  let low = 0;
  let high = samples.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((samples[middle] as Sample).t_s > t_s) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The ball at `t_s`, held to the run's own span; null where there are no samples. */
export function momentAt(roll: Roll, t_s: number): Moment | null {
  const next = sampleAfter(roll.samples, t_s);
  const b = roll.samples[next];
  const a = roll.samples[Math.max(0, next - 1)];
  if (!a || !b) return null;
  const span = b.t_s - a.t_s;
  const share = span > 0 ? Math.min(1, Math.max(0, (t_s - a.t_s) / span)) : 1;
  const mix = (p: number, q: number) => p + (q - p) * share;
  return {
    t_s: mix(a.t_s, b.t_s),
    x_in: mix(a.x_in, b.x_in),
    y_ft: mix(a.y_ft, b.y_ft),
    speed_mph: mix(a.speed_mph, b.speed_mph),
    revs_rpm: mix(revsOf(a), revsOf(b)),
    phase: share < 1 ? a.phase : b.phase,
    turn: between(a.turn, b.turn, share),
  };
}

/** The path cut where the phase changes; neighbours share their end point. */
export function stretches(samples: Sample[]): { phase: Phase; samples: Sample[] }[] {
  const out: { phase: Phase; samples: Sample[] }[] = [];
  for (const sample of samples) {
    const last = out.at(-1);
    if (last && last.phase === sample.phase) last.samples.push(sample);
    else {
      last?.samples.push(sample);
      out.push({ phase: sample.phase, samples: [sample] });
    }
  }
  return out;
}
