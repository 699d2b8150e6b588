import type { Column } from "./columns.js";

type Block = Record<string | number, unknown>;

/** A row as data of an element; empty cells are left out. What a second point or a capacity test leaves out is as in the flow test. */
export function dataOf(cells: readonly string[], columns: readonly Column[]): Block {
  const data: Block = {};
  columns.forEach((column, place) => {
    const cell = cells[place] ?? "";
    if (cell === "") return;
    put(data, column.path, asRead(cell, column));
    const [first, at] = column.path;
    if (first === "betas") put(data, ["betas", at as number, "size"], column.unit);
  });
  const tests = data["flow test"] as Block[] | undefined;
  const fluid = tests?.[0];
  if (fluid && tests?.[1]) inherit(tests[1], fluid, ["viscosity", "density"]);
  const capacity = (data["capacity test"] as Block[] | undefined)?.[0];
  if (fluid && capacity) inherit(capacity, fluid, ["flow", "viscosity", "density"]);
  // Of a row of betas only those that were filled in.
  if (Array.isArray(data.betas)) data.betas = data.betas.filter((one) => one !== undefined);
  if (Array.isArray(data["flow test"])) data["flow test"] = data["flow test"].map((one) => one ?? {});
  return data;
}

function inherit(test: Block, fluid: Block, keys: readonly string[]): void {
  for (const key of keys) {
    if (test[key] === undefined && fluid[key] !== undefined) test[key] = fluid[key];
  }
}

/** A number alone takes the unit of its head; a cell with a unit of its own keeps it. */
function asRead(cell: string, { unit, plain }: Column): unknown {
  const isNumber = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(cell);
  if (plain) return isNumber ? Number(cell) : cell;
  if (unit !== "" && /^[\d.eE+-]+( ?(±|\+\/-|to) ?[\d.eE+-]+)?( ?±? ?[\d.]+ ?%)?$/.test(cell))
    return withUnit(cell, unit);
  return cell;
}

/** "40 ± 20 %" of a column in g is "40 g ± 20 %"; "2 to 5" is "2 to 5 g". */
function withUnit(cell: string, unit: string): string {
  const share = /^(\S+) ?(±|\+\/-) ?([\d.]+) ?%$/.exec(cell);
  return share ? `${share[1]} ${unit} ± ${share[3]} %` : `${cell} ${unit}`;
}

function put(data: Block, path: readonly (string | number)[], value: unknown): void {
  let block: Block = data;
  path.forEach((step, at) => {
    if (at === path.length - 1) block[step] = value;
    else {
      block[step] ??= typeof path[at + 1] === "number" ? [] : {};
      block = block[step] as Block;
    }
  });
}
