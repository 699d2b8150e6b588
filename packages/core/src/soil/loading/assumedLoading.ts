import { InputError } from "../../InputError.js";
import { requireMoreThan } from "../../require.js";
import { singles } from "./forms.js";
import type { LoadingLaw } from "./LoadingLawKinds.js";
import { loadingLaw } from "./loadingLaw.js";

/** What a medium is made of, as far as it bears on how much soil it takes. */
export type MediumMake = "cellulose" | "glass or synthetic";

/**
 * Soil that a medium takes before its drop has risen by `ASSUMED_RISE`, kg/m2: 2 to 6 and 8 to 20 mg/cm2 "at 70 to 100
 * kPa or more"; the middle is the geometric mean. Filter handbooks (from memory, low: a plausible range, no more).
 */
export const assumedCapacities: Readonly<Record<MediumMake, { readonly least: number; readonly most: number }>> = {
  cellulose: { least: 0.02, most: 0.06 },
  "glass or synthetic": { least: 0.08, most: 0.2 },
};

/** Rise at which those capacities are taken, Pa; the lower of the handbooks' 70 to 100 kPa. */
export const ASSUMED_RISE = 70e3;

/** A law known only as a band: how fast restriction grows at least, most likely and at most. */
export interface AssumedLoading {
  readonly low: LoadingLaw;
  readonly middle: LoadingLaw;
  readonly high: LoadingLaw;
}

/**
 * A stand-in for an element whose capacity nobody tested: intermediate blocking through handbook capacities. Never as
 * good as a test; an answer that rests on it must say "assumed", and say it in numbers by working with both ends.
 *
 * That it is intermediate blocking is common practice, no source: it lies between cake and the two laws that plug.
 *
 * @param given make of the medium; drop of the clean medium at its rated flow, Pa
 * @returns laws for load in kg per m2 of medium
 * @throws InputError for a drop not above 0
 * @example
 * assumedLoading({ make: "cellulose", cleanDrop: 2e3 }).middle // intermediate 103.4 per kg/m2
 */
export function assumedLoading(given: { readonly make: MediumMake; readonly cleanDrop: number }): AssumedLoading {
  requireMoreThan("assumedLoading", "cleanDrop", given.cleanDrop, 0, "Pa");
  if (!Object.hasOwn(assumedCapacities, given.make)) {
    throw new InputError("assumedLoading", "make", Object.keys(assumedCapacities).join(" or "), given.make);
  }
  const { least, most } = assumedCapacities[given.make];
  const ratio = 1 + ASSUMED_RISE / given.cleanDrop;
  const law = (capacity: number) =>
    loadingLaw("intermediate", { intermediate: singles.intermediate.constant(capacity, ratio) });
  return { low: law(most), middle: law(Math.sqrt(least * most)), high: law(least) };
}
