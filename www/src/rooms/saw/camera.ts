// Where the 3D picture is seen from, and the whole state of the picture.

import type { Derived } from "../../derive";
import type { Size } from "../../draw/use-size";
import { paintOf } from "../../palette";
import type { View } from "../../store";
import type { Look, Vec3 } from "../../types";
import { facingOf } from "./plane";

export interface Camera {
  yaw_deg: number;
  pitch_deg: number;
  zoom: number;
}

/**
 * Looks at a cut a little from the side, so that it reads as a cut in a
 * solid. At yaw 0 the eye stands on −y; it walks towards +x as yaw grows.
 */
export function facingCamera(normal: Vec3): Camera {
  const { round_deg, up_deg } = facingOf(normal);
  return { yaw_deg: round_deg + 90 - 24, pitch_deg: Math.min(70, Math.max(-70, up_deg + 16)), zoom: 1 };
}

export function lookOf(
  view: View,
  derived: Derived,
  highlighted: number | null,
  camera: Camera,
  size: Size,
  dark: boolean,
): Look {
  return {
    ...size,
    ...camera,
    plane: view.plane,
    exploded: view.exploded,
    hidden: view.hidden,
    highlighted,
    markers: view.markers,
    dark,
    paint: Array.from({ length: derived.made.pieces.length + 1 }, (_, part) => {
      const { colour, hatch } = paintOf(part);
      return { colour, hatch };
    }),
  };
}
