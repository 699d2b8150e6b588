import { InputError } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import type { CurveAnswer } from "./CurveAnswer.js";
import { curvePoint } from "./curvePoint.js";
import { terminalDrops } from "./terminalDrops.js";

/** What to ask besides what the file says. */
export interface CurveOptions {
  /** fuel temperatures, K; the file's own when left out */
  readonly temperatures?: readonly number[];
  /** demand the engine runs at, burn and return together, m3/s; the file's own when left out */
  readonly demand?: number;
  /** where the curve ends, m3/s; a bit beyond the supply ceiling when left out */
  readonly to?: number;
  /** how many demands it is worked out at, 2 to 10001; 61 when left out */
  readonly points?: number;
}

const POINTS = 61;
const MOST_POINTS = 10_001;

/**
 * How does vacuum grow with demand? Vacuum at the pump and feed pressure from no demand to beyond the ceiling, with the
 * elements clean, as they are now and due for change, the tanks at their low level, at every temperature asked for.
 *
 * An element is due at its stated terminal drop, taken at the file's own temperature and demand; its soil is then kept
 * for all temperatures, since a cold morning meets the element as the warm day left it. Soil multiplies the medium's
 * linear term only. Uses the smooth passage between laminar and turbulent flow.
 *
 * @param system from a system file
 * @param options temperatures, K; demand and end of the curve, m3/s; number of points
 * @returns columns in SI, with limits, ceilings and the point the engine runs at
 * @throws InputError when an option is out of range
 * @example
 * curve(system, { temperatures: [263.15], points: 3 }).points[0]?.clean?.vacuum.middle // Float64Array(3), Pa
 */
export function curve(system: System, options: CurveOptions = {}): CurveAnswer {
  const { demand = null, to = null, points = POINTS } = options;
  if (!(Number.isInteger(points) && points >= 2 && points <= MOST_POINTS)) {
    throw new InputError("curve", "points", `a whole number from 2 to ${MOST_POINTS}`, points);
  }
  if (to !== null && !(to > 0 && to < Infinity)) throw new InputError("curve", "to", "more than 0 m3/s", to);
  const built = build(system);
  const drops = terminalDrops(system);
  const temperatures = options.temperatures ?? [built.temperature];
  const toTank = built.pump.kind === "fixed" && built.pump.reliefTo === "tank";
  return {
    question: "curve",
    system: system.name,
    pump: built.pump.kind,
    suctionFollows: toTank ? "pump" : "demand",
    atChange: drops.size === 0 ? null : { parts: [...drops.keys()], temperature: built.temperature },
    points: temperatures.map((temperature) => curvePoint(built, drops, { temperature, demand, to, points })),
  };
}
