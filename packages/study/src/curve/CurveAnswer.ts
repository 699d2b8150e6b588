import type { Band } from "@thirstline/core";
import type { Caution, CheckPoint } from "../check/CheckAnswer.js";
import type { GroundReason } from "../check/ground.js";

/** A figure at every demand of a curve, and both ends of what is known of it where they differ. */
export interface CurveColumn {
  readonly middle: Float64Array;
  readonly band: { readonly low: Float64Array; readonly high: Float64Array } | null;
}

/** What gauges would read at every demand, with the elements in one state. */
export interface CurveState {
  /** at the pump's inlet, Pa; with no pump, at the engine */
  readonly vacuum: CurveColumn;
  /**
   * gauge, at the injection pump or, with no pump, at the engine, Pa; null when it cannot be known; NaN, a gap, at demands
   * beyond what the pump can move
   */
  readonly feedPressure: CurveColumn | null;
}

/** The elements that count as due for change, and how they were made so. */
export interface AtChange {
  /** elements with a stated terminal drop, by name */
  readonly parts: readonly string[];
  /** fuel temperature at which each shows its terminal drop at the demand, K; their soil stays the same at any other */
  readonly temperature: number;
}

/** The curve at one fuel temperature. */
export interface CurvePoint {
  /** K */
  readonly temperature: number;
  /** why no figure here is a promise, or why there is none; empty when all is well */
  readonly unanswered: readonly GroundReason[];
  readonly cautions: readonly Caution[];
  /** m3/s, rising from 0 */
  readonly demand: Float64Array;
  /** with clean elements; null when nothing can pass */
  readonly clean: CurveState | null;
  /** with the soil stated; null when none is, or when nothing can pass */
  readonly now: CurveState | null;
  /** with the elements due; null when no terminal drop is stated, or when nothing can pass */
  readonly atChange: CurveState | null;
  /** where the engine runs: demand and the flow in the suction line, m3/s, and what gauges read there, Pa */
  readonly duty: {
    readonly demand: number;
    readonly suctionFlow: number;
    readonly vacuum: Band;
    readonly vacuumNow: Band | null;
    readonly vacuumAtChange: Band | null;
    readonly feedPressure: Band | null;
  };
  /** Pa; null when none */
  readonly vacuumLimits: CheckPoint["vacuumLimits"];
  /** gauge, Pa */
  readonly feedLimit: number;
  readonly ceilings: CheckPoint["ceilings"];
}

/** How does vacuum grow with demand? At every temperature asked for. */
export interface CurveAnswer {
  readonly question: "curve";
  readonly system: string;
  /** whether there is a pump, or gravity does it */
  readonly pump: "none" | "fixed" | "curve" | "pulse";
  /**
   * What the suction line's flow follows: with relief to the tank it carries all the pump moves whatever is burnt, so
   * that its vacuum is a horizontal up to there
   */
  readonly suctionFollows: "demand" | "pump";
  /** null when no element has a stated terminal drop */
  readonly atChange: AtChange | null;
  readonly points: readonly CurvePoint[];
}
