import { expect, test } from "vitest";
import { leftByRounding } from "./flowTestSteps.js";

/** A test at a flow and twice that: so much of the first drop goes with the flow, the rest with its square. */
const tested = (linear: number) => {
  const at = (flow: number) => ({ drop: 3000 * (linear * flow + (1 - linear) * flow ** 2), flow: flow * 2e-5 });
  return { by: "flow test", points: [at(1), at(2)], dynamicViscosity: 2.5e-3, density: 830 } as const;
};

test.each([
  [1, { linear: false, slope: true }],
  [1 - 0.5e-6, { linear: false, slope: true }],
  [1 - 2e-6, { linear: false, slope: false }],
  [0.5, { linear: false, slope: false }],
  [2e-6, { linear: false, slope: false }],
  [0.5e-6, { linear: true, slope: false }],
  [0, { linear: true, slope: false }],
  // Rounding may leave a term a hair below nothing.
  [-0.5e-6, { linear: true, slope: false }],
  [1 + 0.5e-6, { linear: false, slope: true }],
])("leftByRounding of a test %d of whose first drop goes with the flow is %j", (linear, left) => {
  expect(leftByRounding(tested(linear))).toEqual(left);
});
