import { filtersAt, type LifeGiven, type LifeMoment, SupplyModel } from "@thirstline/core";
import type { ElementRow } from "./LifeAnswer.js";
import { restrictionsOf } from "./restrictionsOf.js";

/** Each element at the start and at the end of a life, with its drop at the duty point where the first limit is met. */
export function elementRows(given: LifeGiven, start: LifeMoment, end: LifeMoment, place: number): ElementRow[] {
  const point = given.points[place] as LifeGiven["points"][number];
  const model = new SupplyModel(given.supply, { fuel: point.fuel, passage: "smooth", end: given.end ?? "middle" });
  const clean = dropsAt(model, point.demand, new Map(given.elements.map(({ name }) => [name, 1])));
  const now = dropsAt(model, point.demand, restrictionsOf(given, end));
  const rise = (name: string) => Math.max(0, (now.get(name) ?? 0) - (clean.get(name) ?? 0));
  const all = given.elements.reduce((sum, { name }) => sum + rise(name), 0);
  return given.elements.map(({ name }, at) => ({
    name,
    soilAtStart: start.soil[at] ?? 0,
    soil: end.soil[at] ?? 0,
    water: end.water[at] ?? 0,
    restriction: end.restriction[at] ?? 1,
    dropClean: clean.get(name) ?? 0,
    drop: now.get(name) ?? 0,
    share: all > 0 ? rise(name) / all : 0,
  }));
}

function dropsAt(model: SupplyModel, demand: number, restrictions: ReadonlyMap<string, number>): Map<string, number> {
  model.restrict(restrictions);
  return new Map(filtersAt(model, demand).map(({ part, drop }) => [part.name ?? "", drop ?? 0]));
}
