import { requireMoreThan } from "../../require.js";
import { exactly } from "../Band.js";
import type { Medium } from "./Medium.js";

/** Viscosity of air at 20 degC, Pa s; handbook value, from memory. */
export const AIR_VISCOSITY = 1.81e-5;

/** A medium by its measured air permeability. */
export interface AirTest {
  /** air through the sample, m3/s */
  readonly flow: number;
  /** area of the sample, m2 */
  readonly sampleArea: number;
  /** pressure the air was driven with, Pa */
  readonly pressure: number;
  /** area of the medium in the element, m2 */
  readonly area: number;
}

/**
 * A medium from an air test (ASTM D737 and ISO 9237 report such figures): air at 20 degC, taken as creeping flow,
 * gives permeability over thickness, and that is all Darcy's law needs.
 *
 * Air slips in pores of a micrometre or less, so there the fuel sees somewhat more resistance than this says.
 */
export function fromAirTest(test: AirTest): Medium {
  requireMoreThan("filter", "airTest.flow", test.flow, 0, "m3/s");
  requireMoreThan("filter", "airTest.sampleArea", test.sampleArea, 0, "m2");
  requireMoreThan("filter", "airTest.pressure", test.pressure, 0, "Pa");
  requireMoreThan("filter", "airTest.area", test.area, 0, "m2");
  const permeabilityOverThickness = (AIR_VISCOSITY * test.flow) / (test.sampleArea * test.pressure);
  return { source: "air test", linear: exactly(1 / (permeabilityOverThickness * test.area)), quadratic: 0 };
}
