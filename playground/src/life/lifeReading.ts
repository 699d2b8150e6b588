import { type LifeAnswer, type UnitSystem, unitOf } from "@thirstline/study";
import type { ChartData } from "../chart/ChartData.js";
import type { ReadingShown } from "../chart/readingsOf.js";
import { figureButton } from "../working/figureButton.js";
import type { Gauge } from "./lifeChart.js";

/** Readings of a life that open their workings, at the running time that is pointed at; at rest, where it ends. */
export function lifeReading(
  { end }: LifeAnswer,
  gauge: Gauge,
  { x: { values } }: ChartData,
  units: UnitSystem,
): ReadingShown {
  const hours = unitOf("running time", units).size;
  return (text, { line, at }) => {
    if (line === null && at === null && end !== null) return figureButton(text, { figure: "end of life", asked: {} });
    const place = at ?? values.length - 1;
    const asked = { after: (values[place] ?? 0) * hours };
    const read = gauge === "feed" ? "feed pressure at a moment" : "vacuum at a moment";
    return figureButton(text, { figure: line === null ? "running time at a moment" : read, asked });
  };
}
