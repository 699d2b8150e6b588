import { type Band, type BandEnd, type FuelState, type Supply, SupplyModel } from "@thirstline/core";

/** One for each end of what is known. */
export type Ends<T> = Readonly<Record<BandEnd, T>>;

/** A supply at each end of what is known of it. */
export function modelsOf(supply: Supply, fuel: FuelState): Ends<SupplyModel> {
  return eachEnd((end) => new SupplyModel(supply, { fuel, passage: "smooth", end }));
}

/** Something at each end. */
export function eachEnd<T>(of: (end: BandEnd) => T): Ends<T> {
  return { low: of("low"), middle: of("middle"), high: of("high") };
}

/** The same of each end. */
export function each<A, B>(ends: Ends<A>, from: (one: A) => B): Ends<B> {
  return { low: from(ends.low), middle: from(ends.middle), high: from(ends.high) };
}

/** A band whose low end is its smallest figure, whichever end of the resistance gave it. */
export function ordered(low: number, middle: number, high: number): Band {
  return { low: Math.min(low, high), middle, high: Math.max(low, high) };
}
