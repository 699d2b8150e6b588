import type { Paint } from "../io/paint.js";
import { left, right, WIDTH, widthOf } from "./wrap.js";

/** A column: its name, its unit under it, and a cell for every row. */
export interface Column {
  readonly name: string;
  readonly unit: string;
  readonly cells: readonly string[];
  readonly align: "left" | "right";
}

/** Columns side by side under their names and units, two spaces apart or, where the page is too narrow, one. */
export function tableLines(columns: readonly Column[]): string[] {
  const texts = columns.map(({ name, unit, cells }) => [name, unit, ...cells]);
  const widths = texts.map((column) => Math.max(...column.map(widthOf)));
  const gap = widths.reduce((sum, width) => sum + width + 2, 0) > WIDTH ? " " : "  ";
  const units = columns.some(({ unit }) => unit !== "");
  const rows = Math.max(...texts.map((column) => column.length));
  return Array.from({ length: rows }, (_, row) => row)
    .filter((row) => row !== 1 || units)
    .map((row) => {
      const cells = columns.map(({ align }, at) => {
        const text = texts[at]?.[row] ?? "";
        const width = widths[at] ?? 0;
        return align === "left" ? left(text, width) : right(text, width);
      });
      return `  ${cells.join(gap)}`.trimEnd();
    });
}

/** A column of figures. */
export function numbers(name: string, unit: string, cells: readonly string[]): Column {
  return { name, unit, cells, align: "right" };
}

/** A table whose first column is its title: the title starts at the edge, as every other does. */
export function titledTable(columns: readonly Column[], paint: Paint): string[] {
  const [header = "", ...rows] = tableLines(columns);
  return [paint("strong", header.slice(2)), ...rows];
}
