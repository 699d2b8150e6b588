import { figure, type UnitSystem, unitOf } from "@thirstline/study";
import { type Column, numbers } from "./table.js";

/** What elements cost in pressure: clean, and as they are at some time, which is named over the second column. */
export function costColumns(
  elements: readonly { readonly dropClean: number; readonly drop: number }[],
  when: "now" | "then",
  units: UnitSystem,
): Column[] {
  const { symbol } = unitOf("pressure", units);
  const column = (name: string, drops: readonly number[]) =>
    numbers(
      "costs",
      `${name} ${symbol}`,
      drops.map((drop) => figure(drop, "pressure", units)),
    );
  return [
    column(
      "clean",
      elements.map(({ dropClean }) => dropClean),
    ),
    column(
      when,
      elements.map(({ drop }) => drop),
    ),
  ];
}
