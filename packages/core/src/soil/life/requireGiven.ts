import { InputError } from "../../InputError.js";
import { requireAtLeast, requireBetween, requireMoreThan } from "../../require.js";
import type { LifeGiven } from "./LifeKinds.js";

/** Refuses what no life can be followed from, naming the field. */
export function requireGiven(given: LifeGiven): void {
  requireMoreThan("life", "horizon", given.horizon, 0, "s");
  if (given.phases.length === 0) throw new InputError("life", "phases", "one or more", 0);
  if (given.points.length === 0) throw new InputError("life", "points", "one or more", 0);
  given.phases.forEach((phase, at) => {
    requireMoreThan("life", `phases[${at}].duration`, phase.duration, 0, "s");
    requireAtLeast("life", `phases[${at}].freeWater`, phase.freeWater ?? 0, 0, "kg/m3");
    const shares = phase.loads.reduce((sum, load) => sum + load.share, 0);
    if (!(Math.abs(shares - 1) < 1e-9))
      throw new InputError("life", `phases[${at}].loads`, "shares of 1 in all", shares);
  });
  for (const { name, soil, water = 0, separates = 0 } of given.elements) {
    requireAtLeast("life", `${name}'s soil`, soil, 0, "kg");
    requireAtLeast("life", `${name}'s water`, water, 0, "kg");
    requireBetween("life", `${name}'s separates`, separates, { from: 0, to: 1 });
  }
}
