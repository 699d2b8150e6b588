import type { System } from "@thirstline/spec/system";
import { exactQuantity, type UnitSystem } from "@thirstline/study";
import { ratedSize } from "./ratedSize.js";
import { type SheetFilter, triedIn } from "./Tried.js";

/** What is assumed of a system's filters, one sentence without its full stop for each kind; empty where nothing is. */
export function assumedWords(system: System, units: UnitSystem): string[] {
  const kinds = new Map<string, string[]>();
  for (const filter of triedIn(system)) {
    const words = kindWords(filter, units);
    kinds.set(words, [...(kinds.get(words) ?? []), filter.name]);
  }
  return [...kinds].map(([words, names]) => `${listed(names)} at ${words}`);
}

function kindWords(filter: SheetFilter, units: UnitSystem): string {
  const size = (value: number) => exactQuantity(value, "particle size", units);
  const basis = filter.medium.by === "flow test" ? "flow test" : "figures";
  return `${size(ratedSize(filter) ?? 0)}, scaled from its ${basis} at ${size(filter.tried?.size ?? 0)} by the square of the size`;
}

/** "A", "A and B", "A, B and C". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
