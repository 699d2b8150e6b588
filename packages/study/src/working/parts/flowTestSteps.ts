import type { SystemFilter, SystemMedium } from "@thirstline/spec/system";
import * as formulas from "../formulas/filters.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { ofPart, type PartScene } from "./PartScene.js";

type FilterScene = PartScene<SystemFilter>;

type FlowTest = Extract<SystemMedium, { by: "flow test" }>;

/** The test's fluid and points, the smaller flow first. */
export function testOf(given: FilterScene, { points, dynamicViscosity, density }: FlowTest) {
  const point = (at: number, key: "drop" | "flow") => {
    const unit =
      key === "drop" ? ({ unit: "Pa", kind: "pressure" } as const) : ({ unit: "m3/s", kind: "flow" } as const);
    const value = points[at]?.[key] ?? Number.NaN;
    return ofPart(given, `flow test[${at}].${key}`, { name: `${key} in the test`, value, ...unit });
  };
  const name = "dynamic viscosity of the test fluid";
  return {
    point,
    mu: ofPart(given, "flow test[0].viscosity", {
      name,
      value: dynamicViscosity,
      unit: "Pa s",
      kind: "dynamic viscosity",
    }),
    rho: ofPart(given, "flow test[0].density", {
      name: "density of the test fluid",
      value: density ?? Number.NaN,
      unit: "kg/m3",
      kind: "density",
    }),
  };
}

/** Resistance of the clean medium by its flow test. */
export function testedResistance(given: FilterScene, medium: FlowTest): Step {
  const { point, mu } = testOf(given, medium);
  if (medium.points.length < 2)
    return worked(formulas.onePointResistance, { dp: point(0, "drop"), mu, Q: point(0, "flow") });
  const rest = leftByRounding(medium);
  if (rest.linear) return fromRounding("resistance of the clean medium", "1/m3");
  const s = rest.slope ? fromRounding("slope of drop over flow", "Pa s2/m6") : slopeOf(given, medium);
  return worked(formulas.twoPointResistance, { dp_1: point(0, "drop"), Q_1: point(0, "flow"), s, mu });
}

/** Slope of drop over flow between the two points of a test. */
export function slopeOf(given: FilterScene, medium: FlowTest): Step {
  const { point } = testOf(given, medium);
  return worked(formulas.testSlope, {
    dp_1: point(0, "drop"),
    Q_1: point(0, "flow"),
    dp_2: point(1, "drop"),
    Q_2: point(1, "flow"),
  });
}

/** A term smaller than this share of the drop is a difference of nearly equal figures, and tells of rounding only. */
const ROUNDING = 1e-6;

/** Which term of a test of two points is all but nothing: the points lie on a straight line, or on a parabola. */
export function leftByRounding({ points: [slow, fast] }: FlowTest): {
  readonly linear: boolean;
  readonly slope: boolean;
} {
  if (!slow || !fast) return { linear: false, slope: false };
  const [first, second] = [slow.drop / slow.flow, fast.drop / fast.flow];
  const start = first - ((second - first) / (fast.flow - slow.flow)) * slow.flow;
  return { linear: Math.abs(start) < ROUNDING * first, slope: Math.abs(second - first) < ROUNDING * first };
}

/** A term of which the test leaves nothing but rounding. */
export function fromRounding(name: string, unit: string): Step {
  return inWords("the tested points leave nothing of it but rounding", { name, value: 0, unit });
}
