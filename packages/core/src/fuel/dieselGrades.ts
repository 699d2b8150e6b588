/** Limits of a diesel grade. */
export interface DieselGrade {
  readonly standard: "EN 590" | "ASTM D975";
  readonly grade: string;
  /** Cold filter plugging point at most, K. */
  readonly coldFilterPluggingPointAtMost?: number;
  /** Cloud point at most, K; temperate grades have none. */
  readonly cloudPointAtMost?: number;
  /** Density at 15 degC, kg/m3. */
  readonly density?: { readonly from: number; readonly to: number };
  /** Kinematic viscosity at 40 degC, m2/s. */
  readonly kinematicViscosity: { readonly from: number; readonly to: number };
}

const temperate = (grade: string, coldFilterPluggingPointAtMost: number): DieselGrade => ({
  standard: "EN 590",
  grade,
  coldFilterPluggingPointAtMost,
  density: { from: 820, to: 845 },
  kinematicViscosity: { from: 2e-6, to: 4.5e-6 },
});

const severe = (
  grade: string,
  cold: { readonly plugging: number; readonly cloud: number },
  densityAtMost: number,
  viscosityFrom: number,
): DieselGrade => ({
  standard: "EN 590",
  grade,
  coldFilterPluggingPointAtMost: cold.plugging,
  cloudPointAtMost: cold.cloud,
  density: { from: 800, to: densityAtMost },
  kinematicViscosity: { from: viscosityFrom, to: 4e-6 },
});

/**
 * Limits of diesel grades. EN 590 temperate grades A to F (CFPP of table 2: E from memory, the others seen), severe
 * winter classes 0 to 4 (table 3 of EN 590:2009: seen, the cloud point of class 0 from memory), ASTM D975 No. 1 and 2
 * (seen in Maryland's COMAR 03.03.05.02). ASTM D975 sets no cloud point; it is agreed by place and month.
 */
export const dieselGrades: readonly DieselGrade[] = [
  temperate("A", 278.15),
  temperate("B", 273.15),
  temperate("C", 268.15),
  temperate("D", 263.15),
  temperate("E", 258.15),
  temperate("F", 253.15),
  severe("0", { plugging: 253.15, cloud: 263.15 }, 845, 1.5e-6),
  severe("1", { plugging: 247.15, cloud: 257.15 }, 845, 1.5e-6),
  severe("2", { plugging: 241.15, cloud: 251.15 }, 840, 1.5e-6),
  severe("3", { plugging: 235.15, cloud: 245.15 }, 840, 1.4e-6),
  severe("4", { plugging: 229.15, cloud: 239.15 }, 840, 1.2e-6),
  { standard: "ASTM D975", grade: "No. 1-D", kinematicViscosity: { from: 1.3e-6, to: 2.4e-6 } },
  { standard: "ASTM D975", grade: "No. 2-D", kinematicViscosity: { from: 1.9e-6, to: 4.1e-6 } },
];
