import { left, right, WIDTH, widthOf, wrap } from "./wrap.js";

/** One figure with what it is called and what there is to say of it. */
export interface Entry {
  readonly name: string;
  readonly value: string;
  readonly note: string;
  /** stands in place of the note's first line, as it is */
  readonly strip?: string;
}

const NAME = 22;

/** Figures one under another: names on the left, values lined up, notes wrapped beside them. */
export function entryLines(entries: readonly Entry[]): string[] {
  const wide = Math.max(...entries.map(({ value }) => widthOf(value)));
  // A value with a band may be too wide to leave its note any room.
  const column = Math.min(wide, 12);
  return entries.flatMap(({ name, value, note, strip }) => {
    const head = `  ${left(name, NAME)}${right(value, column)}`;
    const room = WIDTH - 2 - NAME - column - 3;
    const beside = [...(strip === undefined ? [] : [strip]), ...wrap(note, "", room)];
    if (widthOf(value) > column) {
      return [head, ...beside.map((line) => `${" ".repeat(2 + NAME + column + 3)}${line}`)];
    }
    const [first = "", ...rest] = beside;
    return [`${head}   ${first}`.trimEnd(), ...rest.map((line) => `${" ".repeat(2 + NAME + column + 3)}${line}`)];
  });
}
