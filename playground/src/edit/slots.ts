import type { System, SystemPart } from "@thirstline/spec/system";
import type { Place } from "../model/Place.js";
import { canRemove } from "./edits.js";
import { indexOf, listAt, partAt } from "./lists.js";

/** A place a part may be moved to: before what stands there, with where that is in words. */
export interface Slot {
  readonly place: Place;
  readonly words: string;
}

/**
 * Where a part may be moved to, in the order the fuel goes: anywhere on the path, and into branches unless it is a bank or
 * a rise, which a single branch cannot have. None where it may not leave, or is at home already.
 */
export function slotsFor(system: System, from: Place): Slot[] {
  const part = partAt(system, from);
  if (part === undefined) return [];
  const leaves = canRemove(system, from);
  return allSlots(system, part).filter(({ place }) => {
    const home = sameList(place, from);
    const stays = home && (indexOf(place) === indexOf(from) || indexOf(place) === indexOf(from) + 1);
    return !stays && (home || leaves) && !isInside(place, from);
  });
}

/** Whether two places stand in one list. */
function sameList(a: Place, b: Place): boolean {
  const bank = a.branch === undefined || a.at === b.at;
  return a.side === b.side && a.tank === b.tank && a.branch === b.branch && bank;
}

function isInside(place: Place, { side, tank, at, branch }: Place): boolean {
  return (
    branch === undefined && place.branch !== undefined && place.side === side && place.tank === tank && place.at === at
  );
}

function allSlots(system: System, part: SystemPart): Slot[] {
  const several = system.tanks.length > 1;
  const own = several
    ? system.tanks.flatMap(({ name }, tank) => alongList(system, part, { side: "tank", tank, at: 0 }, `from ${name}`))
    : [];
  const joint = several ? "behind the joint" : `behind ${system.tanks[0]?.name ?? "the tank"}`;
  const delivery =
    system.pump.kind === "none" ? [] : alongList(system, part, { side: "delivery", at: 0 }, "behind the pump");
  return [...own, ...alongList(system, part, { side: "suction", at: 0 }, joint), ...delivery];
}

/** Slots along a side, those inside its banks where they stand. */
function alongList(system: System, part: SystemPart, start: Place, first: string): Slot[] {
  const list = listAt(system, start);
  const branches = (bank: SystemPart, at: number): Slot[] => {
    if (bank.part !== "bank" || part.part === "bank" || part.part === "rise") return [];
    return bank.branches.flatMap((branch, lane) =>
      Array.from({ length: branch.length + 1 }, (_, inner) => ({
        place: { ...start, at, branch: lane, inner },
        words: `in branch ${lane + 1}, ${inner === 0 ? "first" : `behind ${branch[inner - 1]?.name ?? ""}`}`,
      })),
    );
  };
  const behind = (at: number): string => {
    const before = list[at - 1];
    return before === undefined
      ? first
      : `behind ${before.part === "bank" ? `the ${before.branches.length} in parallel` : before.name}`;
  };
  return Array.from({ length: list.length + 1 }, (_, at) => at).flatMap((at) => {
    const here = { place: { ...start, at }, words: behind(at) };
    const bank = list[at];
    return bank === undefined ? [here] : [here, ...branches(bank, at)];
  });
}
