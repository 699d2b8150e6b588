import type { System } from "@thirstline/spec/system";
import { type CheckPoint, check } from "@thirstline/study";
import type { MapPoint } from "./MapPoint.js";

/** The ceilings of a system over temperatures, K: under them it gets its fuel, over them it starves. */
export function mapPoints(system: System, temperatures: readonly number[]): MapPoint[] {
  return check(system, { temperatures }).points.map(toMapPoint);
}

function toMapPoint({ temperature, ceilings, reasons }: CheckPoint): MapPoint {
  const { low, high } = ceilings.atChange.flow;
  const unsure = reasons.some(({ code }) =>
    ["below cloud point", "cloud point not known", "fuel out of range"].includes(code),
  );
  return { temperature, clean: Math.min(ceilings.clean.flow.low, low), atChange: { low, high }, unsure };
}
