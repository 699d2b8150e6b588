import type { Fault } from "../read/Fault.js";
import type { TableBounds } from "./TableBounds.js";
import type { TableFault } from "./TableFault.js";

/** Faults of a table as they are told: in the order of the text, with line and column, no more than there may be. */
export function placeFaults(found: readonly TableFault[], text: string, file: string, bounds: TableBounds): Fault[] {
  const position = positionsIn(text);
  const faults = [...found]
    .sort((left, right) => left.at - right.at)
    .slice(0, bounds.faults + 1)
    .map(({ at, ...rest }): Fault => ({ file, ...position(at), ...rest }));
  if (faults.length <= bounds.faults) return faults;
  const { line, column } = faults[bounds.faults] as Fault;
  const message = "more faults follow; put right the ones above first";
  const more = { file, line, column, path: "", code: "more faults", received: null, message };
  return [...faults.slice(0, bounds.faults), more];
}

/** Line and column, from 1, of offsets into a text. */
export function positionsIn(text: string): (at: number) => { readonly line: number; readonly column: number } {
  const lines = [0];
  for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) lines.push(at + 1);
  return (at) => {
    let [low, high] = [0, lines.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((lines[middle] ?? 0) <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: at - (lines[low] ?? 0) + 1 };
  };
}
