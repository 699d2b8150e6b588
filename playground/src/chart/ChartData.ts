/** How a line is drawn: its weight and dashes tell it apart without colour. */
export type LineLook = "clean" | "now" | "at change" | "pinned";

/** A line of a chart, in the units shown; gaps are null. */
export interface ChartLine {
  readonly look: LineLook;
  readonly label: string;
  /** whether its name stands at its end too; a line that is alone needs none */
  readonly named: boolean;
  readonly values: readonly (number | null)[];
  /** what it reads while no pointer is over the chart; null where it is not known */
  readonly atRest: number | null;
  readonly band: { readonly low: readonly (number | null)[]; readonly high: readonly (number | null)[] } | null;
}

/** How a mark across a chart is drawn: "limit" is the heavy one that ends it. */
export type MarkLook = "limit" | "clean limit" | "ceiling" | "due";

/** A straight line right across a chart, with its name. */
export interface Mark {
  readonly look: MarkLook;
  readonly label: string;
  readonly value: number;
}

/** An axis with what it counts in. */
interface Axis {
  readonly label: string;
  readonly symbol: string;
}

/** Everything a chart draws, in the units shown: the screen, the drawing that is saved and the table go by it alike. */
export interface ChartData {
  /** names the picture */
  readonly title: string;
  /** what the title is followed by in a file's name */
  readonly file: string;
  readonly x: Axis & { readonly values: readonly number[]; readonly from: number; readonly to: number };
  readonly y: Axis & { readonly from: number; readonly to: number };
  readonly lines: readonly ChartLine[];
  /** right across, at heights of y */
  readonly horizontals: readonly Mark[];
  /** from bottom to top, at places of x */
  readonly uprights: readonly Mark[];
  /** a stretch of x over which something is spread; null for none */
  readonly stretch: { readonly label: string; readonly from: number; readonly to: number } | null;
  /** the point that is now; null for none */
  readonly dot: { readonly x: number; readonly y: number } | null;
}
