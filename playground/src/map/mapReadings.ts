import { quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Columns } from "../chart/Columns.js";
import type { Reading } from "../chart/Reading.js";
import type { MapPoint } from "./MapPoint.js";

/** What the map reads at a temperature, K: the demands at which it starves, and at which no room for soil is left. */
export function mapReadings(points: readonly MapPoint[], temperature: number, units: UnitSystem): Reading[] {
  const flow = (of: (point: MapPoint) => number): string => quantity(between(points, temperature, of), "flow", units);
  const [low, high] = [flow((one) => one.atChange.low), flow((one) => one.atChange.high)];
  return [
    { look: null, label: "temperature", value: quantity(temperature, "temperature", units) },
    { look: null, label: "room for soil up to", value: flow((one) => one.clean) },
    { look: null, label: "starves above", value: low === high ? low : `${low} to ${high}` },
  ];
}

/** The figures of the map. */
export function mapColumns(points: readonly MapPoint[], units: UnitSystem): Columns {
  const [temperature, flow] = [unitOf("temperature", units), unitOf("flow", units)];
  const ceiling = (value: number) => (Number.isFinite(value) ? value / flow.size : null);
  return {
    head: [
      `temperature of the fuel (${temperature.symbol})`,
      `largest demand with room for soil (${flow.symbol})`,
      `largest demand, at least (${flow.symbol})`,
      `largest demand, at most (${flow.symbol})`,
      "how sure",
    ],
    rows: points.map((one) => [
      (one.temperature - (temperature.zero ?? 0)) / temperature.size,
      ceiling(one.clean),
      ceiling(one.atChange.low),
      ceiling(one.atChange.high),
      one.unsure ? "no promise" : "",
    ]),
  };
}

/** Straight between the temperatures that were worked out. */
function between(points: readonly MapPoint[], temperature: number, of: (point: MapPoint) => number): number {
  const after = points.findIndex((one) => one.temperature >= temperature);
  const [right, left] = [points[after], points[after - 1]];
  if (right === undefined) return Number.NaN;
  if (left === undefined || of(left) === of(right)) return of(right);
  const share = (temperature - left.temperature) / (right.temperature - left.temperature);
  return of(left) + share * (of(right) - of(left));
}
