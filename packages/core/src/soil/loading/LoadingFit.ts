import type { LoadingLaw } from "./LoadingLawKinds.js";

/** A load and the resistance ratio it brought. */
export interface LoadingPoint {
  /** kg, kg/m2 or m: whichever the law is to go by */
  readonly load: number;
  /** resistance over clean resistance, more than 1 */
  readonly ratio: number;
}

/** Which way two points miss a law of two constants: from one to the other, resistance grows faster or more slowly. */
export type LoadingMiss = "grows too fast for this law" | "grows too slowly for this law";

/** A law through the points; or that no law of that name goes through them, and why. */
export type LoadingFit =
  | { readonly known: true; readonly law: LoadingLaw }
  | { readonly known: false; readonly reason: LoadingMiss };
