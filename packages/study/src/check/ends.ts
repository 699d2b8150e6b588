import { type Band, type BandEnd, type FuelState, type Supply, SupplyModel } from "@thirstline/core";
import { isUnsure } from "./isUnsure.js";
import { partsOf } from "./partsOf.js";

/** One for each end of what is known. */
export type Ends<T> = Readonly<Record<BandEnd, T>>;

/** A supply at each end of what is known of it; one model for all three where nothing has a band. */
export function modelsOf(supply: Supply, fuel: FuelState): Ends<SupplyModel> {
  const at = (end: BandEnd) => new SupplyModel(supply, { fuel, passage: "smooth", end });
  const middle = at("middle");
  if (!partsOf(supply).some(isUnsure)) return { low: middle, middle, high: middle };
  return { low: at("low"), middle, high: at("high") };
}

/** Something at each end. */
export function eachEnd<T>(of: (end: BandEnd) => T): Ends<T> {
  return { low: of("low"), middle: of("middle"), high: of("high") };
}

/** The same of each end; asked once where the ends are one thing. */
export function each<A, B>({ low, middle, high }: Ends<A>, from: (one: A) => B): Ends<B> {
  const known = from(middle);
  return { low: low === middle ? known : from(low), middle: known, high: high === middle ? known : from(high) };
}

/** A band whose low end is its smallest figure, whichever end of the resistance gave it. */
export function ordered(low: number, middle: number, high: number): Band {
  return { low: Math.min(low, high), middle, high: Math.max(low, high) };
}
