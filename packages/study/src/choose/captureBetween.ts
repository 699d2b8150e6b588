import { captureOf, type KnownCapture } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";

/** How a filter catches beside another: at every size of particle as much, more, or less; or now more, now less. */
export type Fineness = "same" | "finer" | "coarser" | "mixed" | "not known";

/** What a filter catches by its betas or its rating, fitted the right way round; null where nobody can say. */
export function captureBy(filter: SystemFilter): KnownCapture | null {
  const rating = filter.statedRating ?? (filter.medium.by === "rating" ? filter.medium : undefined);
  const capture = captureOf({
    ...(filter.betas === undefined ? {} : { betas: filter.betas }),
    ...(rating === undefined ? {} : { rating }),
    ...(filter.leak === undefined ? {} : { leak: filter.leak }),
  });
  return capture.known ? capture : null;
}

/** Less than this share of the particles of a size is no difference. */
const SAME = 1e-9;

/** How one filter catches beside another, size by size. */
export function captureBetween(fitted: SystemFilter, other: SystemFilter): Fineness {
  const [here, there] = [captureBy(fitted), captureBy(other)];
  if (!here || !there) return "not known";
  let more = false;
  let less = false;
  here.efficiency.middle.forEach((share, bin) => {
    const difference = (there.efficiency.middle[bin] ?? 0) - share;
    if (difference > SAME) more = true;
    if (difference < -SAME) less = true;
  });
  if (more && less) return "mixed";
  return more ? "finer" : less ? "coarser" : "same";
}
