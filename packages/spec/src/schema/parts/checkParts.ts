import type { Report } from "../also.js";
import { type Paths, placedParts } from "./placedParts.js";

/** Most parts in a system, banks and their branches counted through. */
const mostParts = 200;

/** Faults a system of too many parts, and filters that share a name, so that a name always means one element. */
export function checkParts(data: Paths, report: Report): void {
  const all = placedParts(data);
  const names = new Set<string>();
  for (const { part, at } of all) {
    const name = part.filter?.name;
    if (name === undefined || name === "") continue;
    if (names.has(name)) {
      report(
        [...at, "filter", "name"],
        "same name",
        `another filter is called "${name}" already; give each its own name`,
      );
    }
    names.add(name);
  }
  if (all.length > mostParts)
    report([], "too many parts", `${all.length} parts; a system file holds at most ${mostParts}`);
}
