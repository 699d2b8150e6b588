import type { System, SystemPart } from "@thirstline/spec/system";
import type { PartPath, Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { fromFile } from "../worked.js";

/** The climbs on the way to a part, and whether it is in the row at all; else all climbs of the row. */
export function risesBefore(
  system: System,
  place: PartPath,
  parts: readonly SystemPart[],
  name: string,
): { readonly found: boolean; readonly rises: readonly Step[] } {
  const rises: Step[] = [];
  for (const [at, part] of parts.entries()) {
    const path = [...place, at];
    if (part.name === name && part.part !== "bank") return { found: true, rises };
    if (part.part === "rise") {
      const plain = { name: `climb of ${part.name}`, value: part.height, unit: "m", kind: "length" } as const;
      rises.push(fromFile(`${filePlace(system, path)}.height`, plain));
    }
    if (part.part !== "bank") continue;
    const ways = part.branches.map((branch, side) => risesBefore(system, [...path, "branches", side], branch, name));
    const own = ways.find(({ found }) => found);
    if (own) return { found: true, rises: [...rises, ...own.rises] };
    // The branches of a bank climb alike.
    rises.push(...(ways[0]?.rises ?? []));
  }
  return { found: false, rises };
}
