import { type Filter, type FilterGiven, filter } from "@thirstline/core";
import type { SystemFilter, SystemMedium } from "../system/index.js";

/** A filter of a system as a part of the core. */
export function toFilter(part: SystemFilter): Filter {
  const { name, housing, pleats, restriction, blocked, reversed } = part;
  return filter({
    name,
    ...sourceOf(part.medium),
    ...(housing === undefined ? {} : { housing }),
    ...(pleats === undefined ? {} : { pleats }),
    ...(restriction === undefined ? {} : { restriction }),
    blocked,
    reversed,
  });
}

function sourceOf(medium: SystemMedium): FilterGiven {
  switch (medium.by) {
    case "flow test":
      return fromFlowTest(medium);
    case "medium": {
      const { area, thickness, permeability, inertia } = medium;
      return { media: { area, thickness, permeability, ...(inertia === undefined ? {} : { inertia }) } };
    }
    case "air test": {
      const { flow, sampleArea, pressure, area } = medium;
      return { airTest: { flow, sampleArea, pressure, area } };
    }
    case "rating": {
      const { size, kind, area, thickness } = medium;
      return { rating: { size, kind, area, thickness } };
    }
    case "fibre": {
      const { diameter, solidity, area, thickness } = medium;
      return { fibre: { diameter, solidity, area, thickness } };
    }
  }
}

function fromFlowTest({ points, dynamicViscosity, density }: Extract<SystemMedium, { by: "flow test" }>): FilterGiven {
  const [first, second] = points;
  // No point at all cannot come from a file; the core refuses what a program may hand in.
  if (first === undefined) return {};
  if (second === undefined) return { clean: { ...first, dynamicViscosity } };
  return { test: { points: [first, second], density: density ?? Number.NaN, dynamicViscosity } };
}
