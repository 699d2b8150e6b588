import { fuelState } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { fuelReasons } from "../../check/fuelReasons.js";
import { limitsOf } from "../../check/limitsOf.js";
import { deliveredOf } from "../../life/deliveredOf.js";
import type { AskedRating } from "../betaAt.js";
import type { SizeReason } from "./SizeAnswer.js";

/** What a search keeps to. */
export interface Asked {
  readonly code: string | null;
  readonly rating: AskedRating | null;
  /** s */
  readonly interval: number | null;
}

/** Why a search makes no sense: something it must keep to is not known, or no figure is a promise. */
export function groundsOf(system: System, asked: Asked, temperatures: readonly number[]): SizeReason[] {
  const reasons: SizeReason[] = [];
  const built = build(system);
  if (asked.code === null && asked.rating === null) reasons.push({ code: "nothing asked" });
  if (asked.interval === null) reasons.push({ code: "no interval" });
  const most = system.service && (system.service.atMost ?? system.service.interval);
  if (asked.interval !== null && most !== undefined && asked.interval > most) {
    reasons.push({ code: "longer than the manual allows", interval: asked.interval, most });
  }
  if (!limitsOf(built).complete) reasons.push({ code: "no vacuum limit" });
  const missing = [
    ...(system.duty ? [] : ["no duty" as const]),
    ...(system.deliveredFuel ? [] : ["no delivered fuel" as const]),
  ];
  if (missing.length > 0) reasons.push({ code: "life cannot be reckoned", why: missing });
  else if (system.deliveredFuel && "code" in deliveredOf(system.deliveredFuel)) reasons.push({ code: "no solids" });
  for (const temperature of temperatures) {
    if (fuelReasons(fuelState(built.fuel, { temperature }), false).length > 0) {
      reasons.push({ code: "fuel not judged", temperature });
      break;
    }
  }
  return reasons;
}

/** Temperatures from the coldest to the warmest a system is run at, K, in steps of 5 K at most, both ends among them. */
export function rangeOf(temperatures: readonly number[]): number[] {
  const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)];
  const steps = Math.ceil((high - low) / 5);
  const even = Array.from({ length: steps + 1 }, (_, at) => (steps === 0 ? low : low + ((high - low) * at) / steps));
  return [...new Set([...even, ...temperatures])].sort((one, other) => one - other);
}
