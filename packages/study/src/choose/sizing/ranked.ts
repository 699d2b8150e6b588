import { life as followLife } from "@thirstline/core";
import type { CatalogueElement, System } from "@thirstline/spec/system";
import { factsOf } from "../../life/factsOf.js";
import { paretoOf } from "./pareto.js";
import type { Found } from "./SearchKinds.js";
import type { Arrangement, SizeAnswer } from "./SizeAnswer.js";
import type { SizeOptions } from "./SizeOptions.js";
import { arranged, type Stack } from "./stack.js";

const HOUR = 3600;

/** What a ranking goes by. */
export interface Ranking {
  readonly stack: Stack;
  readonly elements: readonly CatalogueElement[];
  readonly system: System;
  readonly interval: number;
  readonly options: SizeOptions;
  readonly keep: number;
}

/** What is found with what it costs, ranked three ways; the best of each, and all that nothing beats. */
export function rankedOf(found: readonly Found[], ranking: Ranking): Pick<SizeAnswer, "best" | "arrangements"> {
  const { elements, keep } = ranking;
  const changes = changesAYear(ranking);
  const setCosts = elements.map((element) => costOf(element, ranking.options.labourRate));
  const rows = found.map((one) => {
    const count = one.counts.reduce((sum, own) => sum + own, 0);
    const cost = one.elements.reduce((sum, own, at) => sum + (setCosts[own] as number) * (one.counts[at] as number), 0);
    return { one, count, cost: Number.isNaN(cost) ? Infinity : cost * changes, vacuum: one.vacuum };
  });
  const pareto = paretoOf(rows.map(({ cost, vacuum, count }) => ({ cost, vacuum, elements: count })));
  const by = (...order: ("cost" | "vacuum" | "count")[]) =>
    rows
      .map((_, at) => at)
      .sort((a, b) => {
        for (const key of order) {
          const [left, right] = [rows[a]?.[key] ?? 0, rows[b]?.[key] ?? 0];
          if (left !== right) return left < right ? -1 : 1;
        }
        return a - b;
      });
  const orders = [by("cost", "vacuum", "count"), by("vacuum", "cost", "count"), by("count", "cost", "vacuum")];
  const kept = new Set(orders.flatMap((order) => order.slice(0, keep)));
  pareto.forEach((is, at) => {
    if (is) kept.add(at);
  });
  const listed = (orders[0] as number[]).filter((at) => kept.has(at));
  const firsts = orders.map(([first]) => first);
  const arrangements = listed.map((at): Arrangement => {
    const { one, count, cost, vacuum } = rows[at] as (typeof rows)[number];
    const stages = one.elements.map((element, place) => ({
      element: (elements[element] as CatalogueElement).name,
      count: one.counts[place] as number,
    }));
    return {
      stages,
      bore: one.bore,
      elements: count,
      changesAYear: count * changes,
      yearlyCost: cost === Infinity ? null : cost,
      vacuum,
      code: one.code,
      pareto: pareto[at] ?? false,
      ...(firsts.includes(at) ? { life: lifeOf(ranking, one) } : {}),
    };
  });
  const [cost, vacuum, fewest] = firsts.map((at) => (at === undefined ? null : listed.indexOf(at)));
  const priced = arrangements[cost ?? -1]?.yearlyCost !== null;
  return {
    best: { cost: priced ? (cost ?? null) : null, vacuum: vacuum ?? null, changes: fewest ?? null },
    arrangements,
  };
}

/** One element with its work; NaN where its price is not known. */
function costOf({ price, labour }: CatalogueElement, rate: number | undefined): number {
  return (price ?? Number.NaN) + (rate === undefined || labour === undefined ? 0 : (labour / HOUR) * rate);
}

/** How often all are changed in a year of duty: at the interval, or by distance or calendar where that comes first. */
function changesAYear({ system, interval }: Ranking): number {
  const { duty, service } = system;
  const year = (duty?.hoursADay ?? 0) * (duty?.daysAYear ?? 0) * HOUR;
  const distance = service?.distance && duty?.distance ? duty.distance / service.distance : 0;
  const calendar = service?.calendar ? (365.25 * 24 * HOUR) / service.calendar : 0;
  return Math.max(year / interval, distance, calendar);
}

function lifeOf({ stack, elements }: Ranking, found: Found): number | null {
  const stages = found.elements.map((one, at) => ({
    element: elements[one] as CatalogueElement,
    count: found.counts[at] as number,
  }));
  const facts = factsOf(arranged(stack, { stages, bore: found.bore }));
  return "given" in facts ? (followLife(facts.given).end?.time ?? null) : null;
}
