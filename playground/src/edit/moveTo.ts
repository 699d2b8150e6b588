import type { System, SystemPart } from "@thirstline/spec/system";
import type { Place } from "../model/Place.js";
import { insertPart, removePart } from "./edits.js";
import { partAt } from "./lists.js";

/** A system after a move, and where the part stands then. */
export interface Moved {
  readonly system: System;
  readonly place: Place;
}

/**
 * Moves a part to before what stands at another place, from one list to another too. A branch it leaves empty goes, and a
 * bank left with one branch becomes that branch; `place` is where the part is after all that.
 */
export function moveTo(system: System, from: Place, to: Place): Moved {
  const part = partAt(system, from);
  if (part === undefined) return { system, place: from };
  const copy = { ...part };
  const both = insertPart(system, to, copy);
  const left = placeOf(both, part);
  const moved = left === null ? both : removePart(both, left);
  return { system: moved, place: placeOf(moved, copy) ?? to };
}

/** Where a very part stands; null for one that is not of the system. */
function placeOf(system: System, part: SystemPart): Place | null {
  const sides: { readonly parts: readonly SystemPart[]; readonly start: Omit<Place, "at"> }[] = [
    ...system.tanks.map(({ path }, tank) => ({ parts: path, start: { side: "tank" as const, tank } })),
    { parts: system.suction, start: { side: "suction" } },
    { parts: system.delivery ?? [], start: { side: "delivery" } },
  ];
  for (const { parts, start } of sides) {
    for (const [at, one] of parts.entries()) {
      if (one === part) return { ...start, at };
      if (one.part !== "bank") continue;
      for (const [branch, inside] of one.branches.entries()) {
        const inner = inside.indexOf(part);
        if (inner !== -1) return { ...start, at, branch, inner };
      }
    }
  }
  return null;
}
