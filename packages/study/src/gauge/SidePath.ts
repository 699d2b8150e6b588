import { CatchBalance, loadAtRatio, resistanceRatio, SupplyModel } from "@thirstline/core";
import type { LifeFacts } from "../life/factsOf.js";
import { MOST } from "./shapes.js";

/** How the elements of one side fill together: all their resistances, by that of the one which goes first. */
export interface SidePath {
  readonly names: readonly string[];
  /** the element that goes first */
  readonly lead: string;
  /** by what `life` predicts, or equal soil per area, since it predicts nothing */
  readonly by: "life" | "equal soil";
  /** resistance over clean of the lead at the start, as stated */
  readonly begun: number;
  /** resistance over clean of every element when that of the lead is `ratio` */
  readonly at: (ratio: number) => ReadonlyMap<string, number>;
  /** how each element fills; null where all are taken to grow alike */
  readonly growing: readonly Growing[] | null;
}

/**
 * The path of one side's elements.
 *
 * Soil comes in the proportions that `life` predicts for clean elements; how flows split anew as unequal branches foul is
 * left out, which hardly moves the proportions. Where `life` cannot say of one of them, all are taken to grow alike.
 *
 * @param names elements of the side that are not shut
 * @param stated resistance over clean at the start, by name; of those left out it is 1
 */
export function sidePath(
  names: readonly string[],
  facts: LifeFacts | null,
  stated: ReadonlyMap<string, number>,
): SidePath {
  const growing = facts === null ? null : growingOf(names, facts, stated);
  const [first = ""] = names;
  if (growing === null) {
    return {
      names,
      lead: first,
      by: "equal soil",
      begun: Math.max(1, ...names.map((name) => stated.get(name) ?? 1)),
      growing,
      at: (ratio) => new Map(names.map((name) => [name, ratio])),
    };
  }
  const lead = growing.reduce((soonest, one) => (timeTo(4, one) < timeTo(4, soonest) ? one : soonest));
  return {
    names,
    lead: lead.name,
    by: "life",
    begun: stated.get(lead.name) ?? 1,
    growing,
    at: (ratio) => {
      const time = timeTo(ratio, lead);
      return new Map(growing.map((one) => [one.name, one === lead ? ratio : ratioAfter(time, one)]));
    },
  };
}

type Law = NonNullable<LifeFacts["elements"]["elements"][number]["law"]>;

/** How an element of a side fills. */
export interface Growing {
  readonly name: string;
  readonly law: Law;
  /** kg in a year of duty, all clean */
  readonly rate: number;
  /** kg, at the start */
  readonly soil: number;
}

function timeTo(ratio: number, { law, rate, soil }: Growing): number {
  return (loadAtRatio(law, Math.max(1, ratio)) - soil) / rate;
}

function ratioAfter(time: number, { law, rate, soil }: Growing): number {
  return Math.min(MOST, resistanceRatio(law, Math.max(0, soil + rate * time)));
}

function growingOf(
  names: readonly string[],
  { given, elements }: LifeFacts,
  stated: ReadonlyMap<string, number>,
): Growing[] | null {
  const rates = ratesOf(given);
  const growing = names.flatMap((name): Growing[] => {
    const element = elements.elements.find((one) => one.name === name);
    const rate = rates.get(name) ?? 0;
    if (!element?.law || !element.efficiency || !(rate > 0)) return [];
    return [{ name, law: element.law, rate, soil: loadAtRatio(element.law, stated.get(name) ?? 1) }];
  });
  return growing.length === names.length && names.length > 0 ? growing : null;
}

/** What each element catches on the mean of the year's duty, kg/s, all clean. */
function ratesOf({ supply, elements, phases, delivered, held, end }: LifeFacts["given"]): Map<string, number> {
  const efficiencies = new Map(
    elements.flatMap(({ name, efficiency }) => (efficiency ? [[name, efficiency] as const] : [])),
  );
  const rates = new Map<string, number>();
  const balance = new CatchBalance(delivered, efficiencies, held);
  for (const { fuel, loads, duration } of phases) {
    const model = new SupplyModel(supply, { fuel, passage: "smooth", end: end ?? "middle" });
    model.restrict(new Map(elements.map(({ name }) => [name, 1])));
    for (const { share, demand } of loads) {
      balance.update(model, demand);
      for (const { name } of elements) rates.set(name, (rates.get(name) ?? 0) + duration * share * balance.rate(name));
    }
  }
  return rates;
}
