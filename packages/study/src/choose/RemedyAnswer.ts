import type { LimitName } from "@thirstline/core";
import type { CheckAnswer, CheckPoint, Verdict } from "../check/CheckAnswer.js";

/** Every kind of change; costs are stated by these words. */
export const remedyKinds = [
  "wider bore",
  "shorter run",
  "one more branch",
  "larger element",
  "warmer fuel",
  "cooler fuel",
  "lower pump",
  "higher tank",
  "fewer fittings",
  "clean element",
  "open vent",
  "open branch",
  "fuller tank",
] as const;

/** What kind of change it is. */
export type RemedyKind = (typeof remedyKinds)[number];

/** One change to a machine; lengths m, temperatures K. */
export type Remedy = { readonly kind: RemedyKind } & (
  | {
      readonly kind: "wider bore";
      readonly side: "suction" | "delivery";
      readonly from: number;
      readonly to: number;
      readonly parts: readonly string[];
      /** how the wider size is sold; null beyond the list of hoses */
      readonly listed: boolean;
    }
  | { readonly kind: "shorter run"; readonly part: string; readonly from: number; readonly to: number }
  | { readonly kind: "one more branch"; readonly parts: readonly string[] }
  | { readonly kind: "larger element"; readonly parts: readonly string[] }
  | { readonly kind: "warmer fuel"; readonly by: number }
  | { readonly kind: "cooler fuel"; readonly by: number }
  | { readonly kind: "lower pump"; readonly by: number }
  | { readonly kind: "higher tank"; readonly by: number }
  | { readonly kind: "fewer fittings"; readonly part: string; readonly from: number; readonly to: number }
  | { readonly kind: "clean element"; readonly part: string; readonly restriction: number }
  | { readonly kind: "open vent"; readonly tank: string }
  | { readonly kind: "open branch"; readonly part: string }
  | { readonly kind: "fuller tank"; readonly tank: string; readonly from: number; readonly to: number }
);

/** What some changes together come to, at the temperature where least is in hand then. */
export interface RemedyResult {
  readonly changes: readonly Remedy[];
  /** K */
  readonly temperature: number;
  readonly verdict: Verdict;
  /** largest demand, m3/s, at the bad end; Infinity where demand does not touch the limit */
  readonly ceiling: number;
  /** what binds then */
  readonly limit: LimitName;
  /** at the bad end */
  readonly inHand: number;
  /** clean elements against the clean limit: vacuum over it, Pa; null where it holds or none is given */
  readonly overClean: number | null;
  /** stated cost of them all; null where one of them has none */
  readonly cost: number | null;
}

/** What would help most? */
export interface RemedyAnswer {
  readonly question: "remedy";
  readonly system: string;
  readonly pump: CheckAnswer["pump"];
  readonly verdict: Verdict;
  /** as it is, where least is in hand */
  readonly worst: CheckPoint;
  readonly now: RemedyResult;
  /** m3/s there */
  readonly demand: number;
  /** each change alone, the one that buys most first */
  readonly single: readonly RemedyResult[];
  /** best pairs first; none where two single changes are not to be had */
  readonly pairs: readonly RemedyResult[];
}
