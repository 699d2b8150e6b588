import type { GaugeSide, Outlier } from "./GaugeAnswer.js";
import type { Instant } from "./Instant.js";
import type { SideFit } from "./SideFit.js";
import { placeOf, sizeOf } from "./sizedOf.js";

/** Readings that stand off, with what the others let expect. */
export function outliersOf(side: GaugeSide, fit: SideFit | null): Outlier[] {
  if (!fit) return [];
  const { weighed, explained } = fit;
  const { instants } = weighed.run;
  return explained.terms.flatMap((term, at): Outlier[] => {
    if (term.kind !== "outlier") return [];
    const instant = instants[term.at] as Instant;
    const deviations = sizeOf(fit, at);
    const sign = side === "delivery" ? -1 : 1;
    const expected = instant.read - deviations * (weighed.sigmas[term.at] as number);
    return [
      {
        ...placeOf(instant),
        side,
        read: sign * instant.read,
        expected: sign * expected,
        deviations: sign * deviations,
      },
    ];
  });
}
