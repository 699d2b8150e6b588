import { expect, test } from "vitest";
import { cardElement, cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardFacts, CardReading } from "../card/CardAnswer.js";
import { cardStart } from "./cardStart.js";

const band = (low: number, middle = low, high = low) => ({ low, middle, high });
const reading = (load: number, vacuum: number, feed: number | null = null): CardReading => ({
  load,
  demand: 1e-5,
  vacuum: band(vacuum),
  feed: feed === null ? null : band(feed),
});
const { check } = cardFacts();
const said = (more: Partial<CardFacts> = {}, units: "metric" | "us" = "metric") =>
  itemTexts(cardStart(cardFacts(more), units));
const ofCheck = (more: object) => said({ check: { ...check, ...more } as CardFacts["check"] });

const leak =
  "step: Run at idle and look. Behind the pump a leak drips: dry paper under every joint. Before it nothing drips, air is " +
  "drawn in: look for bubbles in a clear hose before the pump, listen for hunting; prime lost after an hour stood is a leak.";
const full = "step: At full load, 15 °C, expect {vacuum full|9.3 kPa} of vacuum clean at the pump. Read: ______";
const limit = "step: Limit: 20.0 kPa clean, 40.0 kPa at the change. Tank low; a full one reads less.";

test("cardStart(facts, units) is the leak check, the reading and its limit", () => {
  expect(said()).toEqual([leak, full, limit]);
  expect(said({}, "us")).toEqual([
    leak,
    "step: At full load, 59 °F, expect {vacuum full|2.7 inHg} of vacuum clean at the pump. Read: ______",
    "step: Limit: 5.9 inHg clean, 11.8 inHg at the change. Tank low; a full one reads less.",
  ]);
});

test("cardStart(facts, units) has the duty's least load first, by a name of its own", () => {
  expect(said({ readings: [reading(0.4, 7100), reading(1, 9300)] }).slice(1, 3)).toEqual([
    "step: At 40 % load (the least of the duty), 15 °C, expect {vacuum idle|7.1 kPa} of vacuum clean at the pump. Read: ______",
    full,
  ]);
});

test("cardStart(facts, units) of what gravity feeds reads pressure at the engine, with the ends of a band turned round", () => {
  const vacuum = band(-4e3, -3e3, -2e3);
  expect(said({ pump: "none", readings: [{ ...reading(1, 0), vacuum }] })).toEqual([
    "step: Cock open, engine off: dry paper under every joint. Then run, and look again.",
    "step: At full load, 15 °C, expect {vacuum full|2.0 to 4.0 kPa, likely 3.0} clean at the engine. Read: ______",
    "step: Read when the tank is low, which is what these are for; a full one gives more.",
  ]);
});

test("cardStart(facts, units) calls no reading clean where elements are left in as they are", () => {
  const others = "These count the elements left in as the file has them.";
  expect(said({ left: ["B"] })).toEqual([
    leak,
    "step: At full load, 15 °C, expect {vacuum full|9.3 kPa} of vacuum at the pump. Read: ______",
    `${limit} ${others}`,
  ]);
  expect(said({ left: ["B"], pump: "none", readings: [reading(1, -3e3)] }).slice(1)).toEqual([
    "step: At full load, 15 °C, expect {vacuum full|3.0 kPa} at the engine. Read: ______",
    `step: Read when the tank is low, which is what these are for; a full one gives more. ${others}`,
  ]);
});

test.each([
  [{ clean: null, atChange: 40e3 }, "step: Limit: 40.0 kPa at the change. Tank low; a full one reads less."],
  [{ clean: 20e3, atChange: null }, "step: Limit: 20.0 kPa clean. Tank low; a full one reads less."],
  [{ clean: null, atChange: null }, "step: The manual has the limit. Tank low; a full one reads less."],
])("cardStart(facts, units) with the limits %j states those there are", (vacuumLimits, words) => {
  expect(ofCheck({ vacuumLimits })).toEqual([leak, full, words]);
});

test("cardStart(facts, units) says whose a limit is that the file has not", () => {
  expect(ofCheck({ limitAssumed: true }).at(-1)).toBe(
    "step: Limit: 20.0 kPa clean, 40.0 kPa at the change, by published guidance for one engine family: the file has none. " +
      "Tank low; a full one reads less.",
  );
});

const behind = cardElement("C", { side: "delivery" });
test.each([
  [
    [behind],
    [reading(0.4, 7100, 63e3), reading(1, 9300, 61.9e3)],
    25e3,
    "step: Behind the pump the vacuum gauge sees nothing: at full load expect {feed pressure|61.9 kPa} at the injection " +
      "pump, at least 25.0 kPa. Read: ______",
  ],
  [
    [cardElement("A"), behind],
    [reading(1, 9300, 61.9e3)],
    0,
    "step: Behind the pump the vacuum gauge sees nothing: at full load expect {feed pressure|61.9 kPa} at the injection " +
      "pump. Read: ______",
  ],
  [
    [behind],
    [reading(1, 9300)],
    25e3,
    "step: A vacuum gauge sees nothing of what stands behind the pump; the pressure at the injection pump does, and the " +
      "manual has it.",
  ],
])(
  "cardStart(facts, units) of an element behind the pump has the feed pressure too (%#)",
  (elements, readings, feedLimit, words) => {
    const items = said({ elements, readings, check: { ...check, feedLimit } });
    expect(items.at(-2)).toBe(words);
    expect(items).toHaveLength(readings.length + 3);
  },
);

test("cardStart(facts, units) has no feed pressure where no element stands behind a pump, or where there is none", () => {
  const readings = [reading(1, 9300, 61.9e3)];
  expect(said({ readings })).toEqual([leak, full, limit]);
  expect(said({ readings, elements: [behind], pump: "none" })).toHaveLength(3);
});

const waxed = { code: "below cloud point", temperature: 255, cloudPoint: 258.15, starvesAnyway: false };
const wax = "the fuel is below its cloud point of -15 °C, where wax plugs filters whatever the viscosity";
test("cardStart(facts, units) says why no reading is a promise, before it gives it", () => {
  expect(ofCheck({ verdict: "cannot say", reasons: [{ code: "no vacuum limit" }, waxed] })).toEqual([
    leak,
    `step: At 15 °C no reading is a promise: ${wax}.`,
    full,
    limit,
  ]);
  expect(ofCheck({ verdict: "starves", reasons: [{ code: "broken", limit: "vapour" }] })).toEqual([
    leak,
    "step: At 15 °C it starves at full load even when the change is well done: see thirstline check.",
    full,
    limit,
  ]);
  expect(ofCheck({ verdict: "tight", reasons: [{ code: "over clean limit" }] })).toEqual([leak, full, limit]);
});

test("cardStart(facts, units) has no reading, and so no limit, where nothing can pass", () => {
  const reasons = [{ code: "shut", by: "tank cock" }, { code: "no vacuum limit" }] as const;
  const shut = { ...check, verdict: "starves" as const, reasons };
  expect(said({ readings: [], check: shut, elements: [behind] })).toEqual([
    leak,
    "step: No reading can be told: nothing can pass tank cock. Mend that first.",
  ]);
});
