// The narrowest cover on a cut, in words.
import type { Units } from "../../store";
import type { Section } from "../../types";
import { reading } from "../../units";
import { say } from "./say";

type Narrowest = NonNullable<Section["narrowest"]>;

export function narrowestWords({ thickness_in }: Narrowest, { depth_in }: Section, units: Units): string {
  const thickness = reading(thickness_in, "cover", units);
  return say(Math.abs(depth_in) < 0.005 ? "saw-narrowest" : "saw-narrowest-askew", { thickness });
}
