import { requireFinite, requireMoreThan } from "../require.js";
import { type EthanolRule, ethanolVapourRaise } from "./ethanolVapourRaise.js";
import { petrolVapourPressure } from "./petrolVapourPressure.js";

/** How vapour pressure follows temperature, as plain data. */
export type VapourPressureLaw =
  /** Petrol: Reid vapour pressure of the petrol, Pa, its slope S, and the ethanol blended into it, by volume of both. */
  | {
      readonly kind: "Reid";
      readonly reid: number;
      readonly slope: number;
      readonly ethanol?: { readonly share: number; readonly rule: EthanolRule };
    }
  /** ln(p / Pa) = a - b / T, T in K. */
  | { readonly kind: "two constants"; readonly a: number; readonly b: number }
  /** A blend: no ideal mixture exceeds its most volatile part, so this is the safe side. */
  | { readonly kind: "highest of"; readonly parts: readonly VapourPressureLaw[] }
  /** Not known, or too small to matter; counts as 0. */
  | { readonly kind: "none" };

/**
 * Vapour pressure by a law at a temperature. Where pressure in a line falls to it, fuel boils.
 *
 * Petrol as `petrolVapourPressure`; distillates within 5.3 % of the printed table. For blends of other kinds the most
 * volatile part's, which is the safe side.
 *
 * @param law Reid value, two constants, the highest of several, or none
 * @param temperature K
 * @returns vapour pressure, Pa, absolute; 0 for "none"
 * @throws InputError for a temperature not above 0 or constants that are not numbers
 * @see US EPA AP-42, chapter 7.1
 * @example
 * vapourPressureAt({ kind: "Reid", reid: 60e3, slope: 3 }, 313.15) // 68.30e3
 */
export function vapourPressureAt(law: VapourPressureLaw, temperature: number): number {
  requireMoreThan("vapourPressureAt", "temperature", temperature, 0, "K");
  switch (law.kind) {
    case "Reid": {
      const raise = law.ethanol === undefined ? 0 : ethanolVapourRaise(law.ethanol.share, law.ethanol.rule);
      return petrolVapourPressure({ reid: law.reid + raise, slope: law.slope, temperature });
    }
    case "two constants":
      requireFinite("vapourPressureAt", "law.a", law.a);
      requireFinite("vapourPressureAt", "law.b", law.b, "K");
      return Math.exp(law.a - law.b / temperature);
    case "highest of":
      return Math.max(0, ...law.parts.map((part) => vapourPressureAt(part, temperature)));
    case "none":
      return 0;
  }
}
