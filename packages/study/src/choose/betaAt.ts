import type { SystemFilter } from "@thirstline/spec/system";

/** A fineness a manual asks for: a beta ratio at a particle size, m. */
export interface AskedRating {
  readonly beta: number;
  readonly size: number;
}

/** Betas that the words of a rating stand for; "absolute" is taken as 75 (common practice, no source). */
const RATED = { absolute: 75, "beta 75": 75, "beta 200": 200, "beta 1000": 1000 } as const;

/** Beyond 1000 a test sheet only says "more". */
const MOST = 1000;

/**
 * Whether a filter is tested to a beta ratio at a size, or at a smaller one; null where its sheet does not say.
 *
 * Only tested points count: betas rise with size, so a point at the size or below it that reaches the ratio is proof, and
 * a point at the size or above it that does not is proof of the contrary.
 */
export function reachesRating(filter: SystemFilter, { beta, size }: AskedRating): boolean | null {
  const asked = Math.min(beta, MOST);
  const points = pointsOf(filter);
  const close = 1 + 1e-9;
  if (points.some((one) => one.size <= size * close && one.beta >= asked)) return true;
  return points.some((one) => one.size >= size / close && one.beta < asked) ? false : null;
}

function pointsOf({ betas, statedRating, medium }: SystemFilter): AskedRating[] {
  if (betas) return betas.map(({ beta, size }) => ({ beta, size }));
  const rating = statedRating ?? (medium.by === "rating" ? medium : undefined);
  if (!rating || rating.kind === "nominal") return [];
  return [{ beta: RATED[rating.kind], size: rating.size }];
}
