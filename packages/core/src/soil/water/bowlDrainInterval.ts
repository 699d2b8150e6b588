import { requireAtLeast, requireMoreThan } from "../../require.js";

/** Density of water, kg/m3, at 21 degC; `water` gives it at another temperature, where it differs by less than 1 %. */
const WATER_DENSITY = 998;

/**
 * Running time until a bowl is full of separated water, s; Infinity when none is separated.
 *
 * @param given volume of the bowl up to where it must be drained, m3; water separated, kg per m3 of fuel; fuel flow,
 *   m3/s
 * @throws InputError for a bowl not above 0, or water or flow below 0
 * @example
 * bowlDrainInterval({ bowl: 2e-4, separated: 0.05, flow: 5.5e-5 }) / 3600 // 20.2 h
 */
export function bowlDrainInterval(given: {
  readonly bowl: number;
  readonly separated: number;
  readonly flow: number;
}): number {
  requireMoreThan("bowlDrainInterval", "bowl", given.bowl, 0, "m3");
  requireAtLeast("bowlDrainInterval", "separated", given.separated, 0, "kg/m3");
  requireAtLeast("bowlDrainInterval", "flow", given.flow, 0, "m3/s");
  return (given.bowl * WATER_DENSITY) / (given.separated * given.flow);
}
