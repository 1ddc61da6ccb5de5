export interface Material {
  name: string;
  density_g_cc: [number, number];
}

export const MATERIALS: Material[] = [
  { name: "polyurethane", density_g_cc: [1.25, 1.25] },
  { name: "glass-bead filler", density_g_cc: [0.9, 1.2] },
];
