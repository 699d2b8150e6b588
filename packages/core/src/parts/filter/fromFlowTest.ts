import { InputError } from "../../InputError.js";
import { requireMoreThan } from "../../require.js";
import { exactly } from "../Band.js";
import type { Medium } from "./Medium.js";

/** One measured point of a clean filter. */
export interface FlowPoint {
  /** Pa */
  readonly drop: number;
  /** m3/s */
  readonly flow: number;
}

/** A flow test of one point. */
export interface OnePointTest extends FlowPoint {
  /** of the test fluid, Pa s */
  readonly dynamicViscosity: number;
}

/** A flow test of two points in the same fluid. */
export interface TwoPointTest {
  readonly points: readonly [FlowPoint, FlowPoint];
  /** of the test fluid, kg/m3 */
  readonly density: number;
  /** of the test fluid, Pa s */
  readonly dynamicViscosity: number;
}

/** A medium from one tested point: all of the drop is taken as linear, since one point cannot tell more. */
export function fromOnePoint(test: OnePointTest): Medium {
  requirePoint("clean", test);
  requireMoreThan("filter", "clean.dynamicViscosity", test.dynamicViscosity, 0, "Pa s");
  const linear = test.drop / (test.flow * test.dynamicViscosity);
  return { source: "one-point flow test", linear: exactly(linear), quadratic: 0 };
}

/**
 * A medium from two tested points, which fix both terms: drop/flow is a straight line over flow, its start the linear
 * part and its slope the quadratic. Points that make either part negative contradict the law and are refused.
 */
export function fromTwoPoints(test: TwoPointTest): Medium {
  requireMoreThan("filter", "test.density", test.density, 0, "kg/m3");
  requireMoreThan("filter", "test.dynamicViscosity", test.dynamicViscosity, 0, "Pa s");
  test.points.forEach((point, at) => {
    requirePoint(`test.points[${at}]`, point);
  });
  const [slow, fast] = [...test.points].sort((a, b) => a.flow - b.flow) as [FlowPoint, FlowPoint];
  requireMoreThan("filter", "test.points' larger flow", fast.flow, slow.flow, "m3/s");
  const slope = (fast.drop / fast.flow - slow.drop / slow.flow) / (fast.flow - slow.flow);
  const start = slow.drop / slow.flow - slope * slow.flow;
  // Rounding alone may leave a hair below zero in a test that is exactly linear.
  const rounding = (1e-12 * slow.drop) / slow.flow;
  if (slope * fast.flow < -rounding) {
    throw new InputError(
      "filter",
      "test.points",
      "a drop that grows at least in step with flow (quadratic term)",
      slope,
    );
  }
  if (start < -rounding) {
    throw new InputError("filter", "test.points", "a drop that grows less than with flow squared (linear term)", start);
  }
  return {
    source: "two-point flow test",
    linear: exactly(Math.max(0, start) / test.dynamicViscosity),
    quadratic: Math.max(0, slope) / test.density,
  };
}

function requirePoint(path: string, point: FlowPoint): void {
  requireMoreThan("filter", `${path}.drop`, point.drop, 0, "Pa");
  requireMoreThan("filter", `${path}.flow`, point.flow, 0, "m3/s");
}
