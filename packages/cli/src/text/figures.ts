import {
  bandText,
  type CheckAnswer,
  type CheckPoint,
  limitName,
  quantity,
  sideWords,
  type UnitSystem,
} from "@thirstline/study";
import type { Entry } from "./entries.js";
import { vacuumEntries } from "./vacuumEntries.js";

/** A vapour margin less than this is shown, Pa; twice what earns a caution. */
const MARGIN_SHOWN = 20e3;

/** The figures of one temperature, in the order a mechanic asks for them. */
export function figureEntries(answer: CheckAnswer, point: CheckPoint, units: UnitSystem): Entry[] {
  // Where nothing can pass, no gauge reads anything worth showing.
  if (point.reasons.some(({ code }) => code === "shut")) return [demandEntry(point, units), fuelEntry(point, units)];
  return [
    ...vacuumEntries(answer, point, units),
    ...feedEntries(answer, point, units),
    ...lowestEntries(point, units),
    demandEntry(point, units),
    ...ceilingEntries(answer, point, units),
    inHandEntry(answer, point),
    fuelEntry(point, units),
    ...(answer.limitSource === null ? [] : [{ name: "Limits from", value: "", note: answer.limitSource }]),
  ];
}

function feedEntries({ pump }: CheckAnswer, point: CheckPoint, units: UnitSystem): Entry[] {
  const { feedPressure, feedLimit, vacuum, vacuumNow } = point;
  if (feedPressure === null) return [];
  const least = quantity(feedLimit, "pressure", units);
  const note = feedLimit > 0 ? `at least ${least} ${sideWords(pump).feed}` : "any pressure at all will do";
  const value = bandText(feedPressure, "pressure", units);
  if (pump !== "none") return [{ name: "Feed pressure", value, note }];
  if (vacuumNow === null) return [{ name: "At the engine", value, note }];
  const clean = { low: -vacuum.high, middle: -vacuum.middle, high: -vacuum.low };
  return [
    { name: "At the engine, clean", value: bandText(clean, "pressure", units), note },
    { name: "At the engine, now", value, note: "with the soil the file states" },
  ];
}

function lowestEntries({ lowest, fuel, cautions }: CheckPoint, units: UnitSystem): Entry[] {
  if (lowest === null) return [];
  const margin = lowest.pressure.low - fuel.vapourPressure;
  const matters = margin < MARGIN_SHOWN || cautions.some(({ code }) => code === "low point in the path");
  if (!matters) return [];
  return [
    {
      name: "Lowest pressure",
      value: bandText(lowest.pressure, "absolute pressure", units),
      note: `absolute, behind ${lowest.part}; the fuel boils at ${quantity(fuel.vapourPressure, "absolute pressure", units)}`,
    },
  ];
}

function demandEntry({ demand, suctionFlow }: CheckPoint, units: UnitSystem): Entry {
  const flow = (value: number) => quantity(value, "flow", units);
  const back = demand.return > 0 ? `${flow(demand.burn)} burnt, ${flow(demand.return)} sent back` : "all burnt";
  const more = suctionFlow > demand.total ? `; the suction line carries ${flow(suctionFlow)}` : "";
  return { name: "Demand", value: flow(demand.total), note: `${back}${more}` };
}

function ceilingEntries(answer: CheckAnswer, { ceilings }: CheckPoint, units: UnitSystem): Entry[] {
  const one = (name: string, { flow, limit }: CheckPoint["ceilings"]["clean"]): Entry => ({
    name,
    value: flow.high === 0 ? "none" : bandText(flow, "flow", units),
    note: `${limitName(limit, answer.pump)} ${flow.high === 0 ? "is broken at any demand" : "binds"}`,
  });
  const { clean, atChange } = ceilings;
  const same = clean.limit === atChange.limit && clean.flow.middle === atChange.flow.middle;
  return same ? [one("Ceiling", atChange)] : [one("Ceiling, clean", clean), one("Ceiling, at change", atChange)];
}

function inHandEntry(answer: CheckAnswer, { inHand, binds }: CheckPoint): Entry {
  const name = limitName(binds, answer.pump);
  const end = inHand.high < 0 ? "" : "at the bad end ";
  const note = inHand.low < 0 ? `${end}short of the demand; ${name} binds` : `before ${name} binds`;
  return { name: "In hand", value: bandText(inHand, "ratio", "metric"), note };
}

function fuelEntry({ fuel }: CheckPoint, units: UnitSystem): Entry {
  const at = (value: number) => quantity(value, "temperature", units);
  const cloud = fuel.cloudPoint === null ? [] : [`cloud point ${at(fuel.cloudPoint)}`];
  const plugging = fuel.coldFilterPluggingPoint === null ? [] : [`CFPP ${at(fuel.coldFilterPluggingPoint)}`];
  const figures = [quantity(fuel.density, "density", units), ...cloud, ...plugging].join(", ");
  return {
    name: "Fuel",
    value: quantity(fuel.kinematicViscosity, "viscosity", units),
    note: `${fuel.name}, ${figures}`,
  };
}
