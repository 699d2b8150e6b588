import { expect, test } from "vitest";
import { cardElement, cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardElement, CardFacts, CardPriming } from "../card/CardAnswer.js";
import { cardFitting } from "./cardFitting.js";

const said = (more: Partial<CardFacts> = {}) => itemTexts(cardFitting(cardFacts(more)));
const wipe = "step: Wipe every seat clean: no old seal left, no scratch, no lint.";
const arrow = "step: A: arrow along the flow, IN from tank hose, OUT to pump line.";
const spinOn =
  "step: A: new seal moistened with clean fuel; turn on by hand until it touches, then as the manual says.";
const torque = "step: Torque as the manual says. Wipe dry, so that a leak shows.";

test("cardFitting(facts) is seat, arrow, seal and torque, in that order", () => {
  expect(said()).toEqual([wipe, arrow, spinOn, torque]);
});

test.each([
  ["spin-on", "new seal moistened with clean fuel; turn on by hand until it touches, then as the manual says."],
  ["cartridge", "new seals moistened with clean fuel, spring and washers as they were; close evenly."],
  ["in-line", "new clips; replace hose ends that are hard or cracked."],
  ["bowl", "new seal moistened with clean fuel; bowl level, drain shut."],
  ["in-tank", "push home; pick-up clear of the tank's floor, opening sealed, nothing dropped in."],
  ["screen", "new seal moistened with clean fuel; gauze seated all round."],
  [null, "new seal moistened with clean fuel; fit as the manual shows."],
] as const)("cardFitting(facts) fits a %s as it is built", (style, words) => {
  // A screen has no arrow.
  const arrows = style === "screen" ? [] : [arrow];
  expect(said({ elements: [cardElement("A", { style })] })).toEqual([wipe, ...arrows, `step: A: ${words}`, torque]);
});

const dry = "Fit dry; its air is primed out.";
const { priming } = cardFacts();
const filled = (more: Partial<CardPriming>, pump: CardFacts["pump"] = "fixed") =>
  said({ pump, priming: { ...priming, ...more } }).slice(1, -3);
test.each([
  [
    { assumed: ["A", "B"] },
    "fixed",
    [
      "step: Do not prefill A and B: nothing here says the manual allows it, and many forbid it: what is poured in is not " +
        `filtered. ${dry}`,
    ],
  ],
  [{ forbidden: ["A"] }, "fixed", [`step: Do not prefill A: the file says the manual forbids it. ${dry}`]],
  [
    { forbidden: ["A"], saidAllowed: true },
    "fixed",
    [`step: Do not prefill A: the file says the manual forbids it, whatever was asked. ${dry}`],
  ],
  [
    { forbidden: ["A"] },
    "none",
    ["step: Do not prefill A: the file says the manual forbids it. Fit dry; the head fills it."],
  ],
  [
    { allowed: ["A"] },
    "fixed",
    [
      "step: Prefill A (the manual allows it, by the file) through the dirty side only, the outer holes, with clean fuel; " +
        "never down the middle, which is the clean side.",
    ],
  ],
  [
    { allowed: ["A", "B"], saidAllowed: true },
    "fixed",
    [
      "step: Prefill A and B (the manual allows it, as was said) through the dirty side only, the outer holes, with clean " +
        "fuel; never down the middle, which is the clean side.",
    ],
  ],
  [{}, "fixed", []],
] as const)(
  "cardFitting(facts) fills beforehand what the manual lets it, and nothing else: %j",
  (more, pump, words) => {
    expect(filled(more, pump)).toEqual(words);
  },
);

test("cardFitting(facts) says of elements nobody spoke of first, then of those forbidden, then of those allowed", () => {
  const items = filled({ allowed: ["A"], forbidden: ["B"], assumed: ["C"] });
  expect(items.map((text) => text.slice(0, 22))).toEqual([
    "step: Do not prefill C",
    "step: Do not prefill B",
    "step: Prefill A (the m",
  ]);
});

const arrows = (...elements: CardElement[]) => said({ elements }).filter((text) => text.includes("arrow"));
test("cardFitting(facts) names those with the same neighbours together", () => {
  const [a, b] = [cardElement("A"), cardElement("B")];
  const to = cardElement("C", { to: "the lift pump" });
  const from = cardElement("D", { from: "elbows" });
  const screen = cardElement("S", { style: "screen" });
  expect(arrows(a, to, b, from, screen)).toEqual([
    "step: A and B: arrow along the flow, IN from tank hose, OUT to pump line.",
    "step: C: arrow along the flow, IN from tank hose, OUT to the lift pump.",
    "step: D: arrow along the flow, IN from elbows, OUT to pump line.",
  ]);
});

test("cardFitting(facts) says which are backwards now, apart from their neighbours that are not", () => {
  const [a, b] = [cardElement("A", { reversed: true }), cardElement("B", { reversed: true })];
  expect(arrows(a, cardElement("C"))).toEqual([
    "step: A: arrow along the flow, IN from tank hose, OUT to pump line. It is backwards now: turn it.",
    "step: C: arrow along the flow, IN from tank hose, OUT to pump line.",
  ]);
  expect(arrows(a, b)).toEqual([
    "step: A and B: arrow along the flow, IN from tank hose, OUT to pump line. They are backwards now: turn them.",
  ]);
});
