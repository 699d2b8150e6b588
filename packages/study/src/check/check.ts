import { build, type System } from "@thirstline/spec/system";
import type { CheckAnswer, Verdict } from "./CheckAnswer.js";
import { checkPoint } from "./checkPoint.js";

/** What to ask besides what the file says. */
export interface CheckOptions {
  /** fuel temperatures to check at, K; the file's own when left out */
  readonly temperatures?: readonly number[];
  /** demand to check at, burn and return together, m3/s; the file's own when left out */
  readonly demand?: number;
}

const WORST_FIRST: readonly Verdict[] = ["starves", "cannot say", "tight", "holds"];

/**
 * Does it hold? Whether the engine gets its fuel through these filters and lines, at every temperature asked for, with
 * the tanks at their low level: vacuum against both limits, ceilings, what is in hand, each part's share, cautions.
 *
 * @param system from a system file
 * @param options temperatures, K, and demand, m3/s
 * @returns the answer; its verdict is the worst of its points
 * @throws InputError when an option is out of range
 */
export function check(system: System, options: CheckOptions = {}): CheckAnswer {
  const built = build(system);
  const temperatures = options.temperatures ?? [built.temperature];
  const points = temperatures.map((temperature) => checkPoint(built, temperature, options.demand ?? null));
  const verdict = WORST_FIRST.find((one) => points.some((point) => point.verdict === one)) ?? "cannot say";
  const limitSource = built.limits.source ?? null;
  return { question: "check", system: system.name, pump: built.pump.kind, limitSource, verdict, points };
}
