import type { CatalogueElement, System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { demoElements } from "../../../../../tests/properties/choose/arrangements.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { check } from "../../check/check.js";
import { SlipGate } from "./SlipGate.js";
import { arranged, stackOf } from "./stack.js";

const elements = demoElements("elements.csv").slice(0, 4);

/** A pump that slips and relieves to the tank: what it moves hangs on the drops it moves it against. */
const system: System = {
  ...demoSystem("heron"),
  pump: {
    kind: "fixed",
    flow: 480e-3 / 3600,
    relief: 120e3,
    reliefTo: "tank",
    slip: { flow: 60e-3 / 3600, rise: 100e3, dynamicViscosity: 2.5e-3 },
  },
};
const stack = stackOf(system, "suction");
const warm = 288.15;
const cold = 263.15;

describe.each([
  ["one stage of two", [[0, 2]]],
  ["one stage of one", [[1, 1]]],
  [
    "two stages",
    [
      [0, 1],
      [2, 3],
    ],
  ],
] as const)("SlipGate of %s", (_, stages) => {
  const gate = SlipGate.of(stack, null, { temperatures: [warm, cold], elements });
  const sums = stages.reduce((before, [element, count]) => gate.with(before, element, count), gate.none);
  const whole = arranged(stack, {
    stages: stages.map(([element, count]) => ({ element: elements[element] as CatalogueElement, count })),
    bore: null,
  });

  test("vacuum(sums) is the most of what the whole model says, warm and cold", () => {
    const { points } = check(whole, { temperatures: [warm, cold] });
    const most = Math.max(...points.map(({ vacuum }) => vacuum.middle));
    expect(Math.abs(gate.vacuum(sums) - most)).toBeLessThan(1);
  });

  test("judge(sums) finds broken what has not a fifth in hand by the whole model; the clean limit, what is over it", () => {
    for (const atChange of [10e3, 20e3, 30e3, 40e3, 60e3]) {
      const limits = { ...system.limits, vacuumClean: atChange / 2, vacuumAtChange: atChange };
      const limited = SlipGate.of(stackOf({ ...system, limits }, "suction"), null, { temperatures: [cold], elements });
      const own = stages.reduce((before, [element, count]) => limited.with(before, element, count), limited.none);
      const [point] = check({ ...whole, limits }, { temperatures: [cold] }).points;
      const { broken, close } = limited.judge(own);
      expect(close).toBe(false);
      expect(broken.has("vacuum clean")).toBe((point?.vacuum.high ?? 0) > limits.vacuumClean);
      if ((point?.vacuum.low ?? 0) > atChange) expect(broken).toContain("vacuum at change");
      if ((point?.vacuum.high ?? 0) < atChange / 1.5) expect(broken).not.toContain("vacuum at change");
    }
  });
});
