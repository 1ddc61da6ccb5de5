// The narrowest cover on a cut, in words.
import type { Units } from "../../store";
import type { Section } from "../../types";
import { reading } from "../../units";

type Narrowest = NonNullable<Section["narrowest"]>;

export function narrowestWords({ thickness_in }: Narrowest, { depth_in }: Section, units: Units): string {
  const size = reading(thickness_in, "cover", units);
  return Math.abs(depth_in) < 0.005
    ? `The narrowest cover on this cut is ${size}.`
    : `The narrowest cover on this cut looks ${size}; off the centre the saw meets it askew, so it is thinner than it looks.`;
}
