import type { Stakes } from "@thirstline/spec/system";
import type { LifeReason } from "../life/LifeRemarks.js";

/** How pressing a machine is, the most pressing first; "cannot say" stands beside them. */
export type FleetGroup = "late" | "now" | "within" | "left alone" | "later" | "cannot say";

/** What an element falls due by. */
export type FleetLimit = "hours" | "distance" | "calendar" | "restriction" | "gauge";

/** When a limit comes. */
export interface LimitDue {
  readonly by: FleetLimit;
  /** the day; null when it never comes at the present rate, or within ten years of duty */
  readonly date: string | null;
  /** the day the manual allows no longer; null for what is only predicted or read off a gauge, and where `date` is null */
  readonly latest: string | null;
  /** running time or distance since the change that it comes after, s or m; null for a calendar and a gauge */
  readonly after: number | null;
}

/** One element of a machine. */
export interface FleetElement {
  readonly element: string;
  readonly style: string | null;
  /** day of its last change; null when nobody says */
  readonly changed: string | null;
  /** running time since then until today, s; null when it cannot be told */
  readonly running: number | null;
  /** its limits in the order they come */
  readonly limits: readonly LimitDue[];
}

/** What cannot be told of when a machine is due; where it is not late or due now for other reasons, the whole cannot. */
export type FleetReason =
  | { readonly code: "file at fault" }
  | { readonly code: "log at fault"; readonly line: number }
  | { readonly code: "log dated ahead"; readonly date: string }
  /** a meter shows less on a day than before it, without a new meter */
  | { readonly code: "runs backwards"; readonly meter: "hours" | "distance"; readonly date: string }
  | { readonly code: "no such element"; readonly element: string; readonly known: readonly string[] }
  | { readonly code: "no filter" }
  | { readonly code: "no interval" }
  | { readonly code: "last change unknown"; readonly elements: readonly string[] }
  | { readonly code: "hours unknown"; readonly elements: readonly string[] }
  | { readonly code: "distance unknown"; readonly elements: readonly string[] }
  | { readonly code: "no answer"; readonly message: string };

/** What an entry rests on. */
export type FleetCaution =
  /** the restriction is not followed, for these reasons */
  | { readonly code: "restriction not followed"; readonly reasons: readonly LifeReason[] }
  /** the supply breaks a limit with new elements already, at the worst point of its duty: no change of theirs helps */
  | { readonly code: "starves clean" }
  /** the gauge shows, Pa, at or over the limit at change, Pa */
  | { readonly code: "gauge at the change limit"; readonly value: number; readonly limit: number }
  /** the gauge shows, Pa, over the clean limit, Pa, with elements that are nearly new */
  | { readonly code: "gauge over the clean limit"; readonly value: number; readonly limit: number }
  /** a gauge reading of a machine whose gauge says nothing of its filters, or that has no limit to hold it against */
  | { readonly code: "gauge not used" }
  /** not run at all between the last readings */
  | { readonly code: "stood still" };

/** How fast a meter runs. */
export interface FleetRate {
  /** s of running, or m, a day of the calendar */
  readonly perDay: number;
  /** the slowest and the fastest month and more of the log; null where it is too short to tell */
  readonly least: number | null;
  readonly most: number | null;
  readonly from: "log" | "duty";
}

/** One machine of the list. */
export interface FleetEntry {
  readonly machine: string;
  /** its system file */
  readonly system: string;
  /** null when not stated, which counts as stopping the work */
  readonly stakes: Stakes | null;
  readonly group: FleetGroup;
  /** when the first limit comes; days from today, negative when past; null when unknown or never */
  readonly due: {
    readonly date: string;
    readonly days: number;
    readonly by: FleetLimit;
    /** with the fastest and the slowest use of the log, or what is only estimated; null where nothing tells */
    readonly early: string | null;
    readonly late: string | null;
  } | null;
  /** elements to change then: those due by a week after, or after today */
  readonly change: readonly string[];
  readonly elements: readonly FleetElement[];
  readonly hours: FleetRate | null;
  readonly distance: FleetRate | null;
  /** the latest gauge reading with the present suction elements, Pa */
  readonly gauge: { readonly date: string; readonly value: number } | null;
  /** chance that a limit of the system is met before it is due (or today), 0 to 1; null where nothing was drawn */
  readonly chance: number | null;
  readonly reasons: readonly FleetReason[];
  readonly cautions: readonly FleetCaution[];
}

/** A part to have on the shelf. */
export interface FleetPart {
  /** by its name on the shelf, else the element's name */
  readonly part: string;
  readonly style: string | null;
  /** system files it is for */
  readonly systems: readonly string[];
  /** how many fall due within the window */
  readonly count: number;
  /** how many machines they are for */
  readonly machines: number;
  /** the first day one is needed */
  readonly first: string;
  /** null when the shelf does not say */
  readonly onHand: number | null;
  /** how long one takes to come, s; null when the shelf does not say */
  readonly delivery: number | null;
  /** how many are missing; all of them when the shelf does not say */
  readonly short: number;
  /** the day to order by, for it to come in time; null when nothing is missing or the delivery is not stated */
  readonly orderBy: string | null;
}

/** What is due? */
export interface FleetAnswer {
  readonly question: "fleet";
  readonly on: string;
  /** days looked ahead */
  readonly within: number;
  /** every machine once, the most pressing first */
  readonly entries: readonly FleetEntry[];
  readonly parts: readonly FleetPart[];
  /** machines the log has rows of and the list has not, and how many rows */
  readonly unlisted: readonly { readonly machine: string; readonly rows: number }[];
}
