/** A figure known only between two ends, with the value most likely between them. All in the figure's own unit. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Which end of every band to work with. */
export type BandEnd = keyof Band;

/** A figure that is known: all three the same. */
export function exactly(value: number): Band {
  return { low: value, middle: value, high: value };
}

/** Whether the ends differ. */
export function isSpread(band: Band): boolean {
  return band.high > band.low;
}
