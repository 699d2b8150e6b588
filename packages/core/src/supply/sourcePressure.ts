import { FREE_FALL } from "../parts/rise.js";
import type { Tank } from "./tank.js";

/** Total pressure at a tank's pick-up, Pa absolute; null when its vent is blocked. */
export function sourcePressure(tank: Tank, ambient: number, density: number): number | null {
  if (tank.vent.kind === "blocked") return null;
  const held = tank.vent.kind === "spring" ? tank.vent.opening : 0;
  return ambient - held + density * FREE_FALL * tank.depth;
}
