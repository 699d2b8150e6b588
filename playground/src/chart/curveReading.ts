import { quantity, type UnitSystem } from "@thirstline/study";
import type { Pin } from "../model/Pin.js";
import { figureButton } from "../working/figureButton.js";
import type { Curve } from "./curveOf.js";
import { curveOf } from "./curveOf.js";
import { nearest } from "./nearest.js";
import type { ReadingShown } from "./readingsOf.js";

/** The workings of a curve's lines, with a pump and without. */
const names = {
  vacuum: { clean: "vacuum", now: "vacuum now", "at change": "vacuum at change", pinned: "vacuum" },
  feed: {
    clean: "feed pressure clean",
    now: "feed pressure",
    "at change": "feed pressure at change",
    pinned: "feed pressure clean",
  },
} as const;

/**
 * Readings of a curve that open their workings, at the demand that is pointed at. A pinned curve is read between its points:
 * there the nearest of them is opened, and said.
 */
export function curveReading({ answer, point }: Curve, pins: readonly Pin[], units: UnitSystem): ReadingShown {
  const figures = answer.pump === "none" ? names.feed : names.vacuum;
  return (text, { line, end, at }) => {
    const demand = at === null ? undefined : point.demand[at];
    const asked = demand === undefined ? {} : { at: demand };
    if (line === null) {
      return figureButton(text, { figure: demand === undefined ? "demand" : "demand at a point of the curve", asked });
    }
    const figure = `${figures[line.look]}${end === "middle" ? "" : `, ${end} end`}`;
    if (line.look !== "pinned") return figureButton(text, { figure, asked });
    const pin = pins.find(({ name }) => name === line.label);
    if (pin === undefined) return text;
    const points = curveOf(pin.system).point.demand;
    const there = points[nearest(points, demand ?? point.duty.demand)] ?? Number.NaN;
    const about = `Pinned as ${pin.name}, at ${quantity(there, "flow", units)}: the nearest point worked out of its curve.`;
    return figureButton(text, { figure, asked: { at: there } }, { source: pin.system, about });
  };
}
