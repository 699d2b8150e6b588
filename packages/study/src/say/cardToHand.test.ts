import { expect, test } from "vitest";
import { cardElement, cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardFacts } from "../card/CardAnswer.js";
import { cardToHand } from "./cardToHand.js";

const said = (more: Partial<CardFacts> = {}, units: "metric" | "us" = "metric") =>
  itemTexts(cardToHand(cardFacts(more), units));
const clean = "step: Clean fuel for the seals, lint-free cloth, caps for open ends, the manual's torque figures.";
const gauge = "step: A vacuum gauge teed in at the pump.";
const tray = "step: Tray and can: {bodies|1.0 L} from the bodies.";

test("cardToHand(facts, units) is the new element, what catches fuel, what is used up, and the gauge", () => {
  expect(said()).toEqual(["step: New, as the manual names it, with seals: A (spin-on).", tray, clean, gauge]);
});

test("cardToHand(facts, units) names new elements by their build, and screens apart, which need a seal only", () => {
  const elements = [
    cardElement("A"),
    cardElement("S", { style: "screen" }),
    cardElement("B", { style: "cartridge" }),
    cardElement("C"),
    cardElement("D", { style: null }),
    cardElement("E", { style: "in-line" }),
    cardElement("F", { style: "bowl" }),
    cardElement("G", { style: "in-tank" }),
    cardElement("T", { style: "screen" }),
  ];
  expect(said({ elements })).toEqual([
    "step: New, as the manual names them, with seals: A and C (spin-on); B (cartridge); D (style not stated); E (in-line); " +
      "F (bowl); G (in the tank).",
    "step: New seal for S, which is cleaned and used again.",
    "step: New seal for T, which is cleaned and used again.",
    tray,
    clean,
    gauge,
  ]);
  expect(said({ elements: elements.slice(1, 2) })).toEqual([
    "step: New seal for S, which is cleaned and used again.",
    tray,
    clean,
    gauge,
  ]);
});

const none = { bodies: 0, unknown: [], lines: 0 };
test.each([
  [{ ...none, bodies: 0.8e-3 }, [], "Tray and can: {bodies|800 mL} from the bodies."],
  [
    { ...none, bodies: 3.1e-3, lines: 2.4e-3 },
    [],
    "Tray and can: {bodies|3.1 L} from the bodies, and {lines|2.4 L} should the lines beside run empty.",
  ],
  [{ ...none, lines: 0.392e-3 }, [], "Tray and can: {lines|392 mL} should the lines beside run empty."],
  [
    { bodies: 0.15e-3, unknown: ["A"], lines: 0 },
    [],
    "Tray and can: {bodies|150 mL} from the bodies or bowls stated, and besides what A holds (not in the file: measure it).",
  ],
  [
    { bodies: 0, unknown: ["A", "B"], lines: 0.392e-3 },
    [],
    "Tray and can: {lines|392 mL} should the lines beside run empty, and besides what A and B hold (not in the file: measure it).",
  ],
  [{ ...none, unknown: ["A"] }, [], "Tray and can, and besides what A holds (not in the file: measure it)."],
  [none, [], "Tray and can."],
  [
    none,
    [cardElement("A", { style: "in-tank" }), cardElement("B", { style: "screen" })],
    "Tray for what drips; little runs out.",
  ],
])("cardToHand(facts, units) catches %j: %#", (volumes, elements, words) => {
  const items = said({ volumes, ...(elements.length > 0 ? { elements } : {}) });
  expect(items.at(-3)).toBe(`step: ${words}`);
});

test("cardToHand(facts, units) tells a volume in millilitres under a litre, or in fluid ounces", () => {
  const caught = (bodies: number, units: "metric" | "us") => said({ volumes: { ...none, bodies } }, units)[1];
  expect(caught(0.9994e-3, "metric")).toContain("{bodies|999 mL}");
  expect(caught(0.9996e-3, "metric")).toContain("{bodies|1.0 L}");
  // A US fluid ounce is 29.57 mL, a US gallon 3.785 L.
  expect(caught(0.3e-3, "us")).toContain("{bodies|10 fl oz}");
  expect(caught(3.785e-3, "us")).toContain("{bodies|1.0 gal}");
});

const feed = (high: number) => ({
  load: 1,
  demand: 1e-5,
  vacuum: { low: 9e3, middle: 9e3, high: 9e3 },
  feed: { low: 50e3, middle: 60e3, high },
});
const behind = [cardElement("A"), cardElement("C", { side: "delivery" })];

test("cardToHand(facts, units) has a gauge behind the pump too, up to the highest it may read, for an element that stands there", () => {
  const words = "step: A vacuum gauge teed in at the pump, and a pressure gauge at the injection pump, for 61.9 kPa.";
  expect(said({ elements: behind, readings: [feed(70e3), feed(61.9e3)] }).at(-1)).toBe(words);
  expect(said({ readings: [feed(61.9e3)] }).at(-1)).toBe(gauge);
  expect(said({ elements: behind, readings: [{ ...feed(1), feed: null }] }).at(-1)).toBe(gauge);
  expect(said({ elements: behind, readings: [] }).at(-1)).toBe(gauge);
});

test("cardToHand(facts, units) of what gravity feeds has a low-pressure gauge at the engine", () => {
  const words = "step: A low-pressure gauge for the line at the engine.";
  expect(said({ pump: "none", elements: behind, readings: [feed(3e3)] }).at(-1)).toBe(words);
});

test("cardToHand(facts, units) catches bodies and lines that hold alike", () => {
  expect(said({ volumes: { bodies: 1e-3, unknown: [], lines: 1e-3 } })[1]).toBe(
    "step: Tray and can: {bodies|1.0 L} from the bodies, and {lines|1.0 L} should the lines beside run empty.",
  );
});

test("cardToHand(facts, units) has a can where one of several stands outside the tank, whatever it holds", () => {
  const elements = [cardElement("A", { style: "in-tank" }), cardElement("B")];
  expect(said({ volumes: none, elements })[1]).toBe("step: Tray and can.");
});

test("cardToHand(facts, units) takes the pressure of the last reading, which is at full demand", () => {
  const readings = [feed(70e3), feed(65e3), feed(61.9e3)];
  expect(said({ elements: behind, readings }).at(-1)).toContain("for 61.9 kPa.");
});
