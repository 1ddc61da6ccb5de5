import file from "../../../../scenarios/materials.json";

export interface Material {
  name: string;
  /** What it is used for. */
  for: string;
  /** Typical densities, from and to. */
  density_g_cc: [number, number];
  /** Where the figures come from. */
  source: string;
}

export const MATERIALS = file.materials as Material[];
