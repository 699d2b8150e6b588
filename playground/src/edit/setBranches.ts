import type { System, SystemBank, SystemPart } from "@thirstline/spec/system";
import type { Chosen, Place } from "../model/Place.js";
import { addBranch, branchHere, canBranch, unbranch } from "./edits.js";
import { listAt, partAt, withList } from "./lists.js";

/** Most branches that are drawn apart. */
export const MOST_BRANCHES = 12;

/** A part or bank whose branches are counted. */
export interface Branched {
  readonly place: Place;
  readonly part: SystemPart;
  readonly count: number;
}

/** The bank, or the part that can be made one: that is chosen, else the first bank, else the first filter. */
export function branchedIn(system: System, chosen: Chosen | null): Branched | null {
  const wanted = chosen?.kind === "part" ? branchedAt(system, outerOf(chosen.place)) : null;
  if (wanted) return wanted;
  const sides = ["suction", "delivery"] as const;
  const all = sides.flatMap((side) =>
    listAt(system, { side, at: 0 }).flatMap((_, at) => branchedAt(system, { side, at }) ?? []),
  );
  return all.find(({ part }) => part.part === "bank") ?? all.find(({ part }) => part.part === "filter") ?? null;
}

/** The system with so many branches side by side at a place; one is no bank any more. */
export function setBranches(system: System, place: Place, count: number): System {
  let now = system;
  if (count <= 1) return branchedAt(now, place)?.part.part === "bank" ? unbranch(now, place) : now;
  if (partAt(now, place)?.part !== "bank") now = branchHere(now, place);
  for (let have = countAt(now, place); have > 0 && have < count; have++) now = addBranch(now, place);
  if (countAt(now, place) <= count) return now;
  const short = (bank: SystemBank): SystemBank => ({ ...bank, branches: bank.branches.slice(0, count) });
  return withList(now, place, (parts) =>
    parts.map((part, at) => (at === place.at && part.part === "bank" ? short(part) : part)),
  );
}

function countAt(system: System, place: Place): number {
  return branchedAt(system, place)?.count ?? 0;
}

function branchedAt(system: System, place: Place): Branched | null {
  const part = partAt(system, place);
  if (part === undefined) return null;
  if (part.part === "bank") return { place, part, count: part.branches.length };
  return canBranch(part, place) ? { place, part, count: 1 } : null;
}

/** The place on the path of what stands inside a bank. */
function outerOf({ branch: _, inner: __, ...outer }: Place): Place {
  return outer;
}
