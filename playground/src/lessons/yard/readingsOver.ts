import type { System } from "@thirstline/spec/system";
import type { Point } from "../Figure.js";
import { timeOf } from "./answers.js";
import { lifeOf } from "./lifeOf.js";

/** The running time, s, after which the vacuum gauge of a system reads a figure, Pa: as if that were its limit. */
export function timeToRead(system: System, vacuum: number): number {
  return timeOf(lifeOf({ ...system, limits: { ...system.limits, vacuumAtChange: vacuum, feedPressure: 0 } }));
}

/** What the gauge reads over the running time, from clean elements to a reading: so many points, each an answer of `life`. */
export function readingsOver(system: System, clean: number, last: number, count: number): Point[] {
  const rise = (at: number) => clean + ((last - clean) * at) / count;
  const later = Array.from({ length: count }, (_, at): Point => [timeToRead(system, rise(at + 1)), rise(at + 1)]);
  return [[0, clean], ...later];
}

/** A line's value at a place, straight between its points; the nearest end beyond them. */
export function along(line: readonly Point[], x: number): number {
  const after = line.findIndex(([at]) => at >= x);
  const [x1, y1] = line[after === -1 ? line.length - 1 : after] ?? [0, Number.NaN];
  const [x0, y0] = line[after - 1] ?? [x1, y1];
  return after <= 0 || x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** A straight line from a reading with clean elements through a later one, Pa, to a running time, s. */
export function straightOn(clean: number, [time, reading]: Point, until: number): Point[] {
  return [
    [0, clean],
    [until, clean + ((reading - clean) * until) / time],
  ];
}
