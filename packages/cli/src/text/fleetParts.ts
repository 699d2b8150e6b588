import type { FleetAnswer, FleetPart } from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { type Column, tableLines } from "./table.js";
import { cut, wrap } from "./wrap.js";

/** Parts that fall due in the days looked ahead, with what is on the shelf. */
export function fleetParts({ parts, entries, within, on }: FleetAnswer, paint: Paint): string[] {
  if (parts.length === 0) return [];
  const column = (name: string, align: Column["align"], cell: (part: FleetPart) => string): Column => ({
    name,
    unit: "",
    cells: parts.map(cell),
    align,
  });
  const order = ({ orderBy }: FleetPart) => (orderBy === null ? "" : orderBy <= on ? "today" : orderBy);
  const lines = tableLines([
    column("part", "left", ({ part }) => cut(part, 28)),
    column("style", "left", ({ style }) => style ?? ""),
    column("need", "right", ({ count }) => String(count)),
    column("on hand", "right", ({ onHand }) => (onHand === null ? "?" : String(onHand))),
    column("short", "right", ({ short }) => String(short)),
    column("first", "left", ({ first }) => first),
    column("order by", "left", order),
  ]);
  const unknown = entries.filter(({ group }) => group === "cannot say").length;
  const left = unknown === 0 ? [] : wrap(`Not counted: ${unknown} of which nothing can be said.`, "", 78);
  return [paint("strong", `Parts for ${within} days`), ...lines, ...left.map((line) => `  ${line}`)];
}
