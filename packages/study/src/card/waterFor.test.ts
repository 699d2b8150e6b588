import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { waterFor } from "./waterFor.js";

const wet = { deliveredFuel: { water: 0.15 } } as unknown as System;
const row = (more: object) => ({ element: "A", kind: "bowl", rate: 1e-6, drainEvery: 9, shutAfter: null, ...more });
const water = { season: "winter", temperature: 263.15, free: 0.1, stages: [row({})] };
const found = (more: object, system = wet) =>
  waterFor(system, { water: { ...water, ...more }, reasons: [] } as unknown as LifeAnswer);

test("waterFor(system, life) is the running time until each stage must be drained or changed", () => {
  const stages = [row({}), row({ kind: "absorber", element: "B", drainEvery: null, shutAfter: 5 })];
  expect(found({ stages })).toEqual({
    code: "stages",
    season: "winter",
    temperature: 263.15,
    stages: [
      { element: "A", kind: "bowl", every: 9, why: null },
      { element: "B", kind: "absorber", every: 5, why: null },
    ],
  });
});

test.each([
  [{ drainEvery: null }, "bowl not stated"],
  [{ drainEvery: null, rate: 0 }, "none comes"],
  [{ kind: "absorber", drainEvery: null, rate: 0 }, "none comes"],
])("waterFor(system, life) of a stage with %j says why nobody can tell when: %s", (more, why) => {
  expect(found({ stages: [row(more)] })).toMatchObject({ stages: [{ every: null, why }] });
});

test("waterFor(system, life) says why there is nothing to drain, or nobody can say", () => {
  const dry = { code: "no water stated" };
  expect(found({}, {} as System)).toEqual(dry);
  expect(found({}, { deliveredFuel: { code: "18/16/13" } } as unknown as System)).toEqual(dry);
  const reasons = [{ code: "no duty" as const }];
  expect(waterFor(wet, { water: null, reasons } as unknown as LifeAnswer)).toEqual({ code: "life not known", reasons });
  expect(found({ free: 0 })).toEqual({ code: "nothing free", temperature: 263.15 });
  expect(found({ stages: [] })).toEqual({ code: "no separator", temperature: 263.15, free: 0.1 });
});
