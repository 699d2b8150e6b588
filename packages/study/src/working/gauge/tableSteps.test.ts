import type { GaugeReading, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import {
  EVENLY,
  METRE,
  type OneGauge,
  oneGauge,
  plainBothSides,
  plainReadings,
} from "../../../../../tests/support/gaugeScenes.js";
import { litresAnHour, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { putIn, stepsIn, told } from "../../../../../tests/support/steps.js";
import type { Instant } from "../../gauge/Instant.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { tableStep } from "./tableSteps.js";

const few = plainReadings(EVENLY.slice(0, 3), (at) => ({ feedPressure: 60e3 - 900 * at }));
const number = (name: string, value: number): Step => ({
  name,
  value,
  unit: "1",
  kind: "plain",
  origin: { by: "file", path: "x" },
});
const without = (...keys: (keyof GaugeReading)[]) =>
  few.map(
    (one) =>
      Object.fromEntries(Object.entries(one).filter(([key]) => !keys.includes(key as never))) as never as GaugeReading,
  );

function at(asked: OneGauge, f: number, r: number, depth: "whole" | "model" = "whole") {
  const { explained } = oneGauge(asked);
  const instant = explained.instants[1] as Instant;
  return { step: tableStep(explained, instant, number("f", f), number("r", r), depth), instant };
}

test("tableStep(fit, instant, f, r) of a vacuum is the metre and so many clean drops at so much of the demand, by hand", () => {
  expect(at({ readings: few }, 1.1, 3).step.value).toBeCloseTo(METRE + 1000 * 1.1 * 3, 4);
  const half = few.map((one) => ({ ...one, load: 0.5, depth: 0.25 }));
  expect(at({ readings: half }, 1.1, 3).step.value).toBeCloseTo(0.75 * METRE + 500 * 1.1 * 3, 4);
  const flows = few.map((one) => ({ ...one, flow: 100 * litresAnHour }));
  expect(at({ readings: flows }, 1, 4).step.value).toBeCloseTo(METRE + 500 * 4, 4);
  // A level that nobody noted is half-way between full and low: half a metre.
  expect(at({ readings: without("depth") }, 1, 4).step.value).toBeCloseTo(METRE / 2 + 4000, 4);
});

const cases: Readonly<Record<string, OneGauge>> = {
  "a vacuum": { readings: few },
  "no load noted": { readings: without("load") },
  "no temperature noted": { readings: without("temperature") },
  "no level noted": { readings: without("depth") },
  "a feed pressure with the vacuum": { readings: few, side: "delivery", system: plainBothSides },
  "a feed pressure alone": { readings: without("vacuum"), side: "delivery", system: plainBothSides },
  "a feed pressure behind a relief to the tank": {
    readings: few,
    side: "delivery",
    system: { ...plainBothSides, pump: { kind: "fixed", flow: 400 * litresAnHour, relief: 80e3, reliefTo: "tank" } },
  },
  "no pump": {
    readings: few,
    system: {
      ...plainSystem,
      pump: { kind: "none" },
      suction: [{ part: "rise", name: "fall", height: -2 }, ...plainSystem.suction.slice(1)],
    },
  },
};

test("tableStep(fit, instant, f, r) comes to the table that was fitted, worked out or told", () => {
  for (const [name, asked] of Object.entries(cases)) {
    for (const [f, r] of [
      [1, 1],
      [0.8, 2],
      [1.3, 7],
    ] as const) {
      for (const depth of ["whole", "model"] as const) {
        const { step, instant } = at(asked, f, r, depth);
        expect(step.value, `${name}, ${f} ${r} ${depth}`).toBeCloseTo(instant.table.at(f, r), 4);
      }
    }
  }
});

test("tableStep(fit, instant, f, r, 'model') tells each figure of the model and no further", () => {
  const { step, instant } = at({ readings: few }, 1.1, 3, "model");
  expect(putIn(step, "a")[2]).toEqual({
    name: "what the model lets read",
    value: instant.table.at(1.4, 2.2),
    unit: "Pa",
    kind: "pressure",
    origin: {
      by: "words",
      words:
        "what the model says at reading 2 with 1.4 times the demand and the element that goes first 2.2 times clean; " +
        "its working is that of the pressure reckoned there",
      from: [],
    },
  });
  expect(putIn(step, "b").map(({ value }) => value)).toEqual(
    [0.7, 1, 1.4].map((f) => expect.closeTo(instant.table.at(f, 3.3), 6)),
  );
  const words = { by: "words", words: "of the model's table", from: [] };
  expect(putIn(step, "i")).toEqual([{ ...number("the lesser resistance", 2.2), origin: words }]);
  expect(putIn(step, "j")).toEqual([{ ...number("the larger resistance", 3.3), origin: words }]);
  expect(putIn(step, "w").map(({ value }) => value)).toEqual(
    // The parabola through 0.7, 1 and 1.4, at 1.1.
    [(0.1 * -0.3) / (-0.3 * -0.7), (0.4 * -0.3) / (0.3 * -0.4), (0.4 * 0.1) / (0.7 * 0.4)].map((one) =>
      expect.closeTo(one, 12),
    ),
  );
  expect(putIn(putIn(step, "w")[0] as Step, "a")).toEqual([
    { ...number("demand over the noted one", 0.7), origin: words },
  ]);
});

/** What is told in words, from the file or from what is asked, with its value. */
function toldIn(step: Step): Map<string, readonly [string, number]> {
  const plain = stepsIn(step).filter(({ origin }) => !["formula", "search"].includes(origin.by));
  return new Map(plain.map(told).map(([name, value, , , from]) => [name, [from, value]]));
}

test("tableStep(fit, instant, f, r) leads back to what was noted, or says what is taken for it", () => {
  const noted = "noted: reading 2, line 3 of the readings";
  const of = (asked: OneGauge, name: string) => toldIn(at(asked, 1.1, 3).step).get(name);
  expect(of({ readings: few }, "load over full load")).toEqual([noted, 1]);
  expect(of({ readings: without("load") }, "load over full load")).toEqual(["nobody noted it: full load is taken", 1]);
  const flows = few.map((one) => ({ ...one, flow: 5e-5 }));
  expect(of({ readings: flows }, "demand as noted")).toEqual([noted, 5e-5]);
  const feed = cases["a feed pressure with the vacuum"] as OneGauge;
  expect(of(feed, "vacuum read")).toEqual([noted, few[1]?.vacuum]);
  const warm = few.map((one) => ({ ...one, temperature: 288.15 }));
  const diesel = { ...plainSystem, fuel: { kind: "diesel", grade: "winter", cloudPoint: 257.15 } as System["fuel"] };
  const temperatures = (asked: OneGauge) =>
    [...toldIn(at(asked, 1.1, 3).step)].filter(([name]) => name === "temperature").map(([, from]) => from);
  expect(temperatures({ readings: warm, system: diesel })).toEqual([[noted, 288.15]]);
  expect(temperatures({ readings: without("temperature"), system: diesel })).toEqual([["fuel.temperature", 288.15]]);
  // Nothing is left of how the model was asked.
  for (const asked of [{ readings: few }, feed]) {
    expect(stepsIn(at(asked, 1.1, 3).step).filter(({ origin }) => origin.by === "asked")).toEqual([]);
  }
});

test("tableStep(fit, instant, f, r) says at which level the tank was", () => {
  const levels = (asked: OneGauge) =>
    [...toldIn(at(asked, 1.1, 3).step).values()]
      .filter(([words]) => words.includes("level"))
      .map(([words, value]) => [words, value]);
  expect(levels({ readings: few.map((one) => ({ ...one, depth: 0.3 })) })).toEqual([
    ["the level noted at the reading: low depth", 0.3],
  ]);
  expect(levels({ readings: without("depth") })).toEqual([["a level half-way between full and low: low depth", 0.5]]);
});

test("tableStep(fit, instant, f, r) of a feed pressure has the elements before the pump as their own gauge has them", () => {
  const beside = (asked: OneGauge) => toldIn(at(asked, 1.1, 3).step);
  const said = beside(cases["a feed pressure with the vacuum"] as OneGauge);
  expect(said.get("resistance over clean of fitted")).toEqual(["as its own gauge has it at that time", 1]);
  expect(said.get("resistance over clean of behind")?.[0]).toBe("of the model's table");
});

test("tableStep(fit, instant, f, r) proves itself down to the file, units and all", () => {
  for (const name of ["a vacuum", "a feed pressure with the vacuum"]) {
    const { step } = at(cases[name] as OneGauge, 1.1, 3);
    expect(proofOf({ step }).misses, name).toEqual([]);
  }
});

test("tableStep(fit, instant, f, r) of a demand by power takes it at the temperature noted", () => {
  const system: System = {
    ...plainSystem,
    fuel: { kind: "diesel", grade: "winter", cloudPoint: 257.15 } as System["fuel"],
    demand: { power: 500e3, specificConsumption: 6e-8, return: 100 * litresAnHour },
  };
  const cold = few.map((one) => ({ ...one, temperature: 273.15 }));
  const { step, instant } = at({ readings: cold, system }, 1.1, 3);
  expect(step.value).toBeCloseTo(instant.table.at(1.1, 3), 4);
  const full = stepsIn(step).find(
    ({ origin }) => origin.by === "formula" && origin.formula.id === "gauge-noted-demand",
  );
  const temperatures = stepsIn(full).filter(({ name }) => /temperature/.test(name));
  expect(temperatures.map(told)).toContainEqual([
    "temperature",
    273.15,
    "K",
    "temperature",
    "noted: reading 2, line 3 of the readings",
  ]);
  expect(temperatures.filter(({ origin }) => origin.by === "file" || origin.by === "asked")).toEqual([]);
});

test("tableStep(fit, instant, f, r) tells what was noted with its unit", () => {
  const flows = few.map((one) => ({ ...one, flow: 5e-5 }));
  const find = (asked: OneGauge, name: string) => {
    const found = stepsIn(at(asked, 1.1, 3).step).find((one) => one.name === name && one.origin.by === "words");
    return found && told(found).slice(1);
  };
  const noted = "noted: reading 2, line 3 of the readings";
  expect(find({ readings: flows }, "demand as noted")).toEqual([5e-5, "m3/s", "flow", noted]);
  const feed = cases["a feed pressure with the vacuum"] as OneGauge;
  expect(find(feed, "vacuum read")).toEqual([few[1]?.vacuum, "Pa", "vacuum", noted]);
  const { step } = at({ readings: few }, 1.1, 3);
  const factors = stepsIn(step).filter(
    ({ origin }) => origin.by === "formula" && origin.formula.id === "gauge-times-demand",
  );
  expect(factors.map((one) => told(putIn(one, "f")[0] as Step))).toContainEqual([
    "demand over the noted one",
    1.4,
    "1",
    "plain",
    "of the model's table",
  ]);
  expect(factors.length).toBeGreaterThan(2);
});
