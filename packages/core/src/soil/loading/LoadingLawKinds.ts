/**
 * Blocking laws of one constant: a layer on the surface; pores closed, some particles on others; pores narrowed inside;
 * pores closed, one by each particle. J. Hermia, Trans. IChemE 60 (1982) 183
 */
export const singleLawNames = ["cake", "intermediate", "standard", "complete"] as const;

/** One of them. */
export type SingleLawName = (typeof singleLawNames)[number];

/** Two laws at once. G. Bolton, D. LaCasse, R. Kuriyel, J. Membrane Sci. 277 (2006) 75 */
export type CombinedLawName =
  | "cake-complete"
  | "cake-intermediate"
  | "complete-standard"
  | "intermediate-standard"
  | "cake-standard";

/** Every blocking law, of one constant or two. */
export type LoadingLawName = SingleLawName | CombinedLawName;

/**
 * How a medium's resistance grows with load. Load is soil caught, kg, or kg per m2 of medium, or volume filtered per
 * m2, m: whichever, the constants are per that unit, and every load handed to the law is in it.
 *
 * Constants that the name does not mention are 0; one that it does mention may be 0, and then the other law is left.
 */
export interface LoadingLaw extends Readonly<Record<SingleLawName, number>> {
  readonly name: LoadingLawName;
}

/** The constants of each law, named; for a combined law in the order of the name. */
export const lawConstants: Readonly<Record<LoadingLawName, readonly SingleLawName[]>> = {
  cake: ["cake"],
  intermediate: ["intermediate"],
  standard: ["standard"],
  complete: ["complete"],
  "cake-complete": ["cake", "complete"],
  "cake-intermediate": ["cake", "intermediate"],
  "complete-standard": ["complete", "standard"],
  "intermediate-standard": ["intermediate", "standard"],
  "cake-standard": ["cake", "standard"],
};
