import { quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Columns } from "../chart/Columns.js";
import { type Reading, readingBetween } from "../chart/Reading.js";
import type { MapPoint } from "./MapPoint.js";

/** What the map reads at a temperature: the demands at which no room for soil is left, and at which it starves. */
export function mapReadings(
  { temperature, clean, atChange: { low, high } }: MapPoint,
  units: UnitSystem,
  shown: (text: string, figure: string) => Reading["value"] = (text) => text,
): Reading[] {
  const flow = (value: number, figure: string): Reading["value"] => {
    const text = quantity(value, "flow", units);
    return Number.isFinite(value) ? shown(text, figure) : text;
  };
  const [least, most] = [flow(low, "ceiling at change, low end"), flow(high, "ceiling at change, high end")];
  const isOne = quantity(low, "flow", units) === quantity(high, "flow", units);
  return [
    { look: null, label: "temperature", value: shown(quantity(temperature, "temperature", units), "temperature") },
    {
      look: null,
      label: "room for soil up to",
      value: flow(clean, clean < low ? "ceiling clean, low end" : "ceiling at change, low end"),
    },
    { look: null, label: "starves above", value: isOne ? least : readingBetween(least, most) },
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
