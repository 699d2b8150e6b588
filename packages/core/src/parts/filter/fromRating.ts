import { requireMoreThan } from "../../require.js";
import type { Medium } from "./Medium.js";

/** How a micron rating was stated. */
export type RatingKind = "nominal" | "absolute" | "beta 75" | "beta 200" | "beta 1000";

/** An element known only by its rating and size. */
export interface Rating {
  /** m */
  readonly size: number;
  readonly kind: RatingKind;
  /** of the medium, m2 */
  readonly area: number;
  /** of the medium, m */
  readonly thickness: number;
}

// All common practice, no source: the mean flow pore is 1 to 2 times the size at which beta is 75 or more. A nominal
// rating has no agreed meaning, so its pore is let lie further out still.
const PORES_PER_RATED_SIZE = { nominal: { low: 1, high: 4 }, rated: { low: 1, high: 2 } };
// Fuel media, cellulose to glass: A. Hutten, Handbook of Nonwoven Filter Media (2007), from memory, low.
const POROSITY = { low: 0.6, high: 0.95 };
// Path length over thickness; common practice, no source.
const TORTUOSITY = { low: 1, high: 1.5 };

/**
 * An estimate of a medium from its rating: parallel tubes of the mean flow pore D, permeability = porosity D^2/(32 T^2).
 * A rating is not a pore size, so the answer is a wide band and never stands in for a tested figure.
 *
 * @see F. A. L. Dullien, Porous Media (1992), for the parallel-tube form
 */
export function fromRating(rating: Rating): Medium {
  requireMoreThan("filter", "rating.size", rating.size, 0, "m");
  requireMoreThan("filter", "rating.area", rating.area, 0, "m2");
  requireMoreThan("filter", "rating.thickness", rating.thickness, 0, "m");
  const pores = PORES_PER_RATED_SIZE[rating.kind === "nominal" ? "nominal" : "rated"];
  const resistance = (pore: number, porosity: number, tortuosity: number) =>
    (32 * tortuosity ** 2 * rating.thickness) / (porosity * pore ** 2 * rating.area);
  const low = resistance(pores.high * rating.size, POROSITY.high, TORTUOSITY.low);
  const high = resistance(pores.low * rating.size, POROSITY.low, TORTUOSITY.high);
  return { source: "rating estimate", linear: { low, middle: Math.sqrt(low * high), high }, quadratic: 0 };
}
