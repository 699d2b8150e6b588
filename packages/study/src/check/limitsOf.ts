import { type Limits, publishedVacuumLimits } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import type { Caution } from "./CheckAnswer.js";

/** The limits to judge by, and what was assumed to get them. */
export interface JudgedLimits {
  readonly limits: Limits;
  readonly cautions: readonly Caution[];
  /** whether the suction side can be judged at all */
  readonly complete: boolean;
}

/**
 * Limits the file gives, filled up where published guidance exists: vacuum limits of a lift pump on diesel fuel only.
 * For petrol and pulse pumps there is no such figure; with no pump the physical limit, the head spent, is enough.
 */
export function limitsOf(built: Built): JudgedLimits {
  const { vacuumClean, vacuumAtChange, feedPressure } = built.limits;
  const feed = feedPressure === undefined ? {} : { feedPressure };
  if (built.pump.kind === "none") {
    const vacuum = {
      ...(vacuumClean === undefined ? {} : { vacuumClean }),
      ...(vacuumAtChange === undefined ? {} : { vacuumAtChange }),
    };
    return { limits: { ...vacuum, ...feed }, cautions: [], complete: true };
  }
  if (vacuumClean !== undefined && vacuumAtChange !== undefined) {
    return { limits: { vacuumClean, vacuumAtChange, ...feed }, cautions: [], complete: true };
  }
  if (takesGuidance(built)) {
    const which = vacuumClean === undefined ? (vacuumAtChange === undefined ? "both" : "clean") : "at change";
    const atChange = vacuumAtChange ?? Math.max(publishedVacuumLimits.atChange, vacuumClean ?? 0);
    const clean = vacuumClean ?? Math.min(publishedVacuumLimits.clean, atChange);
    return {
      limits: { vacuumClean: clean, vacuumAtChange: atChange, ...feed },
      cautions: [{ code: "limit assumed", which, source: publishedVacuumLimits.source }],
      complete: true,
    };
  }
  if (vacuumAtChange !== undefined) return { limits: { vacuumAtChange, ...feed }, cautions: [], complete: true };
  if (vacuumClean !== undefined) {
    const limits = { vacuumClean, vacuumAtChange: vacuumClean, ...feed };
    return { limits, cautions: [{ code: "clean limit used at change" }], complete: true };
  }
  return { limits: feed, cautions: [], complete: false };
}

/** Whether the fuel is a diesel, or mostly so, lifted by a mechanical pump. */
function takesGuidance(built: Built): boolean {
  const { diesel = 0, biodiesel = 0, paraffinic = 0 } = built.fuel.composition;
  return built.pump.kind === "fixed" && diesel + biodiesel + paraffinic > 0.99;
}
