import { expect, test } from "vitest";
import { waterThroughStages } from "./waterThroughStages.js";

test("waterThroughStages(given) hands on from stage to stage what each leaves", () => {
  const flow = 5e-5;
  const stages = [
    { kind: "separator", name: "bowl", separation: { efficiency: 0.8, flow }, bowl: 2e-4 },
    { kind: "absorber", name: "paper", separation: { efficiency: 0.5, flow } },
    { kind: "absorber", name: "screen", separation: { efficiency: 0, flow } },
  ] as const;
  const close = (value: number) => expect.closeTo(value, 12);
  expect(waterThroughStages({ free: 0.1, flow, stages })).toEqual([
    {
      name: "bowl",
      kind: "separator",
      efficiency: close(0.8),
      removed: close(0.08),
      carriedOn: close(0.02),
      // 0.08 kg of water in a cubic metre is some 80 mL of it; 0.2 L are full after some 2.5 m3 of fuel.
      drainEvery: expect.closeTo((2.5 / flow) * (998.2 / 1000), -2),
    },
    { name: "paper", kind: "absorber", efficiency: close(0.5), removed: close(0.01), carriedOn: close(0.01) },
    { name: "screen", kind: "absorber", efficiency: 0, removed: 0, carriedOn: close(0.01) },
  ]);
});
