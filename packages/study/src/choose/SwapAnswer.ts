import type { LimitName } from "@thirstline/core";
import type { CheckAnswer, CheckPoint } from "../check/CheckAnswer.js";
import type { ChangeRule, LifeReason, LifeSpread } from "../life/LifeAnswer.js";
import type { Fineness } from "./captureBetween.js";
import type { StarvesBelow } from "./starvesBelow.js";

/** May it be fitted? */
export type SwapVerdict = "yes" | "with care" | "no" | "cannot say";

/** What one year of a machine's elements costs, in the catalogue's own currency; null where a price is not known. */
export interface YearlyCost {
  /** changes of the elements at the places asked about in a year of duty */
  readonly changes: number | null;
  readonly elements: number | null;
  /** null also where neither the work nor its rate is stated */
  readonly labour: number | null;
  /** a stoppage at its chance before each change; null where no cost of one is stated or no chance is known */
  readonly stoppages: number | null;
  /** of all that is known; null where the price is not */
  readonly total: number | null;
}

/** One side of the comparison: as it is, or with the other element. */
export interface SwapSide {
  /** what is fitted, by the name it has in the catalogue, or the place's own */
  readonly element: string;
  /** ISO 4406 code of the fuel at the injection pump or engine; null where it cannot be reckoned */
  readonly code: string | null;
  /** whether every element's catch is known; with one unknown, the code counts it as catching nothing */
  readonly captureKnown: boolean;
  /** what is not known of how the elements at the places fill; null when both are */
  readonly fillingUnknown: "catch" | "capacity" | null;
  /** with the elements as the file has them, a new one at the places asked about; the warmest and the coldest */
  readonly warm: CheckPoint;
  readonly cold: CheckPoint;
  /** in hand at the coldest when the elements have filled for the interval; null where unknown or a limit comes first */
  readonly inHandAtChange: number | null;
  readonly starves: StarvesBelow;
  /** whether figures of life are there; then `life` null means that no limit is met within the horizon */
  readonly lifeKnown: boolean;
  readonly lifeReasons: readonly LifeReason[];
  /** running time to the first limit, s */
  readonly life: number | null;
  readonly change: ChangeRule | null;
  readonly spread: LifeSpread | null;
  readonly cost: YearlyCost;
}

/** How much a reason weighs. */
export type Weight = "no" | "cannot say" | "care" | "note";

/** Why a swap is judged as it is; temperatures K, flows m3/s, times s. */
export type SwapReason = { readonly weight: Weight } & (
  | { readonly code: "starves"; readonly point: CheckPoint; readonly below: StarvesBelow }
  | { readonly code: "tight"; readonly point: CheckPoint }
  | { readonly code: "not judged"; readonly point: CheckPoint }
  /** dirtier at these sizes than the manual asks */
  | {
      readonly code: "coarser than asked";
      readonly found: string;
      readonly asked: string;
      readonly sizes: readonly string[];
    }
  | {
      readonly code: "protection not known";
      readonly why: "its catch" | "the delivered fuel" | "the duty" | "what is asked";
      readonly fineness: Fineness;
    }
  | { readonly code: "protection kept"; readonly found: string; readonly asked: string }
  | { readonly code: "no coarser than now"; readonly fineness: Fineness }
  | { readonly code: "coarser than now" }
  | { readonly code: "filling not known"; readonly why: "catch" | "capacity" }
  | { readonly code: "finer than asked"; readonly now: string; readonly found: string; readonly asked: string }
  | { readonly code: "rating not met"; readonly beta: number; readonly size: number }
  | { readonly code: "rating not known"; readonly beta: number; readonly size: number }
  | { readonly code: "early"; readonly time: number; readonly interval: number; readonly source: string | null }
  | { readonly code: "lasts"; readonly time: number | null; readonly interval: number }
  | { readonly code: "life not known"; readonly reasons: readonly LifeReason[] }
  | {
      readonly code: "may starve early";
      readonly chance: number;
      readonly chanceError: number;
      readonly interval: number;
      readonly draws: number;
    }
  | { readonly code: "style"; readonly fitted: string; readonly other: string }
  | { readonly code: "thread"; readonly fitted: string; readonly other: string }
  | { readonly code: "thread kept"; readonly thread: string }
  | { readonly code: "direction"; readonly fitted: string; readonly other: string }
  | { readonly code: "thread not known"; readonly other: string | null }
  | { readonly code: "too much flow"; readonly place: string; readonly flow: number; readonly most: number }
  | { readonly code: "less water"; readonly fitted: number; readonly other: number | null }
  | { readonly code: "neighbour stays"; readonly place: string; readonly neighbour: string }
  | { readonly code: "was backwards"; readonly place: string }
);

/** May this element be fitted instead? */
export interface SwapAnswer {
  readonly question: "swap";
  readonly system: string;
  readonly pump: CheckAnswer["pump"];
  /** names of the places */
  readonly at: readonly string[];
  readonly with: string;
  readonly verdict: SwapVerdict;
  /** the ones that decide first, then the rest by weight */
  readonly reasons: readonly SwapReason[];
  /** how the other element catches beside the one fitted */
  readonly fineness: Fineness;
  /** what the injection pump asks for; null when the file does not say */
  readonly asked: string | null;
  readonly interval: { readonly time: number; readonly source: string | null } | null;
  readonly now: SwapSide;
  readonly changed: SwapSide;
  /** limits broken with the other element at the coldest, for programs */
  readonly broken: readonly LimitName[];
}
