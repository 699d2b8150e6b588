import type { LifeEnd, LoadingLawName } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { GaugeSide } from "./instantsOf.js";

export type { GaugeSide } from "./instantsOf.js";

/** A figure with the ends between which it lies nine times in ten. */
export interface Interval {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** A reading as an answer names it. */
export interface ReadingPlace {
  /** from 1 */
  readonly row: number;
  /** line of its file; null for one typed by itself */
  readonly line: number | null;
}

/** What readings show; the names are what to look for. */
export type Finding =
  /** soil explains them */
  | { readonly code: "loading"; readonly side: GaugeSide }
  /** more resistance from one reading to the next than soil brings: Pa at that reading */
  | { readonly code: "jump"; readonly side: GaugeSide; readonly from: ReadingPlace; readonly by: number }
  /** too much from the first reading of new elements on: Pa at that reading */
  | { readonly code: "high when new"; readonly side: GaugeSide; readonly from: ReadingPlace; readonly by: number }
  /** less vacuum and weak delivery together: Pa the vacuum, and the feed pressure, fell short by */
  | { readonly code: "air or slip"; readonly from: ReadingPlace; readonly by: number; readonly weakBy: number }
  /** less vacuum than clean elements would draw, and no feed pressure to tell why */
  | { readonly code: "low"; readonly from: ReadingPlace; readonly by: number }
  /** the colder the more, beyond viscosity: Pa at the coldest reading, K */
  | { readonly code: "cold"; readonly side: GaugeSide; readonly by: number; readonly coldest: number }
  /** resistance falls without a change: Pa; from one reading on, or little by little, and then null */
  | { readonly code: "falls"; readonly side: GaugeSide; readonly from: ReadingPlace | null; readonly by: number }
  /** feed pressure fell and the elements before the pump show nothing of it: Pa */
  | { readonly code: "weak delivery"; readonly from: ReadingPlace; readonly by: number };

/** Why something cannot be told yet. */
export type GaugeReason =
  | { readonly code: "no readings"; readonly side: GaugeSide }
  | { readonly code: "no duty for dates" }
  | { readonly code: "hours and dates mixed" }
  | { readonly code: "no filter" }
  | { readonly code: "shut" }
  | { readonly code: "too few readings"; readonly count: number; readonly needed: number }
  | { readonly code: "no trend"; readonly count: number }
  /** hours from, to, s: null when there is no end to it */
  | { readonly code: "too wide"; readonly low: number; readonly high: number | null }
  | { readonly code: "no limit" }
  | { readonly code: "no temperature to judge" }
  | { readonly code: "not the filter" };

/** What the figures rest on. */
export type GaugeCaution =
  | { readonly code: "equal soil"; readonly side: GaugeSide; readonly elements: readonly string[] }
  | { readonly code: "one gauge"; readonly elements: readonly string[] }
  | { readonly code: "start"; readonly by: "change in the readings" | "last change" | "stated" | "not known" }
  | { readonly code: "earlier readings"; readonly count: number }
  | { readonly code: "load taken"; readonly count: number }
  | { readonly code: "temperature taken"; readonly count: number; readonly temperature: number }
  | { readonly code: "level taken"; readonly count: number; readonly range: number }
  | { readonly code: "after the jump"; readonly from: ReadingPlace; readonly count: number }
  | { readonly code: "no feed pressure"; readonly elements: readonly string[] }
  | { readonly code: "no vacuum readings" }
  | { readonly code: "file and machine apart"; readonly share: number };

/** A reading that stands off from all that is fitted. */
export interface Outlier extends ReadingPlace {
  readonly side: GaugeSide;
  /** Pa: what was read, and what the other readings let expect; a feed pressure for the delivery side */
  readonly read: number;
  readonly expected: number;
  /** how many standard deviations it is off */
  readonly deviations: number;
}

/** One element now. */
export interface GaugeElement {
  readonly name: string;
  /** resistance over clean */
  readonly ratio: Interval;
  /** at full demand where the limit is judged, Pa */
  readonly dropClean: number;
  readonly drop: number;
  /** of the room for soil under the limit, 0 to 1; null without a limit */
  readonly roomUsed: number | null;
}

/** A candidate law with its weight among all. */
export interface LawWeight {
  readonly law: LoadingLawName;
  /** part of the second constant, of a law of two */
  readonly mix: number | null;
  /** Akaike weight, 0 to 1 */
  readonly weight: number;
}

/** What one gauge says of the elements on its side. */
export interface SideAnswer {
  readonly side: GaugeSide;
  readonly readings: number;
  readonly elements: readonly GaugeElement[];
  /** how far one reading is off, demand and temperature included, Pa, one standard deviation at the last reading */
  readonly scatter: number;
  /** what the gauge itself is taken to be off by, Pa, and by whose word */
  readonly gaugeError: { readonly value: number; readonly by: "stated" | "common practice" };
  /** demand, and all friction with it, over what the file says; and what all readings are off by, Pa */
  readonly demand: number;
  readonly zero: number;
  /** the likeliest first */
  readonly laws: readonly LawWeight[];
  /** whether growth shows at all */
  readonly trend: boolean;
  /** running time since the run began, s, what was read and what is reckoned there, Pa */
  readonly trace: {
    readonly time: readonly number[];
    readonly read: readonly number[];
    readonly reckoned: readonly number[];
  };
}

/** Running time left to the change limit. */
export interface HoursLeft extends Interval {
  /** s, from the last reading; `high` is Infinity where there is no end to it */
  readonly by: LifeEnd;
  /** K, of the duty point where it is met */
  readonly pointTemperature: number;
  /** what the hour meter will show at the middle, s; null without one */
  readonly hourMeter: number | null;
  /** running time since the elements were new, or since the first reading where that is not known, s */
  readonly sinceStart: number;
}

/** What does the gauge say? */
export interface GaugeAnswer {
  readonly question: "gauge";
  readonly system: string;
  readonly pump: System["pump"]["kind"];
  /** filter: soil explains the readings; other: something else is in them; cannot tell: not yet */
  readonly verdict: "filter" | "other" | "cannot tell";
  readonly findings: readonly Finding[];
  /** why there is no verdict, or no hours */
  readonly reasons: readonly GaugeReason[];
  readonly cautions: readonly GaugeCaution[];
  readonly outliers: readonly Outlier[];
  readonly sides: readonly SideAnswer[];
  /** null where it cannot be told */
  readonly left: HoursLeft | null;
  /** the same without the readings that stand off; null where none does, or it cannot be told */
  readonly leftWithout: HoursLeft | null;
  /** all, and those that count */
  readonly readings: { readonly all: number; readonly used: number };
}

/** What to ask besides. */
export interface GaugeOptions {
  /** how far the gauge itself may be off, Pa, one standard deviation; common practice when left out */
  readonly gaugeError?: number;
  /** another whole number draws otherwise; 1 when left out */
  readonly seed?: number;
}
