import { expect, test } from "vitest";
import { cardElement } from "../../../../tests/support/cardFacts.js";
import type { CardElement } from "./CardAnswer.js";
import { primingOf } from "./primingOf.js";
import { primingStrokes } from "./primingStrokes.js";

const asked = { stroke: null, saidAllowed: false };
const priming = (elements: CardElement[], lines = 0, more: object = {}) =>
  primingOf(elements, { bodies: 0, unknown: [], lines }, { ...asked, ...more });
const [a, b, c] = [
  cardElement("A", { prefill: "allowed" }),
  cardElement("B", { prefill: "forbidden", body: 5e-4 }),
  cardElement("C", { prefill: null, body: null, bowl: 2e-4 }),
];

test("primingOf(elements, volumes, asked) fills only what the file allows, and counts the air of the rest", () => {
  const found = priming([a, b, c], 1e-3);
  expect(found).toMatchObject({ allowed: ["A"], forbidden: ["B"], assumed: ["C"], saidAllowed: false, unknown: ["C"] });
  // 0.5 L of B's body and 0.2 L of C's bowl, and 1 L of lines.
  expect([found.least, found.most]).toEqual([expect.closeTo(7e-4, 12), expect.closeTo(1.7e-3, 12)]);
  expect([found.stroke, found.strokes]).toEqual([null, null]);
});

test("primingOf(elements, volumes, asked) takes the asker's word, except where the file forbids it", () => {
  const found = priming([a, b, c], 0, { saidAllowed: true });
  expect(found).toMatchObject({ allowed: ["A", "C"], forbidden: ["B"], assumed: [], saidAllowed: true, unknown: [] });
  expect([found.least, found.most]).toEqual([5e-4, 5e-4]);
});

test("primingOf(elements, volumes, asked) counts no air of what hangs in a tank, of a screen, or of what states no volume", () => {
  const dry = [cardElement("T", { style: "in-tank" }), cardElement("S", { style: "screen" })];
  expect(priming(dry)).toMatchObject({ least: 0, most: 0, assumed: [], unknown: [] });
  expect(priming([cardElement("D", { body: null })])).toMatchObject({ least: 0, unknown: ["D"] });
});

test("primingOf(elements, volumes, asked) counts strokes for the least and the most air, four fifths of each moving", () => {
  // 10 mL a stroke move 8 mL: 500 mL take 62.5, and 1500 mL take 187.5.
  expect(priming([b], 1e-3, { stroke: 10e-6 }).strokes).toEqual({ least: 63, most: 188 });
});

test.each([0, -1e-6, Number.NaN, Number.POSITIVE_INFINITY])(
  "primingOf(elements, volumes, { stroke: %d }) is refused",
  (stroke) => {
    expect(() => priming([b], 0, { stroke })).toThrow(`card requires primer to be more than 0 m3, got ${stroke}`);
  },
);

const good = { volume: 6e-4, stroke: 5e-6, fill: 0.8 };
test.each([
  [{ volume: -1e-9 }, "volume to be at least 0 m3, got -1e-9"],
  [{ volume: Infinity }, "volume to be at least 0 m3, got Infinity"],
  [{ stroke: Infinity }, "stroke to be more than 0 m3, got Infinity"],
  [{ fill: 0 }, "fill to be more than 0 and at most 1, got 0"],
  [{ fill: -0.1 }, "fill to be more than 0 and at most 1, got -0.1"],
])("primingStrokes(given) with %j is refused", (more, words) => {
  expect(() => primingStrokes({ ...good, ...more })).toThrow(`primingStrokes requires ${words}`);
});

test("primingStrokes(given) takes a primer that moves all it sweeps", () => {
  expect(primingStrokes({ ...good, fill: 1 })).toBe(120);
});
