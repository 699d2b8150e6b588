import type { z } from "zod";
import type { SystemCapacityTest } from "../../system/Filter.js";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { measured, viscous } from "../leaves/index.js";
import { list } from "../list.js";
import { shorthand } from "../shorthand.js";
import { checkTestFluid, dynamicViscosityOf } from "../testFluid.js";

const example = "{ soil: 40 g, rise: 35 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }";

const one = also(
  block("a capacity test", example, {
    soil: measured("mass"),
    rise: measured("pressure"),
    flow: measured("flow"),
    viscosity: viscous(),
    density: measured("density").optional(),
  }),
  checkTestFluid,
).meta({ id: "capacityTest" });

/** A capacity test, or two of one element that ended at different loads, as a file has them. */
export const capacityTests = shorthand(
  also(list("a capacity test", example, one, { least: 1, most: 2, of: "test" }), (tests, report) =>
    checkTwo(tests as Test[], report),
  ),
  (value) => (Array.isArray(value) || value === undefined || value === null ? value : [value]),
  { $ref: "#/$defs/capacityTest" },
);

type Test = z.output<typeof one>;

/** Two tests of one element: what took more soil has grown more restrictive. */
function checkTwo([first, second]: readonly Test[], report: Report): void {
  if (typeof first !== "object" || typeof second !== "object") return;
  if (first.soil === second.soil) {
    report([1, "soil"], "same soil", "as much soil as in the first test; a second test ends at another load");
    return;
  }
  const [light, heavy] = first.soil < second.soil ? [first, second] : [second, first];
  if (growth(heavy) <= growth(light)) {
    const message = "more soil and no more restriction (rise for its flow and viscosity); check both tests";
    report([1, "rise"], "tests contradict", message);
  }
}

/** Rise for flow and viscosity: what the growth of the medium's resistance is in step with. */
function growth(test: Test): number {
  return test.rise / (test.flow * dynamicViscosityOf(test));
}

/** Capacity tests in SI, by rising soil. */
export function toCapacityTests(tests: readonly Test[]): SystemCapacityTest[] {
  return tests
    .map((test): SystemCapacityTest => {
      const { soil, rise, flow, density } = test;
      return given({ soil, rise, flow, dynamicViscosity: dynamicViscosityOf(test), density });
    })
    .sort((left, right) => left.soil - right.soil);
}
