/**
 * One place of a cleanliness code: a scale number 0 to 28; ">28" above the scale; "*" too many to count; "-" not
 * counted.
 */
export type ScaleNumber = number | ">28" | "*" | "-";

/** A scale number and how sure it is. */
export interface CodePart {
  readonly scale: ScaleNumber;
  /** fewer than 20 particles were counted, so the true number may be higher; printed with the prefix >= */
  readonly fewCounted: boolean;
}

/** Something for each of the three sizes that ISO 4406 counts at, in um(c): particles of that size and up. */
export interface AtCodeSizes<T> {
  readonly at4: T;
  readonly at6: T;
  readonly at14: T;
}

/** Which of the three sizes. */
export type CodeSize = keyof AtCodeSizes<unknown>;

/** The three, from the smallest size up. */
export const codeSizes: readonly CodeSize[] = ["at4", "at6", "at14"];

/** A cleanliness code, such as 18/16/13. ISO 4406:2021 */
export type CleanlinessCode = AtCodeSizes<CodePart>;

/** Particles per mL of each size and up. The one count in core that is not SI: ISO 4406 defines its code per mL. */
export type CountsPerMl = AtCodeSizes<number>;
