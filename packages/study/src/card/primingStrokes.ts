import { InputError } from "@thirstline/core";

/** Share of a hand primer's sweep that moves, while it still draws air: common practice, no source. */
export const PRIMER_FILL = 0.8;

/**
 * Strokes of a hand primer until the air of a volume has gone through it, rounded up. Half the stroke takes twice as many.
 *
 * Real ones take a few more: air that hides in a high point comes in bubbles. What is counted is the volume, no more.
 *
 * @param given volume, m3; stroke, m3, as its maker states it; fill, the share of it that moves, above 0 to 1
 * @throws InputError naming what is out of range
 * @example
 * primingStrokes({ volume: 6e-4, stroke: 5e-6, fill: 0.8 }) // 150
 */
export function primingStrokes(given: {
  readonly volume: number;
  readonly stroke: number;
  readonly fill: number;
}): number {
  const { volume, stroke, fill } = given;
  if (!(volume >= 0 && volume < Infinity)) throw new InputError("primingStrokes", "volume", "at least 0 m3", volume);
  if (!(stroke > 0 && stroke < Infinity)) throw new InputError("primingStrokes", "stroke", "more than 0 m3", stroke);
  if (!(fill > 0 && fill <= 1)) throw new InputError("primingStrokes", "fill", "more than 0 and at most 1", fill);
  const strokes = volume / (stroke * fill);
  // A whole number of strokes stays one: 0.6 L / (5 mL × 0.8) comes out a rounding over 150.
  return Math.ceil(strokes * (1 - 1e-12));
}
