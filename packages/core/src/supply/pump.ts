import { InputError } from "../InputError.js";
import { requireAtLeast, requireMoreThan } from "../require.js";
import type { CurvePump, Pump } from "./PumpKinds.js";

/**
 * Checks the figures of a pump and hands it back.
 *
 * @throws InputError naming the field: a flow, relief or suction that is not more than 0, slip figures that are not, a
 * curve of fewer than two points, one whose flows do not grow, or one whose rise grows with flow
 * @example
 * pump({ kind: "fixed", flow: 1.4e-4, slip: null, relief: 80e3, reliefTo: "inlet" })
 */
export function pump(given: Pump): Pump {
  switch (given.kind) {
    case "none":
      break;
    case "fixed":
      requireMoreThan("pump", "flow", given.flow, 0, "m3/s");
      requireMoreThan("pump", "relief", given.relief, 0, "Pa");
      if (given.slip) {
        requireAtLeast("pump", "slip.flow", given.slip.flow, 0, "m3/s");
        requireMoreThan("pump", "slip.rise", given.slip.rise, 0, "Pa");
        requireMoreThan("pump", "slip.dynamicViscosity", given.slip.dynamicViscosity, 0, "Pa s");
      }
      break;
    case "curve":
      requireCurve(given);
      break;
    case "pulse":
      requireMoreThan("pump", "flow", given.flow, 0, "m3/s");
      requireMoreThan("pump", "suction", given.suction, 0, "Pa");
  }
  return given;
}

function requireCurve({ points }: CurvePump): void {
  if (points.length < 2) throw new InputError("pump", "points", "two or more", points.length);
  points.forEach((point, at) => {
    const before = points[at - 1];
    requireAtLeast("pump", `points[${at}].flow`, point.flow, 0, "m3/s");
    requireAtLeast("pump", `points[${at}].rise`, point.rise, 0, "Pa");
    if (!before) return;
    requireMoreThan("pump", `points[${at}].flow`, point.flow, before.flow, "m3/s");
    if (!(point.rise <= before.rise)) {
      throw new InputError(
        "pump",
        `points[${at}].rise`,
        `at most ${before.rise} Pa, as at the smaller flow`,
        point.rise,
      );
    }
  });
}
