import { requireFinite } from "../require.js";
import type { Limits } from "./Limits.js";

/** Refuses a stated limit that is not a finite number; one left out is not asked for. */
export function requireLimits(caller: string, limits: Limits): void {
  for (const name of ["vacuumClean", "vacuumAtChange", "feedPressure"] as const) {
    const limit = limits[name];
    if (limit !== undefined) requireFinite(caller, `limits.${name}`, limit, "Pa");
  }
}
