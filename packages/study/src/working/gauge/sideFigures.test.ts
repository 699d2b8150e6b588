import { expect, test } from "vitest";
import {
  EVENLY,
  type OneGauge,
  oneGauge,
  plainBothSides,
  plainReadings,
} from "../../../../../tests/support/gaugeScenes.js";
import { onePut } from "../../../../../tests/support/steps.js";
import { sideAnswer } from "../../gauge/sideAnswer.js";
import { sideFigures } from "./sideFigures.js";

const few = plainReadings(EVENLY.slice(0, 4), (at) => ({ feedPressure: 60e3 - 900 * at + 150 * (at % 2) }));
const behind: OneGauge = {
  system: plainBothSides,
  side: "delivery",
  readings: few.map(({ vacuum: _, ...one }) => one),
};

function both(asked: OneGauge) {
  const { soil, fits, fit } = oneGauge(asked);
  const all = sideFigures(soil).filter(({ name }) => !/of (fitted|behind)/.test(name));
  const answer = sideAnswer(asked.side ?? "suction", fits.facts, fit, []);
  if (!answer) throw new Error("no answer");
  return { all, made: new Map(all.map((one) => [one.name, one.make()])), answer };
}

test("sideFigures(scene) come to the answer's, of a vacuum and of a feed pressure", () => {
  for (const asked of [{ readings: few, laws: ["cake", "cake-complete"] } as OneGauge, behind]) {
    const { made, answer } = both(asked);
    const value = (name: string) => made.get(name)?.value;
    const name = asked.side ?? "suction";
    expect(value("readings"), name).toBe(answer.readings);
    expect(value("scatter of a reading"), name).toBeCloseTo(answer.scatter, 6);
    expect(value("error of the gauge"), name).toBe(answer.gaugeError.value);
    expect(value("demand over the file's"), name).toBeCloseTo(answer.demand, 12);
    expect(value("what all readings are off by"), name).toBeCloseTo(answer.zero, 6);
    for (const { law, mix, weight } of answer.laws) {
      expect(value(`weight of ${law}`), law).toBeCloseTo(weight, 9);
      expect(value(`mix of ${law}`), law).toBe(mix ?? undefined);
    }
    for (const [at, time] of answer.trace.time.entries()) {
      expect(value(`running time at reading ${at + 1}`), name).toBe(time);
      expect(value(`pressure read at reading ${at + 1}`), name).toBe(answer.trace.read[at]);
      expect(value(`pressure reckoned at reading ${at + 1}`), name).toBeCloseTo(answer.trace.reckoned[at] ?? 0, 4);
    }
  }
});

test("sideFigures(scene) are listed under their gauge and each reading, those that take long marked", () => {
  const listed = (asked: OneGauge) => both(asked).all.map(({ name, group, slow }) => [name, group, slow ?? false]);
  const each = (at: number) => [
    [`running time at reading ${at}`, "Each reading", false],
    [`pressure read at reading ${at}`, "Each reading", false],
    [`pressure reckoned at reading ${at}`, "Each reading", true],
  ];
  const of = (group: string, laws: readonly (readonly [string, boolean])[]) => [
    ["readings", group, false],
    ["scatter of a reading", group, true],
    ["error of the gauge", group, false],
    ["demand over the file's", group, true],
    ["what all readings are off by", group, true],
    ...laws.map(([name, slow]) => [name, group, slow]),
    ...[1, 2, 3, 4].flatMap(each),
  ];
  expect(listed({ readings: few, laws: ["cake-complete"] })).toEqual(
    of("Vacuum gauge", [
      ["weight of cake-complete", true],
      ["mix of cake-complete", false],
    ]),
  );
  expect(listed(behind)).toEqual(of("Feed pressure gauge", [["weight of cake", true]]));
  expect(listed({ readings: few, laws: ["none"] })).toEqual(of("Vacuum gauge", []));
});

test("sideFigures(scene) say how a mix was chosen", () => {
  const { made, answer } = both({ readings: few, laws: ["cake-complete"] });
  expect(made.get("mix of cake-complete")).toEqual({
    name: "mix of cake-complete",
    value: answer.laws[0]?.mix,
    unit: "1",
    kind: "plain",
    origin: {
      by: "words",
      words: "one of three mixes tried; of a law's mixes the one that explains the readings best",
      from: [],
    },
  });
});

test("sideFigures(scene) include those of every element", () => {
  const { soil } = oneGauge({ readings: few });
  expect(sideFigures(soil).map(({ name }) => name)).toContain("room used up of fitted");
});

test("sideFigures(scene) work the pressure reckoned at each reading out of the file", () => {
  const reckoned = both({ readings: few }).made.get("pressure reckoned at reading 2");
  expect(onePut(reckoned, "p", "a").origin.by).not.toBe("words");
});
