import { requireMoreThan } from "../../require.js";
import type { LoadingPoint } from "./LoadingFit.js";

/** A capacity test: soil fed until the drop had risen so much. */
export interface CapacityTest {
  /** soil caught, kg */
  readonly soil: number;
  /** how much the drop had risen, Pa */
  readonly rise: number;
  /** m3/s */
  readonly flow: number;
  /** of the test fluid, Pa s */
  readonly dynamicViscosity: number;
}

/**
 * What a capacity test says of a medium: ratio = 1 + rise over the clean medium's linear drop at the test's flow and
 * viscosity. Inertia and body do not grow, so they take no part in the rise.
 *
 * With a clean resistance from a one-point flow test, the body's share in it is unknown and counts as medium: then the
 * true ratio is higher.
 *
 * @param test see `CapacityTest`
 * @param resistance linear resistance of the clean medium, 1/m3, as `Medium.linear`
 * @returns load in kg
 * @throws InputError for anything not above 0
 * @see ISO 16889:2022 and ISO 4020:2001 for such tests; 70 kPa is a usual end
 * @example
 * capacityPoint({ soil: 0.04, rise: 35e3, flow: 5.556e-5, dynamicViscosity: 2.49e-3 }, 1.446e10) // ratio 18.5
 */
export function capacityPoint(test: CapacityTest, resistance: number): LoadingPoint {
  requireMoreThan("capacityPoint", "soil", test.soil, 0, "kg");
  requireMoreThan("capacityPoint", "rise", test.rise, 0, "Pa");
  requireMoreThan("capacityPoint", "flow", test.flow, 0, "m3/s");
  requireMoreThan("capacityPoint", "dynamicViscosity", test.dynamicViscosity, 0, "Pa s");
  requireMoreThan("capacityPoint", "resistance", resistance, 0, "1/m3");
  return { load: test.soil, ratio: 1 + test.rise / (test.dynamicViscosity * resistance * test.flow) };
}
