import type { RatingKind } from "../../parts/index.js";
import type { TestDust } from "../distribution/testDusts.js";

/** A beta ratio at a size. */
export interface BetaPoint {
  /** m, as ISO 11171 counts: um(c) */
  readonly size: number;
  /** test dust of that size and up before the element over that behind it; 1 or more, and ">= 1000" counts as 1000 */
  readonly beta: number;
}

/** What is known of how an element catches. */
export interface CaptureGiven {
  /** from a multi-pass test (ISO 16889, ISO 19438), in any order; they win over a rating */
  readonly betas?: readonly BetaPoint[];
  readonly rating?: { readonly size: number; readonly kind: RatingKind };
  /** the dust of the test; medium when left out, as ISO 16889 uses */
  readonly dust?: TestDust;
  /** share of the flow that slips past the seal unfiltered, 0 to 1 */
  readonly leak?: number;
  /** fitted against its flow arrow */
  readonly reversed?: boolean;
}

/** What to know before relying on a capture. */
export type CaptureCaution =
  /** always there: that betas from test dust carry over to field dirt is an assumption */
  | { readonly code: "betas from test dust" }
  /**
   * one point says nothing of how beta runs with size: in the middle it runs straight from 1 at size 0, at the low end
   * from 1 at half the stated size, at the high end it is reached at half the stated size already
   */
  | { readonly code: "one beta point" }
  /** "absolute" has no one meaning; taken as beta 75 at its size (common practice, no source) */
  | { readonly code: "absolute taken as beta 75" }
  /** no bin may gain particles, and keeping to that changed a stated beta by more than 1 % */
  | { readonly code: "beta moved"; readonly size: number; readonly stated: number; readonly held: number };

/** Share of the particles that an element catches in each size bin, 0 to 1. */
export type Efficiency = Float64Array;

/** How an element catches. With one beta point low, middle and high differ; else all three are the same array. */
export interface KnownCapture {
  readonly known: true;
  readonly efficiency: { readonly low: Efficiency; readonly middle: Efficiency; readonly high: Efficiency };
  readonly cautions: readonly CaptureCaution[];
}

/**
 * Why nobody can say how an element catches: a nominal rating has no agreed test behind it and compares with nothing;
 * against its arrow an element may even shed what it holds.
 */
export type NoCaptureReason = "nominal rating" | "no beta stated" | "fitted backwards";

/** That nobody can say how an element catches, and why. */
export interface UnknownCapture {
  readonly known: false;
  readonly reason: NoCaptureReason;
}

/** How an element catches, or why nobody can say. */
export type Capture = KnownCapture | UnknownCapture;
