import { type FuelState, fuelState } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import { demandAt } from "../check/demandAt.js";

/** When elements are due, and where that is read. */
export interface Due {
  /** stated terminal drops, Pa, by the element's name */
  readonly drops: ReadonlyMap<string, number>;
  /** at the file's own temperature */
  readonly fuel: FuelState;
  /** m3/s, return included */
  readonly demand: number;
}

/** Terminal drops as read at the file's own temperature and at its demand or the one asked for, m3/s. */
export function dueAt(built: Built, drops: ReadonlyMap<string, number>, asked: number | null): Due {
  const fuel = fuelState(built.fuel, { temperature: built.temperature });
  return { drops, fuel, demand: demandAt(built, fuel, asked).total };
}
