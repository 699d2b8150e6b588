import { fuelState, settlingTime, water } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import type { CardSettling } from "./CardAnswer.js";

/** Size of the drops that are to be down before a tank is drained, m; finer ones stay up for days. Common practice, no source. */
const DROP = 50e-6;

/** Where water is liquid and its density known, K. */
const FREEZES = 273.15;
const WARMEST = 313.15;

/** How long the deepest tank, when full, is to stand before its water is drained, at a temperature, K. */
export function settlingFor(system: System, temperature: number): CardSettling {
  if (temperature < FREEZES) return { code: "may be ice" };
  if (temperature > WARMEST) return { code: "not known" };
  const depth = Math.max(...system.tanks.map(({ fullDepth }) => fullDepth));
  const fuel = fuelState(build(system).fuel, { temperature });
  const { density } = water({ temperature });
  const found = settlingTime({ depth, size: DROP, density, fuel });
  if (!found.known || found.time === Infinity) return { code: "not known" };
  return { code: "time", size: DROP, depth, time: found.time };
}
