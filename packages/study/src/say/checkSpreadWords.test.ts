import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { CheckAnswer, CheckPoint } from "../check/CheckAnswer.js";
import type { CheckSpread } from "../spread/checkSpread.js";
import { checkSpreadWords } from "./checkSpreadWords.js";

const point = { temperature: 263.15 } as CheckPoint;
const spread: CheckSpread = {
  vacuum: { low: 8e3, middle: 9e3, high: 11e3 },
  feedPressure: { low: 50e3, middle: 60e3, high: 70e3 },
  inHand: { low: 0.2, middle: 0.4, high: 0.6 },
  broken: { chance: 0.18, chanceError: 0.012 },
  draws: 400,
};
const said = (more: Partial<CheckSpread> = {}, pump: CheckAnswer["pump"] = "fixed", points = [point]) =>
  marked(checkSpreadWords({ pump, points } as unknown as CheckAnswer, point, { ...spread, ...more }, "metric"));
const hand = "and {in hand|20 to 60 %} in hand (400 draws).";
const chance = "Chance that a limit is broken: {chance|18 %, give or take 1.2 %}.";

test.each([
  ["fixed", {}, `{vacuum|8.0 to 11.0 kPa} of vacuum at the pump ${hand} ${chance}`],
  ["fixed", { broken: null }, `{vacuum|8.0 to 11.0 kPa} of vacuum at the pump ${hand}`],
  ["none", {}, `{feed pressure|50.0 to 70.0 kPa} at the engine ${hand} ${chance}`],
  ["none", { feedPressure: null }, `no known pressure at the engine ${hand} ${chance}`],
] as const)("checkSpreadWords with the pump %j and %j says what 8 draws of 10 give", (pump, more, words) => {
  expect(said(more, pump)).toBe(`With the file's spreads 8 draws of 10 give ${words}`);
});

test("checkSpreadWords names the temperature where there are several", () => {
  expect(said({}, "fixed", [point, point])).toContain("8 draws of 10 at {temperature|-10 °C} give {vacuum|");
});
