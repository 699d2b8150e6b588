import type { PartRow } from "../check/CheckAnswer.js";

/** What a row of the path is called; a tank's row is the fuel over its pick-up, and its vent, at the low level. */
export function partWords(row: Pick<PartRow, "name" | "kind">): string {
  return row.kind === "tank" ? `${row.name}, low level` : row.name;
}
