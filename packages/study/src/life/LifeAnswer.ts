import type { LifeEnd } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { LifeCaution, LifeReason } from "./LifeRemarks.js";
import type { WaterAnswer } from "./WaterAnswer.js";

export type { LifeCaution, LifeReason } from "./LifeRemarks.js";

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
