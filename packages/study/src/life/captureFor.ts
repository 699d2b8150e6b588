import { type Capture, type CaptureGiven, captureOf } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";

/** What was worked out of some betas, and the leak and direction it holds for. */
interface Kept {
  readonly leak: number;
  readonly reversed: boolean;
  readonly capture: Capture;
}

/** By the file's own list of betas: draws of other figures share it, and need not work it out thousands of times. */
const kept = new WeakMap<object, Kept>();

/** How a filter catches, as its file states it. */
export function captureFor(filter: SystemFilter): Capture {
  const { betas, leak = 0, reversed } = filter;
  const known = betas && kept.get(betas);
  if (known && known.leak === leak && known.reversed === reversed) return known.capture;
  const rating = filter.statedRating ?? (filter.medium.by === "rating" ? filter.medium : undefined);
  const given: CaptureGiven = {
    ...(betas === undefined ? {} : { betas }),
    ...(rating === undefined ? {} : { rating }),
    leak,
    reversed,
  };
  const capture = captureOf(given);
  if (betas) kept.set(betas, { leak, reversed, capture });
  return capture;
}
