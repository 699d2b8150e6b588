import { InputError } from "../InputError.js";
import { requireBetween } from "../require.js";
import { psi } from "./units.js";

/** Which rule says how far ethanol may lift petrol's Reid vapour pressure. */
export type EthanolRule = "EU waiver" | "US waiver";

/** kPa at 0, 1, 2 … 10 % ethanol by volume (Directive 98/70/EC, Annex III, from 2009/30/EC; seen). */
const euWaiver = [0, 3.7, 6.0, 7.2, 7.8, 8.0, 8.0, 7.9, 7.9, 7.8, 7.8];

/**
 * How far ethanol lifts the Reid vapour pressure of petrol. A few per cent lift it nearly as far as ten do.
 *
 * The European table follows what blending really does, straight between whole per cents. The American waiver is
 * 1 psi from 9 to 10 %, nothing below. Above 10 % the table ends and the last value is held: the lift falls from there
 * on, so this is the safe side, and an estimate.
 *
 * @param share ethanol by volume, 0 to 1
 * @returns Pa to add to the Reid vapour pressure of the petrol
 * @throws InputError for a share outside 0 to 1 or an unknown rule
 * @see Directive 98/70/EC, Annex III; US EPA 1 psi waiver for 9 to 10 % ethanol
 * @example
 * ethanolVapourRaise(0.05, "EU waiver") // 8000
 */
export function ethanolVapourRaise(share: number, rule: EthanolRule): number {
  requireBetween("ethanolVapourRaise", "share", share, { from: 0, to: 1 });
  // 0.09 is exactly the limit; shares arrive as 9/100 or 1 - 0.91, a rounding apart.
  if (rule === "US waiver") return share >= 0.09 - 1e-9 ? psi : 0;
  if (rule !== "EU waiver") throw new InputError("ethanolVapourRaise", "rule", "one of EU waiver, US waiver", rule);
  const percent = Math.min(share * 100, 10);
  const below = Math.min(Math.floor(percent), 9);
  const [from = 0, to = 0] = [euWaiver[below], euWaiver[below + 1]];
  return 1000 * (from + (to - from) * (percent - below));
}
