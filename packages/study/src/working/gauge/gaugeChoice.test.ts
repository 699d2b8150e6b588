import { gauge } from "@thirstline/study";
import { expect, test } from "vitest";
import { EVENLY, METRE, plainBothSides, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { plainSystem } from "../../../../../tests/support/plainSystem.js";
import { gaugeChoice } from "./gaugeChoice.js";
import { gaugeFigures, gaugeWorking } from "./gaugeWorking.js";

const few = plainReadings(EVENLY.slice(0, 4));

test("gaugeChoice(system, readings, answer) of readings that cannot be held against the system has no member but them", () => {
  const { duty: _, ...idle } = plainSystem;
  const dated = few.map(({ hours: _hours, ...one }, at) => ({ ...one, date: `2026-03-${10 + at}` }));
  const answer = gauge(idle, dated);
  expect(answer.reasons).toEqual([{ code: "no duty for dates" }]);
  const choice = gaugeChoice(idle, dated, answer);
  expect(choice.question).toBe("gauge");
  expect(choice.members.names).toEqual(["readings"]);
  expect(choice.members.get("readings")?.name).toBe("plain, readings");
  expect(gaugeFigures(choice, "readings")).toEqual(["readings", "readings used"]);
  expect(gaugeWorking(choice, { figure: "readings", asked: {} })?.step.value).toBe(4);
});

/** Far more each time than scatter makes. */
const steep = [1, 3, 5, 7, 9, 11, 13];
const sure = { gaugeError: 100 };

test("gaugeChoice(system, readings, answer, options) has a member for what is found, each gauge and the time left", () => {
  const readings = plainReadings(steep.slice(0, 4), (at) => ({ feedPressure: 70e3 - 2000 * at }));
  const answer = gauge(plainBothSides, readings, sure);
  const choice = gaugeChoice(plainBothSides, readings, answer, sure);
  const { names } = choice.members;
  expect(names).toEqual([
    "readings",
    ...answer.findings.map((_, at) => `finding ${at}`),
    "suction",
    "delivery",
    "left",
  ]);
  const called = new Map(names.map((of) => [of, choice.members.get(of)?.name]));
  expect([called.get("finding 0"), called.get("suction"), called.get("delivery"), called.get("left")]).toEqual([
    "plain, what the readings show",
    "plain, vacuum gauge",
    "plain, feed pressure gauge",
    "plain, running time left",
  ]);
  const value = (of: string, figure: string) => gaugeWorking(choice, { of, figure, asked: {} })?.step.value;
  expect(value("suction", "readings")).toBe(4);
  expect(value("left", "running time so far")).toBe(answer.left?.sinceStart);
  expect(value("left", "running time left")).toBeCloseTo(answer.left?.middle ?? 0, 3);
  expect(value("suction", "error of the gauge")).toBe(100);
  expect(value("finding 0", "size")).toBeUndefined();
  // What is not the readings' own is that of the system.
  expect(value("suction", "vacuum")).toBeCloseTo(METRE + 1000, 4);
});

test("gaugeChoice(system, readings, answer, options) has a member for what stands off, and for the time left without it", () => {
  const readings = plainReadings(steep.map((read, at) => (at === 3 ? read + 20 : read)));
  const answer = gauge(plainSystem, readings, sure);
  expect(answer.outliers.map(({ row }) => row)).toEqual([4]);
  const choice = gaugeChoice(plainSystem, readings, answer, sure);
  expect(choice.members.names.filter((of) => /outlier|left/.test(of))).toEqual(["outlier 0", "left", "left without"]);
  expect(choice.members.get("outlier 0")?.name).toBe("plain, reading 4");
  expect(choice.members.get("left without")?.name).toBe("plain, running time left without the readings that stand off");
  const value = (of: string, figure: string) => gaugeWorking(choice, { of, figure, asked: {} })?.step.value;
  expect(value("outlier 0", "row")).toBe(4);
  expect(value("left without", "running time left")).toBeCloseTo(answer.leftWithout?.middle ?? 0, 3);
  expect(value("left", "running time left")).toBeCloseTo(answer.left?.middle ?? 0, 3);
  expect(answer.left?.middle).not.toBeCloseTo(answer.leftWithout?.middle ?? 0, 0);
});

test("gaugeChoice(system, readings, answer) has no time left where readings show no trend", () => {
  const answer = gauge(plainSystem, few);
  expect(answer.reasons.map(({ code }) => code)).toEqual(["no trend"]);
  expect(gaugeChoice(plainSystem, few, answer).members.names).toEqual(["readings", "suction"]);
});

test("gaugeChoice(system, readings, answer, options) tells the time left by the gauge that comes first", () => {
  const readings = plainReadings([1, 1.5, 2, 2.5], (at) => ({ feedPressure: 66e3 - 4000 * at - 500 * at }));
  const system = { ...plainBothSides, limits: { ...plainBothSides.limits, feedPressure: 40e3 } };
  const answer = gauge(system, readings, sure);
  const choice = gaugeChoice(system, readings, answer, sure);
  expect(answer.left?.by).toEqual({ kind: "limit", limit: "feed pressure" });
  const value = (figure: string) => gaugeWorking(choice, { of: "left", figure, asked: {} })?.step.value;
  expect(value("running time left")).toBeCloseTo(answer.left?.middle ?? 0, 3);
  expect(value("hour meter at the limit")).toBeCloseTo(answer.left?.hourMeter ?? 0, 3);
});
