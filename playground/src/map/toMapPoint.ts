import type { CheckPoint } from "@thirstline/study";
import type { MapPoint } from "./MapPoint.js";

/** The ceilings of a point as the map has them. */
export function toMapPoint({ temperature, ceilings, reasons }: CheckPoint): MapPoint {
  const { low, high } = ceilings.atChange.flow;
  const unsure = reasons.some(({ code }) =>
    ["below cloud point", "cloud point not known", "fuel out of range"].includes(code),
  );
  return { temperature, clean: Math.min(ceilings.clean.flow.low, low), atChange: { low, high }, unsure };
}
