import type { LimitName } from "@thirstline/core";
import type { LifeSpread } from "../../life/LifeAnswer.js";
import type { AskedRating } from "../betaAt.js";
import type { ArrangementFigures } from "./arrangementFigures.js";

/** One stage: so many of one element side by side. */
export interface SizeStage {
  readonly element: string;
  readonly count: number;
}

/** An arrangement that meets every limit. */
export interface Arrangement {
  /** from the tank on */
  readonly stages: readonly SizeStage[];
  /** of the lines on that side, m; null for the file's own */
  readonly bore: number | null;
  /** how many elements there are */
  readonly elements: number;
  /** elements changed in a year of duty */
  readonly changesAYear: number;
  /** elements and stated work in a year, and stoppages at their chance where drawn, in the catalogue's own currency; null where a price is not known */
  readonly yearlyCost: number | null;
  /** most vacuum at the pump's inlet over the temperatures, with clean elements, Pa; with no pump, at the engine */
  readonly vacuum: number;
  /** ISO 4406 code of the fuel at the injection pump or engine */
  readonly code: string;
  /** running time to the first limit, s, null where none comes within ten years; worked out for the best ones only */
  readonly life?: number | null;
  /** of what is uncertain, from `withChances`; with the chance of a limit before the interval */
  readonly spread?: LifeSpread;
  /** of the yearly cost, stoppages at their chance; null where no cost of one is stated */
  readonly stoppages?: number | null;
  /** whether no other arrangement is better in one of cost, vacuum and changes and as good in the rest */
  readonly pareto: boolean;
}

/** The first thing an arrangement fails by, adding stage after stage from the tank on. */
export type SizeFailure =
  | LimitName
  /** no beta ratios are stated for an element */
  | "catch not known"
  /** neither capacity test nor area is stated for an element */
  | "capacity not known"
  /** an element carries more than its maker allows */
  | "most flow"
  /** fuel comes to the injection pump dirtier than asked */
  | "cleanliness"
  /** no element reaches the fineness asked, or no test says so */
  | "rating"
  /** a limit is met before the interval is over */
  | "interval";

/** How many arrangements fail by one thing, and one of them. */
export interface SizeFailed {
  readonly by: SizeFailure;
  readonly count: number;
  readonly example: { readonly stages: readonly SizeStage[]; readonly bore: number | null };
}

/** Of a search that found nothing, what came nearest, and what its figures are. */
export interface NearestMiss extends ArrangementFigures {
  readonly by: SizeFailure;
  readonly stages: readonly SizeStage[];
  readonly bore: number | null;
  /** ISO 4406 code of the fuel at the injection pump or engine; null where it cannot be reckoned */
  readonly code: string | null;
}

/** Why nothing was searched. */
export type SizeReason =
  | { readonly code: "nothing asked" }
  | { readonly code: "no interval" }
  | { readonly code: "longer than the manual allows"; readonly interval: number; readonly most: number }
  | { readonly code: "no vacuum limit" }
  | { readonly code: "life cannot be reckoned"; readonly why: readonly ("no duty" | "no delivered fuel")[] }
  | { readonly code: "no solids" }
  /** at this temperature, K, no figure is a promise: wax, or a fuel outside its data */
  | { readonly code: "fuel not judged"; readonly temperature: number };

/** What the search came to, for those who want to know what it spared. */
export interface SizeEffort {
  /** arrangements ruled out with others, since the stages they begin with already fail */
  readonly spared: number;
  /** judged by sums of drops against what is free for them */
  readonly bySums: number;
  /** judged by the whole model, where a sum came too close to call or does not apply */
  readonly byModel: number;
  /** orders of elements whose catch was reckoned */
  readonly orders: number;
  /** lives followed to the end, where sums do not apply or came too close to call */
  readonly lives: number;
}

/** How many, which, how arranged? */
export interface SizeAnswer {
  readonly question: "size";
  readonly system: string;
  readonly verdict: "yes" | "no" | "cannot say";
  readonly reasons: readonly SizeReason[];
  readonly side: "suction" | "delivery";
  /** what stands there now and makes way */
  readonly replaced: readonly string[];
  readonly asked: {
    readonly code: string | null;
    readonly rating: AskedRating | null;
    readonly interval: number | null;
  };
  /** K, coldest first */
  readonly temperatures: readonly number[];
  readonly candidates: number;
  readonly passing: number;
  /** places in `arrangements` of the best by each ranking; null where none passes, or no price is known */
  readonly best: { readonly cost: number | null; readonly vacuum: number | null; readonly changes: number | null };
  /** by yearly cost: the first of each ranking, and all that are Pareto */
  readonly arrangements: readonly Arrangement[];
  /** the most frequent first */
  readonly failed: readonly SizeFailed[];
  /** where none passes */
  readonly nearest: NearestMiss | null;
  readonly effort: SizeEffort;
}
