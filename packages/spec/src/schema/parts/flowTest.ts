import type { z } from "zod";
import type { SystemMedium } from "../../system/Filter.js";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { measured, viscous } from "../leaves/index.js";
import { list } from "../list.js";
import { checkTestFluid, dynamicViscosityOf } from "../testFluid.js";

const point = also(
  block("a flow test's point", "{ drop: 2 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }", {
    drop: measured("drop"),
    flow: measured("flow"),
    viscosity: viscous(),
    density: measured("density").optional(),
  }),
  checkTestFluid,
);

/** A flow test of a clean element at one or two flows, as a file has it. */
export const flowTest = also(
  list("a flow test", "[{ drop: 2 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }]", point, {
    least: 1,
    most: 2,
    of: "point",
  }),
  (points, report) => checkTwo(points as FlowTestData, report),
);

type FlowTestData = z.output<typeof flowTest>;

function checkTwo(points: FlowTestData, report: Report): void {
  const [first, second] = points;
  if (typeof first !== "object" || typeof second !== "object") return;
  if (first.density === undefined && "dynamic" in (first.viscosity ?? {})) {
    report(
      [0, "density"],
      "missing",
      'missing; a flow test of two points needs its fluid\'s density, such as "830 kg/m3"',
    );
  }
  if (second.density === undefined && "dynamic" in (second.viscosity ?? {})) {
    report(
      [1, "density"],
      "missing",
      'missing; a flow test of two points needs its fluid\'s density, such as "830 kg/m3"',
    );
  }
  if (differ(dynamicViscosityOf(first), dynamicViscosityOf(second)) || differ(first.density, second.density)) {
    const message =
      "the two points of a flow test were not in the same fluid; write the viscosity and density of one fluid";
    report([1], "fluids differ", message);
    return;
  }
  if (first.flow === second.flow) {
    report([1, "flow"], "same flow", "the same flow as in the first point; a second point needs another flow");
    return;
  }
  checkTerms(first, second, report);
}

function differ(left: number | undefined, right: number | undefined): boolean {
  return left !== undefined && right !== undefined && Math.abs(left - right) > 1e-9 * Math.abs(left);
}

/** The two points must lie on a curve of a linear and a quadratic part, neither of them negative. */
function checkTerms(
  first: { readonly drop: number; readonly flow: number },
  second: { readonly drop: number; readonly flow: number },
  report: Report,
): void {
  const [slow, fast] = first.flow < second.flow ? [first, second] : [second, first];
  const slope = (fast.drop / fast.flow - slow.drop / slow.flow) / (fast.flow - slow.flow);
  const start = slow.drop / slow.flow - slope * slow.flow;
  const rounding = (1e-12 * slow.drop) / slow.flow;
  const check = "no clean element behaves so; check the figures";
  if (slope * fast.flow < -rounding) {
    report([1, "drop"], "drop lags", `the drop grows less than in step with the flow; ${check}`);
  }
  if (start < -rounding) {
    report([1, "drop"], "drop runs ahead", `the drop grows faster than with the flow squared; ${check}`);
  }
}

/** A flow test in SI. */
export function toFlowTest(points: FlowTestData): SystemMedium {
  const [first] = points;
  const density = points.map((one) => one.density).find((one) => one !== undefined);
  return given({
    by: "flow test",
    points: points.map(({ drop, flow }) => ({ drop, flow })).sort((left, right) => left.flow - right.flow),
    dynamicViscosity: first === undefined ? Number.NaN : dynamicViscosityOf(first),
    density,
  });
}
