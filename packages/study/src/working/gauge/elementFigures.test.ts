import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, type OneGauge, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { elementOf, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { stepsIn, told } from "../../../../../tests/support/steps.js";
import { elementsNow } from "../../gauge/elementsNow.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { elementFigures } from "./elementFigures.js";

const few = plainReadings(EVENLY.slice(0, 5));
const [lift, fitted] = plainSystem.suction as [System["suction"][number], System["suction"][number]];
/** Two elements in a row: the second catches what the first lets through, which is next to nothing. */
const twoInARow: System = { ...plainSystem, suction: [lift, fitted, elementOf("second", { drop: 500 }).filter] };

function figures(asked: OneGauge) {
  const { soil, fits, fit } = oneGauge(asked);
  const all = elementFigures(soil).map((one) => [one.name, one.make()?.value] as const);
  const answer = elementsNow(fits.facts, asked.side ?? "suction", fit);
  return { soil, all: new Map(all), answer };
}

test("elementFigures(scene) come to the answer's: how plugged each element is, what it costs, how much room is left", () => {
  const cases: Readonly<Record<string, OneGauge>> = {
    "one element": { readings: few },
    "two in a row": { readings: few, system: twoInARow },
    "no limit": {
      readings: few,
      system: { ...plainSystem, limits: {}, pump: { kind: "pulse", flow: 1e-4 } as System["pump"] },
    },
    "no room": { readings: few, system: { ...plainSystem, limits: { vacuumClean: 5e3, vacuumAtChange: 6e3 } } },
  };
  for (const [name, asked] of Object.entries(cases)) {
    const { all, answer } = figures(asked);
    expect(answer.length, name).toBeGreaterThan(0);
    for (const { name: element, ratio, dropClean, drop, roomUsed } of answer) {
      const own = (figure: string) => all.get(figure);
      expect(own(`resistance over clean of ${element}, low end`), name).toBeCloseTo(ratio.low, 9);
      expect(own(`resistance over clean of ${element}`), name).toBeCloseTo(ratio.middle, 9);
      expect(own(`resistance over clean of ${element}, high end`), name).toBeCloseTo(ratio.high, 9);
      expect(own(`drop of ${element}, clean`), name).toBeCloseTo(dropClean, 6);
      expect(own(`drop of ${element}`), name).toBeCloseTo(drop, 6);
      if (roomUsed === null) expect(own(`room used up of ${element}`), name).toBeUndefined();
      else expect(own(`room used up of ${element}`), name).toBeCloseTo(roomUsed, 9);
    }
    expect([...all.keys()], name).toEqual(
      answer.flatMap(({ name: element }) => [
        `resistance over clean of ${element}, low end`,
        `resistance over clean of ${element}`,
        `resistance over clean of ${element}, high end`,
        `drop of ${element}, clean`,
        `drop of ${element}`,
        `room used up of ${element}`,
      ]),
    );
  }
});

const wordsIn = (step: Step | null | undefined): string[] =>
  stepsIn(step)
    .filter(({ origin }) => origin.by === "words")
    .map((one) => {
      const [name, , unit, kind, from] = told(one);
      return `${name} (${kind}, ${unit}): ${from}`;
    });

test("elementFigures(scene) are listed under their element, and said to take long", () => {
  const { soil } = oneGauge({ readings: few });
  const all = elementFigures(soil);
  expect(new Set(all.map(({ group, slow }) => `${group} ${slow}`))).toEqual(new Set(["fitted true"]));
});

test("elementFigures(scene) of a drop start from a clean element, at the temperature where the limit is judged", () => {
  const { soil } = oneGauge({ readings: few });
  const clean = elementFigures(soil)
    .find(({ name }) => name === "drop of fitted, clean")
    ?.make();
  expect(wordsIn(clean)).toContain("resistance over clean of fitted (plain, 1): a clean element");
  expect(clean && proofOf({ step: clean }).misses).toEqual([]);
});

test("elementFigures(scene) of a machine without limits take the file's own temperature", () => {
  const { soil } = oneGauge({
    readings: few,
    system: { ...plainSystem, limits: {}, pump: { kind: "pulse", flow: 1e-4 } as System["pump"] },
  });
  const clean = elementFigures(soil)
    .find(({ name }) => name === "drop of fitted, clean")
    ?.make();
  const judged = wordsIn(clean).filter((one) => one.includes("no limit is judged"));
  expect([...new Set(judged)]).toEqual(["temperature (temperature, K): the file's own, since no limit is judged"]);
});

test("elementFigures(scene) say where there is no room at all", () => {
  const { soil } = oneGauge({
    readings: few,
    system: { ...plainSystem, limits: { vacuumClean: 5e3, vacuumAtChange: 6e3 } },
  });
  const room = elementFigures(soil)
    .find(({ name }) => name === "room used up of fitted")
    ?.make();
  expect(room).toMatchObject({
    value: 1,
    unit: "1",
    kind: "ratio",
    origin: { by: "words", words: "there is no room at all" },
  });
  expect(room?.origin.by === "words" && room.origin.from.length).toBe(2);
});

test("elementFigures(scene) lead an element that follows back to the soil on the one that goes first", () => {
  const { soil } = oneGauge({ readings: few, system: twoInARow });
  const { lead, names } = soil.fits.facts.suction;
  const other = names.find((name) => name !== lead) ?? "";
  const step = elementFigures(soil)
    .find(({ name }) => name === `resistance over clean of ${other}`)
    ?.make();
  const yearly = "what life lets it catch with all elements clean, over the seasons and loads of a year of duty";
  expect(wordsIn(step)).toEqual(
    expect.arrayContaining([
      `soil on ${lead} at the start (soil, kg): a clean element`,
      `soil ${lead} catches a year (soil, kg): ${yearly}`,
      `soil on ${other} at the start (soil, kg): a clean element`,
      `soil ${other} catches a year (soil, kg): ${yearly}`,
      `soil on ${lead} (soil, kg): as found`,
    ]),
  );
  expect(step && proofOf({ step }).misses).toEqual([]);
});
