import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, type OneGauge, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { plainSystem } from "../../../../../tests/support/plainSystem.js";
import { leftOf } from "../../gauge/leftOf.js";
import { leftFacts } from "../../gauge/leftsOf.js";
import { leftFigures } from "./leftFigures.js";

const few = plainReadings(EVENLY.slice(0, 6));
/** Held to a vacuum that its element of even growth is soon at: a stated error of 20 Pa leaves little doubt. */
const tight: System = { ...plainSystem, limits: { vacuumClean: 10e3, vacuumAtChange: 13e3 } };
const sure = { gaugeError: 20 };

function both(asked: OneGauge) {
  const { fits, fit, soil } = oneGauge(asked);
  const left = leftOf({ path: fits.facts.suction, fit }, soil.soil, leftFacts(fits.facts, "suction", fits.settled));
  const all = leftFigures(soil, fit);
  const made = new Map(all.map((one) => [one.name, one.make()]));
  return { left, all, made, value: (name: string) => made.get(name)?.value };
}

test("leftFigures(scene, settled) come to the answer's", () => {
  const { left, value, made } = both({ readings: few, system: tight, options: sure });
  if (!("middle" in left)) throw new Error(left.code);
  expect(left.middle).toBeGreaterThan(3600);
  expect(value("running time left, low end")).toBeCloseTo(left.low, 3);
  expect(value("running time left")).toBeCloseTo(left.middle, 3);
  expect(value("running time left, high end")).toBeCloseTo(left.high, 3);
  expect(value("temperature where the limit is met")).toBe(left.pointTemperature);
  expect(value("hour meter at the limit")).toBeCloseTo(left.hourMeter ?? 0, 3);
  expect(value("running time so far")).toBe(left.sinceStart);
  expect(left.sinceStart).toBe(50 * 3600);
  expect([...made.keys()]).toEqual([
    "running time left, low end",
    "running time left",
    "running time left, high end",
    "temperature where the limit is met",
    "hour meter at the limit",
    "running time so far",
  ]);
});

test("leftFigures(scene, settled) are listed together, and said to take long", () => {
  const { all } = both({ readings: few, system: tight, options: sure });
  expect(new Set(all.map(({ group, slow }) => `${group} ${slow}`))).toEqual(new Set(["Running time left true"]));
});

test("leftFigures(scene, settled) of what is over its limit already have no time left", () => {
  const { value } = both({
    readings: few,
    system: { ...plainSystem, limits: { vacuumClean: 9e3, vacuumAtChange: 9.5e3 } },
    options: sure,
  });
  expect([
    value("running time left, low end"),
    value("running time left"),
    value("running time left, high end"),
  ]).toEqual([0, 0, 0]);
});

test("leftFigures(scene, settled) by dates have no hour meter", () => {
  const dated = few.map(({ hours: _, ...one }, at) => ({ ...one, date: `2026-03-${10 + 4 * at}` }));
  const { made, left, value } = both({ readings: dated, system: tight, options: sure });
  expect(made.get("hour meter at the limit")).toBeNull();
  if (!("middle" in left)) throw new Error(left.code);
  expect(value("running time left")).toBeCloseTo(left.middle, 3);
});

test("leftFigures(scene, settled) where nothing is known of the start go on from the first reading", () => {
  const asked = { readings: few.map((one) => ({ ...one, changed: false })), system: tight, options: sure };
  const { left, value } = both(asked);
  if (!("middle" in left)) throw new Error(left.code);
  expect(value("running time left")).toBeCloseTo(left.middle, 3);
});

test("leftFigures(scene, settled) are told from the last reading of all, also where it is set aside", () => {
  const whole = oneGauge({ readings: few, system: tight, options: sure });
  const { soil } = oneGauge({ readings: few.slice(0, 5), system: tight, options: sure });
  const so = leftFigures(soil, whole.fit)
    .find(({ name }) => name === "running time so far")
    ?.make();
  expect(so?.value).toBe(50 * 3600);
  const empty = {
    weighed: { ...whole.fit.weighed, run: { ...whole.fit.weighed.run, instants: [] } },
  } as unknown as typeof whole.fit;
  expect(
    leftFigures(soil, empty)
      .find(({ name }) => name === "running time so far")
      ?.make(),
  ).toEqual({
    name: "running time so far",
    value: 0,
    unit: "s",
    kind: "running time",
    origin: { by: "words", words: "no reading", from: [] },
  });
});
