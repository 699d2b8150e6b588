/** What was measured of a fuel; the rest is as published for its kind. */
export interface SystemFuelMeasured {
  /** temperature, K, and kinematic viscosity, m2/s; one point or more */
  readonly viscosity?: readonly { readonly temperature: number; readonly kinematicViscosity: number }[];
  /** temperature, K, and density, kg/m3; one point or more */
  readonly density?: readonly { readonly temperature: number; readonly density: number }[];
  /** K */
  readonly cloudPoint?: number;
  /** K */
  readonly coldFilterPluggingPoint?: number;
  /** Reid vapour pressure, Pa */
  readonly reid?: number;
}

/** Grade of a diesel. */
export type SystemGrade = "summer" | "winter" | "arctic";

/** Which fuel it is. Shares are by volume, 0 to 1. */
export type SystemFuel = (
  | { readonly kind: "diesel"; readonly grade: SystemGrade }
  /** biodiesel in diesel of a grade; the grade may be left out of pure biodiesel */
  | {
      readonly kind: "biodiesel";
      readonly share: number;
      readonly feedstock: "soy" | "rapeseed";
      readonly grade?: SystemGrade;
    }
  | { readonly kind: "paraffinic" }
  | { readonly kind: "kerosene" }
  /** class as "EN 228 A" or "ASTM D4814 C" */
  | { readonly kind: "petrol"; readonly class: string; readonly ethanol: number }
  /** parts of petrol to one of oil */
  | { readonly kind: "premix"; readonly ratio: number; readonly class: string; readonly ethanol: number }
  /** all that matters was measured; the rest is as in the fuel it is like */
  | { readonly kind: "measured"; readonly like: "diesel" | "biodiesel" | "paraffinic" | "kerosene" | "petrol" }
) & { readonly measured?: SystemFuelMeasured };
