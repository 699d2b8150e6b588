import type { Viscosity } from "../units/viscosity.js";
import type { Report } from "./also.js";

/** A fluid as a test sheet states it. */
export interface TestFluid {
  readonly viscosity?: Viscosity | undefined;
  readonly density?: number | undefined;
}

/** Dynamic viscosity of a test fluid, Pa s; NaN when it was stated as kinematic with no density. */
export function dynamicViscosityOf(fluid: TestFluid): number {
  if (fluid.viscosity === undefined) return Number.NaN;
  if ("dynamic" in fluid.viscosity) return fluid.viscosity.dynamic;
  return fluid.viscosity.kinematic * (fluid.density ?? Number.NaN);
}

/** Faults a kinematic viscosity without the density that would turn it into a dynamic one. */
export function checkTestFluid(fluid: TestFluid, report: Report): void {
  const { viscosity } = fluid;
  if (viscosity === undefined || "dynamic" in viscosity || Number.isNaN(viscosity.kinematic)) return;
  if ("density" in fluid && fluid.density !== undefined) return;
  const message =
    'missing; with a kinematic viscosity write the density too, such as "830 kg/m3", or the dynamic viscosity, such as "2.5 mPa s"';
  report(["density"], "missing", message);
}
