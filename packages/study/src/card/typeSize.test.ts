import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import type { CardItem, CardSection } from "./CardSection.js";
import { card } from "./card.js";
import { typeSize } from "./typeSize.js";

const itemOf = (kind: CardItem["kind"], length = 60): CardItem => ({ kind, words: ["x".repeat(length)] });
const sectionOf = (...items: CardItem[]): CardSection => ({ name: "fit", title: "Fit", items });
const notes = (count: number, length = 60) => Array.from({ length: count }, () => itemOf("note", length));
/** Type of a card with nothing in its box and these items below it. */
const sizeOf = (...items: CardItem[]) => typeSize([sectionOf(), sectionOf(...items)]);

test("typeSize(sections) of a short card is 10 pt, and of one no sheet holds 7.6 pt", () => {
  expect(typeSize([])).toBe(10);
  expect(sizeOf(...notes(3))).toBe(10);
  expect(sizeOf(...notes(400))).toBe(7.6);
});

test("typeSize(sections) is a tenth of a point that falls as lines are added", () => {
  const sizes = [90, 95, 100, 105, 110, 120, 130].map((count) => sizeOf(...notes(count, 40)));
  expect(sizes).toEqual([...sizes].sort((left, right) => right - left));
  expect(new Set(sizes).size).toBeGreaterThan(4);
  for (const size of sizes) expect(size * 10).toBeCloseTo(Math.round(size * 10), 9);
});

test("typeSize(sections) counts lines as they break: 2 lines of one note take less than 2 notes, and more than 1", () => {
  expect(sizeOf(...notes(55, 90))).toBeLessThan(sizeOf(...notes(55, 40)));
  expect(sizeOf(...notes(55, 90))).toBeGreaterThan(sizeOf(...notes(110, 40)));
});

test("typeSize(sections) leaves a step less room than a note, beside its box to tick", () => {
  const steps = (count: number) => Array.from({ length: count }, () => itemOf("step", 110));
  expect(sizeOf(...steps(48))).toBeLessThan(sizeOf(...notes(48, 110)));
});

test("typeSize(sections) sets two fields on a line, and a line to fill in takes one by itself", () => {
  const fields = (count: number, kind: "field" | "line") => Array.from({ length: count }, () => itemOf(kind, 500));
  expect(sizeOf(...fields(130, "field"))).toBe(sizeOf(...fields(65, "line")));
  expect(sizeOf(...fields(130, "field"))).toBe(sizeOf(...fields(129, "field")));
  expect(sizeOf(...fields(130, "line"))).toBeLessThan(sizeOf(...fields(130, "field")));
});

test("typeSize(sections) counts figures in a sentence like its other letters", () => {
  const words = (text: string): CardItem => ({
    kind: "note",
    words: [text.slice(0, 30), { figure: "vacuum", text: text.slice(30) }],
  });
  const long = "x".repeat(90);
  expect(sizeOf(...Array.from({ length: 55 }, () => words(long)))).toBe(sizeOf(...notes(55, 90)));
});

test("typeSize(sections) gives the box of cautions the sheet's whole width, so it costs half of what stands below", () => {
  const boxed = typeSize([sectionOf(...notes(40, 40)), sectionOf(...notes(70, 40))]);
  expect(boxed).toBeLessThan(typeSize([sectionOf(), sectionOf(...notes(70, 40))]));
  expect(boxed).toBeCloseTo(typeSize([sectionOf(), sectionOf(...notes(110, 40))]), 0);
});

// That these cards stand on one sheet is measured in a browser: tests/journeys/cli/cardPrint.test.ts.
test.each([
  ["heron", 8.4],
  ["generator", 9.7],
  ["workboat", 9.1],
] as const)("typeSize(sections) of the %s's card stays what it was when it was printed", (name, size) => {
  expect(typeSize(card(demoSystem(name)).sections)).toBe(size);
});
