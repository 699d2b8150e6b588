import { fuelState } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { fuelReasons } from "../check/fuelReasons.js";
import { judgedAt } from "./judgedAt.js";

/** How closely the temperature is found, K. */
const CLOSE = 0.005;

/** Coldest fuel a system file may have, K: -60 degC. */
const COLDEST = 213.15;

/** Where the engine begins to starve as the fuel grows colder. */
export type StarvesBelow =
  /** K */
  | { readonly code: "below"; readonly temperature: number }
  /** down to this temperature, K, it does not: there figures end, at the cloud point or where no data back the fuel */
  | { readonly code: "not above"; readonly temperature: number }
  /** not even at this temperature, K, the warmest asked for, does it get its fuel */
  | { readonly code: "always"; readonly temperature: number };

/**
 * The fuel temperature below which a system starves, with its elements as they are, at the bad end of what is known of
 * them: found between the warmest temperature and the lowest one at which figures mean anything.
 *
 * @param warmest K
 */
export function starvesBelow(system: System, warmest: number): StarvesBelow {
  const built = build(system);
  const starves = (temperature: number) => judgedAt(built, temperature).worse.grade === "starves";
  const means = (temperature: number) => fuelReasons(fuelState(built.fuel, { temperature }), false).length === 0;
  if (starves(warmest)) return { code: "always", temperature: warmest };
  const coldest = crossing(means, warmest, COLDEST);
  if (!starves(coldest)) return { code: "not above", temperature: coldest };
  return { code: "below", temperature: crossing((temperature) => !starves(temperature), warmest, coldest) };
}

/** The last temperature at which something holds on the way from one where it does to one where it does not, or that one. */
function crossing(holds: (temperature: number) => boolean, from: number, to: number): number {
  if (holds(to)) return to;
  let good = from;
  let bad = to;
  while (Math.abs(good - bad) > CLOSE) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
