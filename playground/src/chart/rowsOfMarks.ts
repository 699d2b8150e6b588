/** An upright with the pixel it stands at. */
interface Standing {
  readonly label: string;
  readonly at: number;
}

/** Where the names of uprights may stand, px. */
interface Room {
  readonly left: number;
  readonly right: number;
  readonly width: (text: string) => number;
  /** between a name and its line */
  readonly gap: number;
}

/**
 * Names of uprights in rows, counted from the bottom, so that none stands on another: each to the left of its line where
 * it has room there, else to the right, else as far left as it goes. `from` is where its text begins, px.
 */
export function rowsOfMarks<One extends Standing>(
  marks: readonly One[],
  { left, right, width, gap }: Room,
): { readonly mark: One; readonly row: number; readonly from: number }[] {
  const taken: { row: number; from: number; to: number }[] = [];
  return marks.map((mark) => {
    const wide = width(mark.label);
    const before = mark.at - gap - wide;
    const behind = mark.at + gap;
    const from = before >= left ? before : behind + wide <= right ? behind : left + gap;
    const to = from + wide;
    let row = 0;
    while (taken.some((one) => one.row === row && one.from < to + gap && one.to > from - gap)) row += 1;
    taken.push({ row, from, to });
    return { mark, row, from };
  });
}
