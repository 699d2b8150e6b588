import type { z } from "zod";
import type { SystemFuelMeasured } from "../system/Fuel.js";
import { also, type Report } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { measured } from "./leaves/index.js";
import { list } from "./list.js";
import { isScalar, shorthand } from "./shorthand.js";

const viscosityPoints = also(
  list(
    "a list of measured viscosities",
    "[{ at: 40 degC, is: 2.6 mm2/s }]",
    block("a measured viscosity", "{ at: 40 degC, is: 2.6 mm2/s }", {
      at: measured("temperature"),
      is: measured("kinematicViscosity"),
    }),
    { least: 1, most: 20, of: "point" },
  ),
  (points, report) => checkFalling(points as Point[], "viscosity", report),
);

const densityPoints = shorthand(
  also(
    list(
      "a density",
      "835 kg/m3",
      block("a measured density", "{ at: 15 degC, is: 835 kg/m3 }", {
        at: measured("temperature"),
        is: measured("density"),
      }),
      { least: 1, most: 20, of: "point" },
    ),
    (points, report) => checkFalling(points as Point[], "density", report),
  ),
  (value) => (isScalar(value) ? [{ at: "15 degC", is: value }] : value),
  { type: "string", description: 'density at 15 degC, such as "835 kg/m3"' },
);

interface Point {
  readonly at: number;
  readonly is: number;
}

/** Every fuel gets thinner and lighter as it warms; two figures at one temperature contradict each other. */
function checkFalling(points: readonly Point[], what: "viscosity" | "density", report: Report): void {
  const order = points.map((_, index) => index).filter((index) => typeof points[index] === "object");
  order.sort((left, right) => (points[left]?.at ?? 0) - (points[right]?.at ?? 0));
  order.forEach((index, place) => {
    const [here, colder] = [points[index], points[order[place - 1] ?? -1]];
    if (here === undefined || colder === undefined) return;
    if (here.at === colder.at) {
      report([index, "at"], "same temperature", `the ${what} at this temperature is stated already; leave one out`);
    } else if (here.is >= colder.is) {
      const message = `not less than when colder; every fuel's ${what} falls as it warms: check both points`;
      report([index, "is"], `${what} rises`, message);
    }
  });
}

/** What may be measured of any fuel, as a file has it. */
export const measuredKeys = {
  viscosity: viscosityPoints.optional(),
  density: densityPoints.optional(),
  "cloud point": measured("coldPoint").optional(),
  CFPP: measured("coldPoint").optional(),
  "vapour pressure": measured("vapourPressure").optional(),
  temperature: measured("temperature"),
};

type MeasuredData = { readonly [Key in keyof typeof measuredKeys]?: z.output<(typeof measuredKeys)[Key]> };

/** Faults a plugging point above the cloud point: the filter is blocked by the wax that shows at the cloud point. */
export function checkMeasured(data: MeasuredData, report: Report): void {
  if ((data.CFPP ?? Number.NaN) > (data["cloud point"] ?? Number.NaN)) {
    report(
      ["CFPP"],
      "CFPP over cloud point",
      "above the cloud point; wax shows at the cloud point before it plugs a filter",
    );
  }
}

/** What was measured, in SI; undefined when nothing was. */
export function toMeasured(data: MeasuredData): SystemFuelMeasured | undefined {
  const found: SystemFuelMeasured = given({
    viscosity: data.viscosity?.map(({ at, is }) => ({ temperature: at, kinematicViscosity: is })),
    density: data.density?.map(({ at, is }) => ({ temperature: at, density: is })),
    cloudPoint: data["cloud point"],
    coldFilterPluggingPoint: data.CFPP,
    reid: data["vapour pressure"],
  });
  return Object.keys(found).length === 0 ? undefined : found;
}
