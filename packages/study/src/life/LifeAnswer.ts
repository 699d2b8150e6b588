import type { CaptureCaution, HeldFixed, LifeEnd, UnknownCapture } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { WaterAnswer } from "./WaterAnswer.js";

/** Why nothing can be said of how long elements last. */
export type LifeReason =
  | { readonly code: "no delivered fuel" }
  | { readonly code: "no duty" }
  | { readonly code: "no service interval" }
  | { readonly code: "no filter" }
  /** the stated solids give no sizes */
  | { readonly code: "no solids"; readonly why: string }
  | { readonly code: "no growing element" }
  /** no data back the fuel at any temperature of the duty */
  | { readonly code: "no temperature to judge" }
  /** what is only estimated decides: from this to that running time, s (null beyond the horizon) */
  | { readonly code: "unsettled"; readonly early: number; readonly late: number | null };

/** What the figures rest on. */
export type LifeCaution =
  | { readonly code: "capacity assumed"; readonly element: string }
  | { readonly code: "law assumed"; readonly element: string; readonly law: string }
  | { readonly code: "tests fit no law"; readonly element: string; readonly law: string; readonly why: string }
  | { readonly code: "no capacity"; readonly element: string }
  | { readonly code: "capture unknown"; readonly element: string; readonly why: UnknownCapture["reason"] }
  | { readonly code: "capture"; readonly element: string; readonly caution: CaptureCaution }
  | { readonly code: "extrapolated"; readonly share: number }
  | { readonly code: "season not judged"; readonly season: string; readonly temperature: number }
  /** at every temperature of the duty, K, all year round */
  | { readonly code: "judged at the worst"; readonly coldest: number }
  | { readonly code: "full load assumed" }
  | { readonly code: "held"; readonly held: HeldFixed }
  /** one dirtier delivery is counted: after a running time, s, so much fuel, m3 */
  | { readonly code: "dirty delivery"; readonly after: number; readonly volume: number }
  | { readonly code: "starts full of soil"; readonly element: string }
  /** absorbs water at a share nobody stated, so all of the free water is taken to stay in it */
  | { readonly code: "absorbs all"; readonly element: string };

/** One element of the system. */
export interface ElementRow {
  readonly name: string;
  /** soil on it at the start and when the first limit is met (or at the horizon), kg */
  readonly soilAtStart: number;
  readonly soil: number;
  /** water it keeps then, kg; 0 unless water swells an element of the system */
  readonly water: number;
  /** resistance over clean then */
  readonly restriction: number;
  /** drop at the worst point, clean and then, Pa */
  readonly dropClean: number;
  readonly drop: number;
  /** share of all the rise since clean, 0 to 1: the largest goes first */
  readonly share: number;
}

/** How much of the flow an element of a bank takes at the worst point, 0 to 1 of the bank's. */
export interface FlowShare {
  readonly element: string;
  /** all as they are at the end; with the one element new */
  readonly before: number;
  readonly after: number;
}

/** What changing one element alone would do, against changing all. */
export interface PartialChange {
  readonly element: string;
  /** running time from the change to the next end, s; null when none comes within the horizon */
  readonly time: number | null;
  /** of an element in a bank: its own share of the bank's flow, and its neighbours' */
  readonly shares: readonly FlowShare[];
}

/** Fuel at a place on its way. */
export interface CleanlinessRow {
  readonly place: string;
  /** ISO 4406 */
  readonly code: string;
  /** kg/m3 */
  readonly solids: number;
  /** particles per mL at 4, 6, 14 um(c) and up */
  readonly counts: readonly [number, number, number];
}

/** When to change, and who says so. */
export interface ChangeRule {
  /** running time, s */
  readonly time: number;
  readonly by: "manual's longest interval" | "manual's interval" | "distance" | "calendar" | "restriction";
}

/** What a life comes to in other measures. */
export interface Measures {
  /** running time, s */
  readonly time: number;
  /** fuel burnt, m3 */
  readonly burnt: number;
  /** m; null when no distance a year is stated */
  readonly distance: number | null;
  /** share of a year of duty */
  readonly years: number;
  /** ISO date; null when the file does not say when the elements were new */
  readonly date: string | null;
  /** what the hour meter, s, and the distance meter, m, will show; null when the file does not say what they showed */
  readonly hourMeter: number | null;
  readonly distanceMeter: number | null;
}

/** The spread of a life over what is uncertain. */
export interface LifeSpread {
  /** s; Infinity where no limit is met within the horizon */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** chance that a limit is met before the service interval, 0 to 1, and its standard error */
  readonly chance: number;
  readonly chanceError: number;
  /** the same for the longest interval the manual allows; null when it allows no longer than the usual */
  readonly atMost: { readonly chance: number; readonly chanceError: number } | null;
  readonly draws: number;
}

/** How long do the elements last? */
export interface LifeAnswer {
  readonly question: "life";
  readonly system: string;
  readonly pump: System["pump"]["kind"];
  /** early: a limit is met before the service interval; lasts: not before it; cannot say */
  readonly verdict: "lasts" | "early" | "cannot say";
  readonly reasons: readonly LifeReason[];
  readonly cautions: readonly LifeCaution[];
  /** running time looked ahead, s */
  readonly horizon: number;
  /** running time of a year of duty, s */
  readonly year: number;
  /** the moment the first limit is met at the worst point; null when none is within the horizon */
  readonly end: (Measures & { readonly by: LifeEnd; readonly pointTemperature: number }) | null;
  /** where what is only estimated puts the end, s; null beyond the horizon, and altogether where nothing is estimated */
  readonly range: { readonly early: number | null; readonly late: number | null } | null;
  readonly interval: { readonly time: number; readonly atMost: number; readonly source: string | null } | null;
  readonly change: (Measures & ChangeRule) | null;
  readonly elements: readonly ElementRow[];
  readonly partial: readonly PartialChange[];
  readonly cleanliness: readonly CleanlinessRow[];
  /** what the injection pump asks for; null when not stated. `kept`: whether the code at its inlet keeps to it */
  readonly protection: { readonly code: string; readonly kept: boolean } | null;
  /** null when the file does not say how wet the fuel comes */
  readonly water: WaterAnswer | null;
  /** running time, s, and with it vacuum, feed pressure, Pa, at the worst point */
  readonly trace: {
    readonly time: readonly number[];
    readonly vacuum: readonly number[];
    readonly feed: readonly (number | null)[];
  };
  readonly spread: LifeSpread | null;
}
