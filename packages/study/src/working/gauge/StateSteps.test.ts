import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, type OneGauge, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { elementOf, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { onePut, told } from "../../../../../tests/support/steps.js";
import type { Step } from "../Step.js";
import { foundState } from "./fittedSteps.js";

const readings = (changed: boolean) =>
  plainReadings(EVENLY.slice(0, 6), (at) => ({ changed: changed && at === 0, hours: 3.6e6 + 36e3 * at }));
const soiled: System = {
  ...plainSystem,
  suction: [elementOf("fitted", { drop: 1e3, filter: { restriction: 1.05 } }).filter],
};

const cases: Readonly<Record<string, OneGauge>> = {
  "new at the start": { readings: readings(true) },
  "nothing known of the start": { readings: readings(false) },
  "soil stated": {
    readings: readings(false),
    system: { ...soiled, suction: [...plainSystem.suction.slice(0, 1), ...soiled.suction] },
  },
  "no growth": { readings: readings(true), laws: ["none"] },
  "no growth, nothing known": { readings: readings(false), laws: ["none"] },
};
const at = (value: number): Step => ({ name: "t", value, unit: "s", kind: null, origin: { by: "file", path: "" } });

test("StateSteps come to the state that was fitted", () => {
  for (const [name, given] of Object.entries(cases)) {
    const { explained } = oneGauge(given);
    const { model, fit } = explained.fitted;
    const state = model.stateAt(fit.parameters);
    const steps = foundState(explained);
    expect(steps.demand.value, name).toBeCloseTo(state.demand, 12);
    expect(steps.zero.value, name).toBeCloseTo(state.zero, 9);
    for (const time of [0, 1e5, 3e5]) expect(steps.ratioAt(at(time)).value, name).toBeCloseTo(state.ratioAt(time), 9);
    expect(steps.grows, name).toBe(!name.startsWith("no growth"));
    if (steps.grows) {
      expect(steps.rate.value / state.load.rate, name).toBeCloseTo(1, 9);
      expect(steps.from.value, name).toBeCloseTo(state.load.start + state.load.rate * model.first, 12);
    }
  }
});

test("StateSteps.begun says what is known of the beginning", () => {
  const of = (name: string) => {
    const { origin, value, ...rest } = foundState(oneGauge(cases[name] as OneGauge).explained).begun;
    return { ...rest, value, by: origin.by === "words" ? origin.words : origin.by };
  };
  const plain = { name: "resistance over clean at the beginning", unit: "1", kind: "plain" };
  expect(of("new at the start")).toEqual({ ...plain, value: 1, by: "the elements were new" });
  expect(of("soil stated")).toEqual({ ...plain, value: 1.05, by: "by the soil that the file states" });
  expect(of("nothing known of the start").by).toBe("formula");
});

test("StateSteps are made once, so that figures share them", () => {
  const steps = foundState(oneGauge(cases["new at the start"] as OneGauge).explained);
  expect(steps.demand).toBe(steps.demand);
  expect(steps.rate).toBe(steps.rate);
  expect(steps.ratioAt(at(5))).toBe(steps.ratioAt(at(5)));
  expect(steps.ratioAt(at(5e5))).not.toBe(steps.ratioAt(at(5)));
});

test("StateSteps.rate of readings at one time alone goes over a second", () => {
  const same = readings(true).map((one) => ({ ...one, hours: 3.6e6 }));
  const { rate } = foundState(oneGauge({ readings: same }).explained);
  const second =
    rate.origin.by === "formula" ? rate.origin.inputs.find(({ letter }) => letter === "s")?.steps[0] : null;
  expect(second).toEqual({
    name: "a second",
    value: 1,
    unit: "s",
    kind: "running time",
    origin: { by: "words", words: "so that one reading alone has a rate", from: [] },
  });
});

test("StateSteps.demand says how far the file may be off, and StateSteps.zero how far a gauge", () => {
  const steps = foundState(oneGauge(cases["new at the start"] as OneGauge).explained);
  expect(told(onePut(steps.demand, "a"))).toEqual([
    "how far the file's demand and resistances may be off",
    0.1,
    "1",
    "ratio",
    "common practice, no source",
  ]);
  expect(onePut(steps.demand, "d").name).toBe("demand off, in standard deviations");
  expect(onePut(steps.zero, "z").name).toBe("zero off, in standard deviations");
});
