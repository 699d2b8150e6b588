import { hasFriction } from "../circuit/hasFriction.js";
import { InputError } from "../InputError.js";
import { requireMoreThan } from "../require.js";
import type { Supply } from "./Supply.js";

/** Refuses a supply that has no answer: no tank, no air, or several tanks with nothing to decide what each gives. */
export function requireSupply(caller: string, { ambientPressure, tanks }: Supply): void {
  requireMoreThan(caller, "ambientPressure", ambientPressure, 0, "Pa");
  if (tanks.length === 0) throw new InputError(caller, "tanks", "one or more", 0);
  if (tanks.length === 1) return;
  tanks.forEach(({ path }, at) => {
    if (path && hasFriction(path)) return;
    throw new InputError(caller, `tanks[${at}].path`, "a circuit that resists flow, as several tanks join", path);
  });
}
