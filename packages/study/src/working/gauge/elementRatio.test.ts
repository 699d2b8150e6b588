import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { elementOf, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { stepsIn, told } from "../../../../../tests/support/steps.js";
import type { Step } from "../Step.js";
import { elementRatio } from "./elementRatio.js";

const few = plainReadings(EVENLY.slice(0, 4));
const [lift, fitted] = plainSystem.suction as [System["suction"][number], System["suction"][number]];
const lead = (value: number): Step => ({
  name: "lead",
  value,
  unit: "1",
  kind: "plain",
  origin: { by: "file", path: "x" },
});

/** The element that goes first, and another that lets through one particle in two and so catches half of what comes. */
function twoOf(system: System) {
  const { given, fits } = oneGauge({ readings: few, system });
  const { suction: path } = fits.facts;
  const other = path.names.find((name) => name !== path.lead) ?? "";
  return { of: (element: string, ratio: number) => elementRatio(given, path, element, lead(ratio)), path, other };
}
const coarse = elementOf("coarse", {
  drop: 1e3,
  filter: {
    betas: [
      { size: 1e-6, beta: 1.2 },
      { size: 50e-6, beta: 2 },
    ],
  },
}).filter;
const inARow: System = { ...plainSystem, suction: [lift, coarse, fitted] };

test("elementRatio(given, path, element, lead) of the one that goes first is its own resistance, by its name", () => {
  const { of, path } = twoOf(inARow);
  expect(of(path.lead, 2.5)).toEqual({ ...lead(2.5), name: `resistance over clean of ${path.lead}` });
});

test("elementRatio(given, path, element, lead) of another is that of the soil it has caught by then", () => {
  const { of, path, other } = twoOf(inARow);
  for (const ratio of [1, 2, 3.5, 8]) {
    const step = of(other, ratio);
    expect([step.name, step.value]).toEqual([`resistance over clean of ${other}`, path.at(ratio).get(other)]);
  }
  // Where the first has grown by so much, the other has too, in proportion: both are cakes of one kind.
  const grown = (ratio: number) => (of(other, ratio).value - 1) / (ratio - 1);
  expect(grown(3)).toBeCloseTo(grown(9), 6);
  expect(grown(3)).toBeLessThan(1);
});

test("elementRatio(given, path, element, lead) of what nobody can predict is that all grow alike", () => {
  const { deliveredFuel: _, ...unknown } = inARow;
  const { of, path } = twoOf(unknown);
  const [first, second] = path.names as [string, string];
  expect(path.lead).toBe(first);
  expect(of(second, 2.5)).toEqual({
    name: `resistance over clean of ${second}`,
    value: 2.5,
    unit: "1",
    kind: "plain",
    origin: {
      by: "words",
      words: "life cannot say how they share the soil, so all are taken to grow alike",
      from: [lead(2.5)],
    },
  });
});

test("elementRatio(given, path, element, lead) beyond any gauge says so", () => {
  const { given, fits } = oneGauge({ readings: few, system: inARow });
  const { suction: path } = fits.facts;
  const other = path.names.find((name) => name !== path.lead) ?? "";
  const growing = (path.growing ?? []).map((one) => (one.name === other ? { ...one, rate: one.rate * 1e6 } : one));
  const step = elementRatio(given, { ...path, growing, at: () => new Map([[other, 1e4]]) }, other, lead(5));
  expect(step).toMatchObject({ name: `resistance over clean of ${other}`, value: 1e4, unit: "1", kind: "plain" });
  expect(step.origin.by === "words" && [step.origin.words, step.origin.from.map(({ name }) => name)]).toEqual([
    "more than any gauge tells",
    [`soil on ${other}`],
  ]);
});

test("elementRatio(given, path, element, lead) of the lead is the fit's own where the path holds it at another", () => {
  const { given, fits } = oneGauge({ readings: few });
  const { suction: path } = fits.facts;
  const step = elementRatio(given, { ...path, at: () => new Map([[path.lead, 1]]) }, path.lead, lead(0.8));
  expect(step).toMatchObject({ value: 1, origin: { by: "words", words: "as the fit has it", from: [lead(0.8)] } });
});

test("elementRatio(given, path, element, lead) starts from the soil that the file states", () => {
  const soiled = {
    ...inARow,
    suction: [lift, { ...coarse, restriction: 1.5 }, { ...fitted, restriction: 2 }] as System["suction"],
  };
  const { given, fits } = oneGauge({ readings: few.map((one) => ({ ...one, changed: false })), system: soiled });
  const { suction: path } = fits.facts;
  const other = path.names.find((name) => name !== path.lead) ?? "";
  const step = elementRatio(given, path, other, lead(3));
  expect(step.value).toBe(path.at(3).get(other));
  const stated = "what makes the resistance that the file states";
  expect(stepsIn(step).map((one) => `${one.name}: ${told(one).at(-1)}`)).toEqual(
    expect.arrayContaining([
      `soil on ${path.lead} at the start: ${stated}`,
      `soil on ${other} at the start: ${stated}`,
    ]),
  );
});

test("elementRatio(given, path, element, lead) of another says how the soil on the one that goes first was found", () => {
  const { of, path, other } = twoOf(inARow);
  const step = of(other, 3);
  const found = stepsIn(step).find(({ origin }) => origin.by === "search");
  expect(step.origin.by).toBe("formula");
  expect(found && told(found)).toEqual([
    `soil on ${path.lead}`,
    expect.any(Number),
    "kg",
    "soil",
    "the soil at which its law comes to that resistance",
  ]);
  const checks = found?.origin.by === "search" ? found.origin.checks : [];
  expect(checks.map(({ words, relation, right }) => [words, relation, right])).toEqual([
    ["with that soil the law comes to that resistance", "=", lead(3)],
  ]);
  expect(checks[0]?.left.value).toBeCloseTo(3, 9);
});
