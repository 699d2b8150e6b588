import { readSystem } from "@thirstline/spec";
import { expect, test } from "vitest";
import type { CheckAnswer, CheckPoint } from "../check/CheckAnswer.js";
import { check } from "../check/check.js";
import { verdictSentence } from "./verdictSentence.js";
import { plain } from "./words.js";

const text = `
format: thirstline/1
name: Bench
fuel: { kind: diesel, grade: winter, cloud point: -16 degC, temperature: 15 degC }
place: { altitude: 0 m }
demand: { burn: 60 L/h, return: 40 L/h }
tank: { full depth: 1 m, low depth: 0.2 m, vent: open }
suction:
  - line: { name: hose, length: 3 m, bore: 10 mm, surface: rubber hose }
  - rise: 0.5 m
pump: { kind: fixed, flow: 200 L/h, relief: 80 kPa, relief to: inlet }
limits: { vacuum clean: 20 kPa, vacuum at change: 40 kPa }
`;

function answer(): { answer: CheckAnswer; point: CheckPoint } {
  const read = readSystem(text, { file: "bench.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  const found = check(read.system);
  return { answer: found, point: found.points[0] as CheckPoint };
}

/** The sentence of the bench with another verdict and figures put in. */
function sentence(change: Partial<CheckPoint>): string {
  const { answer: found, point } = answer();
  return plain(verdictSentence(found, { ...point, ...change }, "metric"));
}

const flat = (value: number) => ({ low: value, middle: value, high: value });

test("verdictSentence(answer, point) of one that holds names what is in hand and what binds first", () => {
  expect(sentence({})).toBe(
    "Bench gets its fuel at 15 °C, with 100 % in hand. The pump's own capacity would bind first, at a demand of 200 L/h.",
  );
});

test("verdictSentence(answer, point) keeps its figures apart, for a page to open", () => {
  const { answer: found, point } = answer();
  const figures = verdictSentence(found, point, "us").filter((piece) => typeof piece !== "string");
  expect(figures).toEqual([
    { figure: "temperature", text: "59 °F" },
    { figure: "in hand", text: "100 %" },
    { figure: "ceiling at change", text: "52.8 gal/h" },
  ]);
});

test("verdictSentence(answer, point) quotes a vacuum as over its limit only when it is", () => {
  const reasons = [{ code: "broken", limit: "vacuum at change" }] as const;
  const over = sentence({ verdict: "starves", reasons, vacuum: flat(45e3), most: null });
  expect(over).toBe(
    "Bench starves at 15 °C: the vacuum at the pump comes to 45.0 kPa, over the limit at change of 40.0 kPa.",
  );
  expect(sentence({ verdict: "starves", reasons, vacuum: flat(39e3), most: null })).toBe(
    "Bench starves at 15 °C: on the worse reading of flow between laminar and turbulent the vacuum at the pump goes over " +
      "the limit at change of 40.0 kPa.",
  );
});

test("verdictSentence(answer, point) offers no pressure below nothing as if it could be", () => {
  const reasons = [
    { code: "broken", limit: "vapour" },
    { code: "broken", limit: "vacuum at change" },
  ] as const;
  const lowest = { pressure: flat(-20e3), part: "hose" };
  expect(sentence({ verdict: "starves", reasons, vacuum: flat(121e3), lowest, most: null })).toBe(
    "Bench starves at 15 °C: the air cannot press so much fuel past hose, and the pump would have to draw 121 kPa, which " +
      "is more than the air presses and over the limit at change of 40.0 kPa.",
  );
});

test("verdictSentence(answer, point) says of clean elements what they may draw when only the bad end is over", () => {
  const reasons = [{ code: "over clean limit" }] as const;
  const spread = { low: 10e3, middle: 15e3, high: 26e3 };
  expect(sentence({ verdict: "tight", reasons, vacuum: spread, most: null })).toContain(
    "clean elements may already draw 26.0 kPa at the pump against a clean limit of 20.0 kPa",
  );
  expect(sentence({ verdict: "tight", reasons, vacuum: flat(25e3), vacuumNow: flat(35e3), most: null })).toContain(
    "clean elements already draw 25.0 kPa",
  );
});

test("verdictSentence(answer, point) promises nothing below the cloud point", () => {
  const reasons = [{ code: "below cloud point", temperature: 250, cloudPoint: 257.15, starvesAnyway: false }] as const;
  expect(sentence({ verdict: "cannot say", reasons })).toBe(
    "Cannot say whether Bench gets its fuel at 15 °C: the fuel is below its cloud point of -16 °C, where wax plugs " +
      "filters whatever the viscosity. No figure given for it is a promise.",
  );
});

test("verdictSentence(answer, point) joins several reasons and names the costliest part", () => {
  const reasons = [
    { code: "broken", limit: "vacuum at change" },
    { code: "broken", limit: "feed pressure" },
  ] as const;
  const most = { name: "hose", share: 0.6 };
  expect(
    sentence({ verdict: "starves", reasons, vacuum: flat(45e3), feedPressure: flat(-2e3), feedLimit: 5e3, most }),
  ).toBe(
    "Bench starves at 15 °C: the vacuum at the pump comes to 45.0 kPa, over the limit at change of 40.0 kPa, and the " +
      "pressure at the injection pump comes to -2.0 kPa, under the 5.0 kPa it needs. Of what the suction side costs, 60 % " +
      "goes to hose.",
  );
});

test("verdictSentence(answer, point) names the share of what costs most as its working does", () => {
  const { answer: found, point } = answer();
  const tight = {
    ...point,
    verdict: "tight",
    reasons: [{ code: "over clean limit" }],
    most: { name: "hose", share: 0.6 },
  };
  const figures = verdictSentence(found, tight as CheckPoint, "metric").flatMap((piece) =>
    typeof piece === "string" ? [] : [piece.figure],
  );
  expect(figures.at(-1)).toBe("share");
});

test("verdictSentence(answer, point) names no demand where none meets what would bind first", () => {
  const { ceilings, binds } = answer().point;
  const atChange = { flow: flat(Number.POSITIVE_INFINITY), limit: binds };
  expect(sentence({ ceilings: { ...ceilings, atChange } })).toBe(
    "Bench gets its fuel at 15 °C, with 100 % in hand. The pump's own capacity would bind first.",
  );
});
