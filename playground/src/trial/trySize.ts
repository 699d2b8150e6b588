import type { SystemFilter, SystemFlowPoint, SystemMedium } from "@thirstline/spec/system";
import { ratedSize } from "./ratedSize.js";
import type { SheetFilter, Tried } from "./Tried.js";

/**
 * A filter with its element made finer or coarser, all else the same. A medium that is estimated from its rating is
 * estimated from the new one. A tested one has its resistance scaled by the square of the size, and its betas moved along,
 * which is assumed: what it was is kept in `tried`, and comes back at its own size.
 *
 * @param size m
 */
export function trySize(filter: SheetFilter, size: number): SheetFilter {
  const { tried, ...now } = filter;
  const stated: SystemFilter = tried === undefined ? now : { ...withoutSizes(now), ...statedOf(tried) };
  const own = ratedSize(stated);
  if (own === null || Math.abs(size / own - 1) < 1e-9) return stated;
  const by = size / own;
  const { medium, betas, statedRating } = stated;
  const moved = {
    ...stated,
    medium: scaled(medium, by),
    ...(betas === undefined ? {} : { betas: betas.map((one) => ({ ...one, size: digits(one.size * by) })) }),
    ...(statedRating === undefined ? {} : { statedRating: { ...statedRating, size } }),
  };
  if (medium.by === "rating" && betas === undefined) return moved;
  const kept: Tried = {
    size: own,
    medium,
    ...(betas === undefined ? {} : { betas }),
    ...(statedRating === undefined ? {} : { statedRating }),
  };
  return { ...moved, tried: kept };
}

function withoutSizes({ betas: _, statedRating: __, ...rest }: SystemFilter): SystemFilter {
  return rest;
}

function statedOf({
  size: _,
  betas,
  statedRating,
  medium,
}: Tried): Pick<SystemFilter, "medium" | "betas" | "statedRating"> {
  return {
    medium,
    ...(betas === undefined ? {} : { betas }),
    ...(statedRating === undefined ? {} : { statedRating }),
  };
}

/** A medium of pores so many times as wide: its permeability goes by the square. */
function scaled(medium: SystemMedium, by: number): SystemMedium {
  switch (medium.by) {
    case "flow test":
      return { ...medium, points: scaledPoints(medium.points, 1 / by ** 2) };
    case "medium":
      return { ...medium, permeability: digits(medium.permeability * by ** 2) };
    case "air test":
      return { ...medium, flow: digits(medium.flow * by ** 2) };
    case "rating":
      return { ...medium, size: digits(medium.size * by) };
    case "fibre":
      return { ...medium, diameter: digits(medium.diameter * by) };
  }
}

/** Of two points only the part that grows with the flow is the medium's; what grows with its square stays. */
function scaledPoints(points: readonly SystemFlowPoint[], by: number): SystemFlowPoint[] {
  const [first, second] = points;
  if (first === undefined) return [];
  if (second === undefined) return [{ ...first, drop: digits(first.drop * by) }];
  const [slow, fast] = [first.drop / first.flow, second.drop / second.flow];
  const linear = slow - ((fast - slow) / (second.flow - first.flow)) * first.flow;
  return points.map((one) => ({ ...one, drop: digits(one.drop + (by - 1) * linear * one.flow) }));
}

/** As a file would hold it. */
function digits(value: number): number {
  return Number(value.toPrecision(6));
}
