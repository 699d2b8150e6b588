import type { PartRow } from "./CheckAnswer.js";

/** What costs, by name, and its share of all that costs on its side of the pump, 0 to 1. */
export interface Cost {
  readonly name: string;
  readonly share: number;
}

/** All that costs on the main path, largest first; a bank by the parts in it that make up most of its drop. */
export function costsInOrder(rows: readonly PartRow[]): Cost[] {
  const costs = rows.flatMap((row, place): Cost[] => {
    if (row.depth > 0 || row.share === 0) return [];
    return [{ name: row.kind === "bank" ? insideOf(rows, place) : row.name, share: row.share }];
  });
  return costs.sort((a, b) => b.share - a.share);
}

/** The names of the parts in a bank that make up at least half of its drop, in order. */
function insideOf(rows: readonly PartRow[], place: number): string {
  const bank = rows[place] as PartRow;
  const after = rows.slice(place + 1);
  const end = after.findIndex((row) => row.depth <= bank.depth);
  const inside = (end === -1 ? after : after.slice(0, end)).filter((row) => row.kind !== "bank");
  const names = inside.filter((row) => (row.drop ?? 0) >= (bank.drop ?? 0) / 2).map((row) => row.name);
  return names.length > 0 ? joined(names) : bank.name;
}

function joined(names: readonly string[]): string {
  return names.length < 2 ? names.join() : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
