import type { System, SystemPart } from "@thirstline/spec/system";
import { partsIn } from "../model/parts.js";

/** A name like the one given that no part of the system has: "prefilter A" gives "prefilter B", "line" gives "line 2". */
export function freshName(taken: ReadonlySet<string>, like: string): string {
  if (!taken.has(like)) return like;
  const lettered = /^(.*\s)([A-Y])$/.exec(like);
  if (lettered) {
    const [, stem = "", letter = "A"] = lettered;
    for (let code = letter.charCodeAt(0) + 1; code <= 90; code++) {
      const name = stem + String.fromCharCode(code);
      if (!taken.has(name)) return name;
    }
  }
  const stem = like.replace(/\s\d+$/, "");
  let number = 2;
  while (taken.has(`${stem} ${number}`)) number += 1;
  return `${stem} ${number}`;
}

/** Every name in use. */
export function namesIn(system: System): Set<string> {
  return new Set(partsIn(system).map(({ name }) => name));
}

/** Copies of parts under names that no part of the system has. */
export function copies(system: System, parts: readonly SystemPart[]): SystemPart[] {
  const taken = namesIn(system);
  const copy = (part: SystemPart): SystemPart => {
    if (part.part === "bank") return { ...part, branches: part.branches.map((branch) => branch.map(copy)) };
    const name = freshName(taken, part.name);
    taken.add(name);
    return { ...part, name };
  };
  return parts.map(copy);
}
