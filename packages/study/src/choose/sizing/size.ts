import type { CatalogueElement, System } from "@thirstline/spec/system";
import type { SizeAnswer } from "./SizeAnswer.js";
import type { SizeOptions } from "./SizeOptions.js";
import { type SizeProgress, sizeSteps } from "./sizeSteps.js";

/** Whether to stop: an AbortSignal will do. */
export interface Stop {
  readonly aborted: boolean;
  readonly reason?: unknown;
}

/** How a search runs beside other work. */
export interface SizeRun {
  readonly signal?: Stop;
  /** told how far it is, some hundreds of times */
  readonly onProgress?: (progress: SizeProgress) => void;
  /** lets other work have its turn; the caller knows how its platform does that. The search runs through when left out */
  readonly pause?: () => Promise<void>;
}

/**
 * `sizeSteps` to the end, with progress, and stopped when a signal says so.
 *
 * @throws what the signal gives as its reason, or an Error named "AbortError"
 * @example
 * await size(system, elements, { stages: 1 }, { signal, pause: () => new Promise((resolve) => setTimeout(resolve)) })
 */
export async function size(
  system: System,
  elements: readonly CatalogueElement[],
  options: SizeOptions = {},
  run: SizeRun = {},
): Promise<SizeAnswer> {
  const steps = sizeSteps(system, elements, options);
  for (let passed = 0; ; passed++) {
    if (run.signal?.aborted) throw run.signal.reason ?? Object.assign(new Error("stopped"), { name: "AbortError" });
    const step = steps.next();
    if (step.done) return step.value;
    run.onProgress?.(step.value);
    if (run.pause && passed % 8 === 7) await run.pause();
  }
}
