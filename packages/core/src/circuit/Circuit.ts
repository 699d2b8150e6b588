import type { Part } from "../parts/Part.js";

/** Circuits passed one after another. */
export interface Series {
  readonly kind: "series";
  readonly items: readonly Circuit[];
}

/** Circuits that leave one point and meet at another. */
export interface Parallel {
  readonly kind: "parallel";
  readonly branches: readonly Circuit[];
}

/** A part, or parts in series or parallel, at any depth. */
export type Circuit = Part | Series | Parallel;
