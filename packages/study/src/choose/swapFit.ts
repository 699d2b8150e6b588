import { fuelState, SupplyModel } from "@thirstline/core";
import { build, type SystemFilter, type SystemPart } from "@thirstline/spec/system";
import { demandAt } from "../check/demandAt.js";
import { filterFlows } from "../check/filterFlows.js";
import { supplyOf } from "../check/supplyOf.js";
import { placesOf } from "./places.js";
import type { SwapReason } from "./SwapAnswer.js";
import type { SwapFacts } from "./SwapFacts.js";

/** Whether the other element can be put there, and what changes for what stands around it. */
export function fitReasons(facts: SwapFacts): SwapReason[] {
  return [
    ...shapeReasons(facts),
    ...flowThrough(facts),
    ...waterReasons(facts),
    ...neighbours(facts),
    ...facts.filters.flatMap(({ name, reversed }): SwapReason[] =>
      reversed ? [{ weight: "note", code: "was backwards", place: name }] : [],
    ),
  ];
}

/** The file's word on a place comes before what a catalogue says of the element in it; each place is compared. */
function shapeReasons({ filters, fitted, other }: SwapFacts): SwapReason[] {
  const of = <Key extends "style" | "thread" | "direction">(key: Key) =>
    filters.map((filter) => filter[key] ?? fitted?.filter[key]);
  const { style, thread, direction } = other.filter;
  const reasons: SwapReason[] = [];
  const build = of("style").find((own) => own !== undefined && style !== undefined && own !== style);
  if (build !== undefined && style !== undefined) {
    reasons.push({ weight: "no", code: "style", fitted: build, other: style });
  }
  const threads = of("thread");
  const misfit = threads.find(
    (own) => own !== undefined && thread !== undefined && plainThread(own) !== plainThread(thread),
  );
  if (misfit !== undefined && thread !== undefined) {
    reasons.push({ weight: "no", code: "thread", fitted: misfit, other: thread });
  } else if (thread === undefined || threads.includes(undefined)) {
    reasons.push({ weight: "note", code: "thread not known", other: thread ?? null });
  } else {
    reasons.push({ weight: "note", code: "thread kept", thread });
  }
  const way = of("direction").find((own) => own !== undefined && direction !== undefined && own !== direction);
  if (way !== undefined && direction !== undefined) {
    reasons.push({ weight: "no", code: "direction", fitted: way, other: direction });
  }
  return reasons;
}

/** A thread without what two hands write differently. */
function plainThread(text: string): string {
  return text
    .toLowerCase()
    .replace(/×/g, "x")
    .replace(/[\s-]+/g, "");
}

/** Whether the other element lets through what its place carries, at the most that is asked of it. */
function flowThrough({ changed, at, other, temperatures }: SwapFacts): SwapReason[] {
  const { mostFlow } = other;
  if (mostFlow === undefined) return [];
  const built = build(changed);
  const through = new Map<string, number>();
  for (const temperature of temperatures) {
    const fuel = fuelState(built.fuel, { temperature });
    const model = new SupplyModel(supplyOf(built), { fuel, passage: "smooth", end: "middle" });
    const flows = filterFlows(model, demandAt(built, fuel, null).total);
    for (const name of at) through.set(name, Math.max(through.get(name) ?? 0, flows.get(name) ?? 0));
  }
  const [place, flow] = [...through].reduce((most, one) => (one[1] > most[1] ? one : most), ["", 0] as [
    string,
    number,
  ]);
  return flow > mostFlow ? [{ weight: "no", code: "too much flow", place, flow, most: mostFlow }] : [];
}

function waterReasons({ filters, other }: SwapFacts): SwapReason[] {
  const fitted = Math.max(0, ...filters.map(({ separation }) => separation?.efficiency ?? 0));
  const own = other.filter.separation?.efficiency ?? null;
  return fitted > 0 && (own ?? 0) < fitted ? [{ weight: "care", code: "less water", fitted, other: own }] : [];
}

/** Elements beside the swapped ones in a bank: fuel takes the easier way, whichever that is. */
function neighbours({ system, at, fineness }: SwapFacts): SwapReason[] {
  if (fineness === "same") return [];
  return placesOf(system).flatMap(({ part }): SwapReason[] => {
    if (part.part !== "bank") return [];
    const inside = part.branches.flatMap((branch) => branch.filter(isFilter));
    const place = inside.find(({ name }) => at.includes(name));
    const neighbour = inside.find(({ name, blocked }) => !at.includes(name) && !blocked);
    if (!place || !neighbour) return [];
    return [{ weight: "care", code: "neighbour stays", place: place.name, neighbour: neighbour.name }];
  });
}

function isFilter(part: SystemPart): part is SystemFilter {
  return part.part === "filter";
}
