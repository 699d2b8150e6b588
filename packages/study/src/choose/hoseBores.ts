/**
 * Bores of hose as sold, m: dash sizes 4, 5, 6, 8, 10, 12 and 16.
 *
 * @see FAA AC 43.13-1B (1998), table 9-3, MIL-H-8788 hose (seen): 7/32, 9/32, 11/32, 7/16, 9/16, 11/16 and 7/8 in
 */
export const hoseBores: readonly number[] = [7 / 32, 9 / 32, 11 / 32, 7 / 16, 9 / 16, 11 / 16, 7 / 8].map(
  (inches) => inches * 0.0254,
);

/** A bore wider than any in the list is taken a quarter wider; common practice, no source. */
const BEYOND = 1.25;

/** The next bore up from one, and whether it is in the list; a size less than 2 % wider is the same hose. */
export function nextBore(bore: number): { readonly bore: number; readonly listed: boolean } {
  const next = hoseBores.find((one) => one > bore * 1.02);
  return next === undefined ? { bore: bore * BEYOND, listed: false } : { bore: next, listed: true };
}
