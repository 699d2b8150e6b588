import type { System } from "@thirstline/spec/system";
import { check } from "@thirstline/study";
import type { MapPoint } from "./MapPoint.js";
import { toMapPoint } from "./toMapPoint.js";

/** The ceilings of a system over temperatures, K: under them it gets its fuel, over them it starves. */
export function mapPoints(system: System, temperatures: readonly number[]): MapPoint[] {
  return check(system, { temperatures }).points.map(toMapPoint);
}
