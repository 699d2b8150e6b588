import type { Words } from "@thirstline/study";

/** A point of the plot. */
interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Everything a gauge's chart draws, in the units shown. */
export interface GaugePlot {
  /** what it is of, as a sentence begins */
  readonly title: Words;
  readonly x: { readonly label: string; readonly from: number; readonly to: number; readonly ticks: readonly Tick[] };
  readonly y: { readonly symbol: string; readonly from: number; readonly to: number };
  readonly points: readonly (Spot & { readonly off: boolean; readonly words: Words })[];
  /** before the run that counts */
  readonly earlier: readonly (Spot & { readonly words: Words })[];
  /** what is fitted at each reading's own load; none where the points stand on the fitted course already */
  readonly expected: readonly Spot[];
  readonly line: {
    readonly low: readonly Spot[];
    readonly middle: readonly Spot[];
    readonly high: readonly Spot[];
  } | null;
  readonly limit: { readonly at: number; readonly name: string } | null;
  /** places of x where the limit is met */
  readonly crossing: { readonly low: number; readonly middle: number; readonly high: number | null } | null;
}

/** A figure along the axis. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}
