import { shown } from "../shown.js";
import type { TableForm } from "../table/readTable.js";
import { yardBounds } from "./logBounds.js";
import { readYard, type YardResult } from "./readYard.js";
import type { ShelfPart } from "./YardMachine.js";

type ShelfColumn = "part" | "element" | "system" | "on hand" | "delivery";

const form: TableForm<ShelfColumn> = {
  what: "a list of parts",
  columns: { part: "text", element: "text", system: "text", "on hand": "text", delivery: "calendar" },
  needed: ["part", "element"],
  synonyms: { name: "part", stock: "on hand", count: "on hand", "delivery time": "delivery", file: "system" },
  bounds: yardBounds,
};

/**
 * Reads a yard's shelf: a table (CSV) of part, the element it replaces, the system file that has it, how many are on hand
 * and how long a new one takes to come. A part that fits several places has a row for each, and its count in one of them.
 *
 * @param given the file's text, or its bytes, which must be UTF-8
 * @returns good rows in SI, and the faults of the others, each with line and column; it never throws
 * @example
 * readShelf("part,element,system,on hand,delivery (day)\nelement P25,prefilter A,heron.yaml,2,14\n", { file })
 */
export function readShelf(given: string | Uint8Array, { file }: { readonly file: string }): YardResult<ShelfPart> {
  const taken = new Set<string>();
  const counted = new Set<string>();
  return readYard(given, file, form, (row, cells) => {
    const [part, element, system] = [cells.text(row, "part"), cells.text(row, "element"), cells.text(row, "system")];
    const count = cells.text(row, "on hand");
    const delivery = cells.quantity(row, "delivery");
    if (part === "") cells.fault(row, "part", "missing", "missing; give the part a name");
    if (element === "") cells.fault(row, "element", "missing", "missing; name the element it replaces");
    const place = JSON.stringify([element, system]);
    if (taken.has(place)) {
      const message = `${shown(element)} of ${system === "" ? "any system" : system} has a part above already; keep one of the two`;
      cells.fault(row, "element", "two parts", message);
    }
    taken.add(place);
    if (count !== "" && !/^\d{1,6}$/.test(count)) {
      cells.fault(row, "on hand", "not a count", `${shown(count)} is not a count; write a whole number such as 2`);
    }
    if (count !== "" && counted.has(part)) {
      const message = `how many of ${shown(part)} are on hand stands above already; leave this cell empty`;
      cells.fault(row, "on hand", "counted twice", message);
    }
    if (count !== "") counted.add(part);
    return {
      part,
      element,
      system: system === "" ? null : system,
      onHand: count === "" ? null : Number(count),
      delivery: delivery ?? null,
    };
  });
}
