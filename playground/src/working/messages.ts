import type { Leaf, Proof, Working } from "@thirstline/study/working";
import type { Source } from "./Question.js";

/** Asks for a working. What it is of is sent when it is another than before. */
export interface Sought {
  readonly id: number;
  readonly source: Source | null;
  readonly leaf: Leaf;
}

/** What comes back: the working, null where there is no such figure or it has no value; then what working it out anew came to. */
export type Found =
  | { readonly id: number; readonly kind: "working"; readonly working: Working | null }
  | { readonly id: number; readonly kind: "proof"; readonly proof: Proof }
  | { readonly id: number; readonly kind: "refused"; readonly why: string };
