import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { CurveAnswer, CurvePoint } from "../curve/CurveAnswer.js";
import { curveSentence } from "./curveSentence.js";
import { dueWords } from "./dueWords.js";

const flat = (middle: number) => ({ low: middle, middle, high: middle });
const column = (...figures: number[]) => ({ middle: Float64Array.from(figures), band: null });
const LITRES_AN_HOUR = 1e-3 / 3600;
const ceiling = (flow: number, limit = "vacuum at change") => ({ atChange: { flow: flat(flow), limit } });
const duty = {
  demand: 100 * LITRES_AN_HOUR,
  suctionFlow: 400 * LITRES_AN_HOUR,
  vacuum: flat(9e3),
  vacuumNow: null,
  vacuumAtChange: null,
  feedPressure: null,
};
const point = {
  temperature: 288.15,
  unanswered: [],
  clean: { vacuum: column(2e3, 9e3), feedPressure: null },
  duty,
  ceilings: ceiling(250 * LITRES_AN_HOUR),
};
const answer = { system: "Heron", pump: "fixed", suctionFollows: "demand", atChange: null } as unknown as CurveAnswer;
const said = (more: object = {}, of: object = {}) =>
  marked(curveSentence({ ...answer, ...of } as CurveAnswer, { ...point, ...more } as unknown as CurvePoint, "metric"));

const at = "{temperature|15 °C}";
const rest = "the vacuum at the pump is {vacuum at rest|2.0 kPa} at no demand; at the demand of {demand|100 L/h} it is";
const clean = "{vacuum|9.0 kPa} with clean elements";
const sets = "The vacuum limit at change sets the ceiling: {ceiling at change|250 L/h}.";

test("curveSentence(answer, point, units) is the vacuum at no demand and at the demand, and the ceiling", () => {
  expect(said()).toBe(`At ${at} ${rest} ${clean}. ${sets}`);
});

test("curveSentence(answer, point, units) has the vacuum of every state there is, by names of their own", () => {
  const now = { ...duty, vacuumNow: flat(12e3) };
  const due = { ...now, vacuumAtChange: flat(30e3) };
  expect(said({ duty: now })).toBe(`At ${at} ${rest} ${clean}, and {vacuum now|12.0 kPa} now. ${sets}`);
  expect(said({ duty: due })).toBe(
    `At ${at} ${rest} ${clean}, {vacuum now|12.0 kPa} now, and {vacuum at change|30.0 kPa} with elements due for change. ${sets}`,
  );
});

test("curveSentence(answer, point, units) of a suction line that carries all the pump moves says that demand does not matter", () => {
  expect(said({}, { suctionFollows: "pump" })).toBe(
    `At ${at} relief goes back to the tank, so the suction line carries {suction flow|400 L/h} whatever the demand, and the vacuum at the pump stays at ${clean}. ${sets}`,
  );
});

test("curveSentence(answer, point, units) of what gravity feeds has pressures at the engine", () => {
  const gravity = { pump: "none" };
  const head = "the pressure at the engine is {head|4.0 kPa} at no demand; at the demand of {demand|100 L/h} it is";
  const fed = { clean: { ...point.clean, feedPressure: column(4e3, 3e3) }, duty: { ...duty, feedPressure: flat(3e3) } };
  const ceilings = ceiling(250 * LITRES_AN_HOUR, "feed pressure");
  const ends = "The head of the tank sets the ceiling: {ceiling at change|250 L/h}.";
  expect(said({ ...fed, ceilings }, gravity)).toBe(`At ${at} ${head} {feed pressure|3.0 kPa}. ${ends}`);
  expect(said({ ...fed, duty, ceilings }, gravity)).toBe(`At ${at} ${head} {feed pressure|none}. ${ends}`);
  const unknown = said({ ceilings }, gravity);
  expect(unknown).toContain("the pressure at the engine is {head|none} at no demand");
});

test.each([
  [0, "Even no demand at all breaks the vacuum limit at change."],
  [Number.POSITIVE_INFINITY, "No demand meets the vacuum limit at change."],
])("curveSentence(answer, point, units) with a ceiling of %d says what that means", (flow, words) => {
  expect(said({ ceilings: ceiling(flow) })).toBe(`At ${at} ${rest} ${clean}. ${words}`);
});

const unanswered = [
  { code: "shut", by: "tank cock" },
  { code: "cloud point not known", limit: 278.15 },
];
const grounds =
  "nothing can pass tank cock, and the cloud point is not given, and fuel of this kind may carry wax below 5 °C";
test("curveSentence(answer, point, units) says why there is no curve, or why it is no promise", () => {
  expect(said({ clean: null, unanswered })).toBe(`Cannot draw a curve at ${at}: ${grounds}.`);
  expect(said({ unanswered })).toBe(
    `At ${at} ${rest} ${clean}. ${sets} No figure given for it is a promise: ${grounds}.`,
  );
});

test("dueWords(answer, units) says which elements count as due, and at which temperature, or null where none does", () => {
  const atChange = { parts: ["A", "B"], temperature: 288.15 };
  expect(dueWords({ ...answer, atChange }, "metric")).toBe(
    "Due for change: A, B, soiled until the stated terminal drop shows at 15 °C.",
  );
  expect(dueWords(answer, "metric")).toBeNull();
});
