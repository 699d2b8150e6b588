import { fuelState, InputError } from "@thirstline/core";
import { build } from "../build/build.js";
import type { System } from "../system/index.js";
import type { RawFault } from "./RawFault.js";

/**
 * Faults the core finds where the schema found none: figures that are each sensible and together impossible, such as
 * viscosity points whose line gives no figure at the fuel's temperature. So a system that was read can always be built.
 */
export function buildFaults(system: System): RawFault[] {
  try {
    const { fuel, temperature, demand } = build(system);
    demand(fuelState(fuel, { temperature }));
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const ofFuel = /fuel|viscosity|density|d341|petrol|premix|blend/i.test(error.caller);
    const check = ofFuel ? "check the fuel's measured points" : "check the figures it names";
    const message = `these figures cannot be together: ${error.message}; ${check}`;
    return [{ code: "impossible together", path: ofFuel ? ["fuel"] : [], message }];
  }
}
