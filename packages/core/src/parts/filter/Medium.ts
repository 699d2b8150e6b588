import type { Band } from "../Band.js";

/** Where the figures of a filter's medium come from, most trusted first. */
export type MediumSource =
  | "two-point flow test"
  | "one-point flow test"
  | "geometry"
  | "air test"
  | "fibre law"
  | "rating estimate";

/**
 * What a filter's medium does to flow: drop = dynamic viscosity * linear * flow + density * quadratic * flow |flow|.
 */
export interface Medium {
  readonly source: MediumSource;
  /** resistance, 1/m3 */
  readonly linear: Band;
  /** inertial term, 1/m4 */
  readonly quadratic: number;
}
