import type { BandEnd } from "../../parts/Band.js";
import { type Named, nameOf } from "../../parts/Named.js";
import type { CleanlinessCode } from "../cleanliness/CleanlinessCode.js";
import { codeOfDistribution } from "../distribution/codeOfDistribution.js";
import { massOf } from "../distribution/massOf.js";
import type { ParticleDistribution } from "../distribution/ParticleDistribution.js";
import type { Capture, NoCaptureReason } from "./Capture.js";
import { caughtMass } from "./caughtMass.js";
import { throughFilter } from "./throughFilter.js";

/** An element on the path of the fuel. */
export interface Stage extends Named {
  readonly capture: Capture;
}

/** What one stage did; `caught` and `share` are there when its capture is known, else the reason. */
export type StageResult = Named & {
  readonly incoming: ParticleDistribution;
  readonly outgoing: ParticleDistribution;
  /** behind the stage */
  readonly code: CleanlinessCode;
} & (
    | {
        readonly known: true;
        /** kg per m3 of fuel */
        readonly caught: number;
        /** of all that the path is known to catch, 0 to 1: which stage does the work; 0 when nothing is caught */
        readonly share: number;
      }
    | { readonly known: false; readonly reason: NoCaptureReason }
  );

/** What a path did. */
export interface PathResult {
  readonly stages: readonly StageResult[];
  readonly outgoing: ParticleDistribution;
  /** at the end of the path, as at the injection pump */
  readonly code: CleanlinessCode;
  /** by all stages of known capture, kg per m3 of fuel */
  readonly caught: number;
  /** kg per m3 of fuel */
  readonly passed: number;
  /** false when a stage's capture is unknown: it counts as catching nothing here, and what it sheds is not in the code */
  readonly known: boolean;
}

/**
 * Fuel through stage after stage: how clean it comes out, and which element does the work.
 *
 * A stage of unknown capture is taken to let everything through, which is the safe side for the pump and the stages
 * behind (unless it was fitted backwards and sheds what it held), and the result says so.
 * What comes out does not depend on the order of the stages; what each catches does.
 *
 * @param incoming delivered fuel, or what the tank holds
 * @param stages from the tank on
 * @param end which end of a single beta point's band
 * @example
 * throughStages(delivered, [{ name: "prefilter", capture: coarse }, { name: "fine filter", capture: fine }]).code
 */
export function throughStages(
  incoming: ParticleDistribution,
  stages: readonly Stage[],
  end: BandEnd = "middle",
): PathResult {
  let fuel = incoming;
  const done = stages.map((stage) => {
    const before = fuel;
    if (stage.capture.known) fuel = throughFilter(before, stage.capture.efficiency[end]);
    const caught = stage.capture.known ? caughtMass(before, stage.capture.efficiency[end]) : 0;
    return { stage, caught, incoming: before, outgoing: fuel };
  });
  const caught = done.reduce((sum, one) => sum + one.caught, 0);
  return {
    stages: done.map(({ stage, caught: here, incoming, outgoing }) => {
      const common = { ...nameOf(stage), incoming, outgoing, code: codeOfDistribution(outgoing) };
      if (!stage.capture.known) return { ...common, known: false, reason: stage.capture.reason };
      return { ...common, known: true, caught: here, share: caught > 0 ? here / caught : 0 };
    }),
    outgoing: fuel,
    code: codeOfDistribution(fuel),
    caught,
    passed: massOf(fuel),
    known: stages.every((stage) => stage.capture.known),
  };
}
