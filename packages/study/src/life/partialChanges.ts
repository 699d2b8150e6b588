import { life as followLife, type Life, type LifeGiven, type LifeMoment, SupplyModel } from "@thirstline/core";
import type { System, SystemPart } from "@thirstline/spec/system";
import { filterFlows } from "../check/filterFlows.js";
import type { FlowShare, PartialChange } from "./LifeAnswer.js";
import { restrictionsOf } from "./restrictionsOf.js";

/** What follows when, at the end, one element alone is changed and the others stay as they are. */
export function partialChanges(system: System, given: LifeGiven, end: NonNullable<Life["end"]>): PartialChange[] {
  if (given.elements.length < 2) return [];
  const banks = banksOf(system);
  return given.elements.map(({ name }, changed) => {
    const elements = given.elements.map((element, at) => ({
      ...element,
      soil: at === changed ? 0 : (end.soil[at] ?? 0),
      water: at === changed ? 0 : (end.water[at] ?? 0),
    }));
    const { dirty: _, ...rest } = given;
    const next = followLife({ ...rest, elements });
    const bank = banks.find((members) => members.includes(name)) ?? [];
    const shares = bank.length > 1 ? sharesOf(bank, given, end.point, end, next.moments[0] as LifeMoment) : [];
    return { element: name, time: next.end?.time ?? null, shares };
  });
}

/** How the flow of a bank splits before and after, at the worst point; nothing where none passes it. */
function sharesOf(
  bank: readonly string[],
  given: LifeGiven,
  place: number,
  before: LifeMoment,
  after: LifeMoment,
): FlowShare[] {
  const point = given.points[place] as LifeGiven["points"][number];
  const model = new SupplyModel(given.supply, { fuel: point.fuel, passage: "smooth", end: given.end ?? "middle" });
  const split = (moment: LifeMoment) => {
    model.restrict(restrictionsOf(given, moment));
    const flows = filterFlows(model, point.demand);
    const all = bank.reduce((sum, name) => sum + (flows.get(name) ?? 0), 0);
    return all === 0 ? null : (name: string) => (flows.get(name) ?? 0) / all;
  };
  const [first, second] = [split(before), split(after)];
  if (!first || !second) return [];
  return bank.map((element) => ({ element, before: first(element), after: second(element) }));
}

/** The filters of every bank whose branches hold one each. */
function banksOf(system: System): string[][] {
  const inside = (parts: readonly SystemPart[]): string[][] =>
    parts.flatMap((part) => {
      if (part.part !== "bank") return [];
      const own = part.branches.map((branch) =>
        branch.flatMap((one) => (one.part === "filter" && !one.blocked ? [one.name] : [])),
      );
      const open = own.filter((names) => names.length > 0);
      return [...(open.every((names) => names.length === 1) ? [open.flat()] : []), ...part.branches.flatMap(inside)];
    });
  return [...system.tanks.map((tank) => tank.path), system.suction, system.delivery ?? []].flatMap(inside);
}
