import type { System, SystemBank, SystemPart } from "@thirstline/spec/system";
import type { Place } from "../model/Place.js";
import { indexOf, listAt, partAt, withList, withSide } from "./lists.js";
import { copies } from "./names.js";

// Changes to the path. Each takes a system and a place in it and gives a new system; where the place holds nothing that
// can be changed so, the same system comes back.

export function setPart(system: System, place: Place, part: SystemPart): System {
  return withList(system, place, (parts) => parts.map((one, at) => (at === indexOf(place) ? part : one)));
}

/** Puts a part in before what stands at the place. */
export function insertPart(system: System, place: Place, part: SystemPart): System {
  const at = indexOf(place);
  return withList(system, place, (parts) => [...parts.slice(0, at), part, ...parts.slice(at)]);
}

/** Takes a part out; a branch left empty goes with it, and a bank left with one branch becomes that branch. */
export function removePart(system: System, place: Place): System {
  const rest = (parts: readonly SystemPart[]) => parts.filter((_, at) => at !== indexOf(place));
  if (place.branch === undefined || listAt(system, place).length > 1) return withList(system, place, rest);
  return removeBranch(system, place, place.branch);
}

/** Whether a part may be taken out: the suction side and a tank's own path need one part at least. */
export function canRemove(system: System, place: Place): boolean {
  return place.branch !== undefined || place.side === "delivery" || listAt(system, place).length > 1;
}

/** Moves a part along its list by so many places. */
export function movePart(system: System, place: Place, by: number): System {
  const from = indexOf(place);
  const to = from + by;
  const parts = listAt(system, place);
  const part = parts[from];
  if (part === undefined || to < 0 || to >= parts.length) return system;
  return withList(system, place, () => {
    const rest = parts.filter((_, at) => at !== from);
    return [...rest.slice(0, to), part, ...rest.slice(to)];
  });
}

/** The place a part moved so stands at afterwards. */
export function movedPlace(place: Place, by: number): Place {
  return place.inner === undefined ? { ...place, at: place.at + by } : { ...place, inner: place.inner + by };
}

/** Puts a copy behind a part, under a name of its own. */
export function duplicatePart(system: System, place: Place): System {
  const part = partAt(system, place);
  if (part === undefined) return system;
  const [copy] = copies(system, [part]);
  return copy === undefined ? system : insertPart(system, movedPlace(place, 1), copy);
}

/** Makes a bank of a part and a copy of it, side by side. */
export function branchHere(system: System, place: Place): System {
  const part = partAt(system, place);
  if (part === undefined || !canBranch(part, place)) return system;
  return setPart(system, place, { part: "bank", name: "bank", branches: [[part], copies(system, [part])] });
}

/** Whether a part can stand in a bank of its own: not inside one, and not a rise, which nothing would hold back. */
export function canBranch(part: SystemPart, place: Place): boolean {
  return place.branch === undefined && part.part !== "bank" && part.part !== "rise";
}

/** One more branch, like the last. */
export function addBranch(system: System, place: Place): System {
  return withBank(system, place, (bank) => {
    const last = bank.branches.at(-1) ?? [];
    return [{ ...bank, branches: [...bank.branches, copies(system, last)] }];
  });
}

/** The first branch in place of its bank. */
export function unbranch(system: System, place: Place): System {
  return withBank(system, place, (bank) => bank.branches[0] ?? []);
}

function removeBranch(system: System, place: Place, branch: number): System {
  return withBank(system, place, (bank) => {
    const branches = bank.branches.filter((_, at) => at !== branch);
    return branches.length === 1 ? (branches[0] ?? []) : [{ ...bank, branches }];
  });
}

function withBank(system: System, place: Place, change: (bank: SystemBank) => readonly SystemPart[]): System {
  return withSide(system, place, (side) =>
    side.flatMap((part, at) => (at === place.at && part.part === "bank" ? change(part) : [part])),
  );
}
