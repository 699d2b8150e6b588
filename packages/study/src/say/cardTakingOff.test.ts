import { expect, test } from "vitest";
import { cardElement, cardFacts, itemTexts } from "../../../../tests/support/cardFacts.js";
import type { CardDuplex, CardElement, CardFacts } from "../card/CardAnswer.js";
import { cardTakingOff } from "./cardTakingOff.js";

const said = (more: Partial<CardFacts> = {}) => itemTexts(cardTakingOff(cardFacts(more), "metric"));
const stop = "step: Stop the engine, take the key, let hot parts cool. Wipe around every joint.";
const shut =
  "step: Shut the fuel cock, or clamp the line where there is none: a full tank stands {head over A|0.20 m} over A and " +
  "would run out. Open the tank cap, then crack a bleed screw to let pressure off.";
const spinOn = "step: A: unscrew over the tray, keep the full side up; see that the old seal came off with it.";
const look = (wax = "") =>
  "step: Open the old element over the tray. Black slime: growth, so water in the tank; rust: tank or drums; glitter: wear " +
  `before the element; drops of water: drain sooner${wax}; torn or caved in: it went past its limit; clean though the ` +
  "gauge read high: the trouble is elsewhere.";

test("cardTakingOff(facts, units) stops, makes safe, takes off and looks at what was caught, in that order", () => {
  expect(said()).toEqual([
    "step: Before stopping, read the gauge at the pump at full load, for the log.",
    stop,
    shut,
    spinOn,
    look(),
  ]);
});

test("cardTakingOff(facts, units) of what gravity feeds reads the pressure at the engine", () => {
  expect(said({ pump: "none" })[0]).toBe(
    "step: Before stopping, read the pressure at the engine at full load, for the log.",
  );
});

test.each([
  ["spin-on", "unscrew over the tray, keep the full side up; see that the old seal came off with it."],
  [
    "cartridge",
    "drain the housing by its screw, loosen cover or centre bolt, lift the element out; keep springs and washers in their order.",
  ],
  ["in-line", "clamp both hoses, note the arrow, loosen the clips, draw it out with both ends up."],
  ["bowl", "hold the bowl, free its nut or clip, lower it level into the tray, take the element out."],
  [
    "in-tank",
    "tank vapour is in the opening, so no spark; draw the pick-up out slowly, cap the line, cover the opening.",
  ],
  ["screen", "take out, look, brush in clean fuel and blow through against the flow; torn gauze is replaced."],
  [null, "the file does not say how it is built; take it off as the manual shows."],
] as const)("cardTakingOff(facts, units) takes off a %s as it is built", (style, words) => {
  const items = said({ elements: [cardElement("A", { style })] });
  expect(items[3]).toBe(`step: A: ${words}`);
  // A screen is cleaned, and has no old element to open.
  expect(items.slice(4)).toEqual(style === "screen" ? [] : [look()]);
});

test("cardTakingOff(facts, units) takes those built alike together, in the order they are met", () => {
  const elements = [
    cardElement("A"),
    cardElement("S", { style: "screen" }),
    cardElement("B"),
    cardElement("C", { style: "in-line" }),
  ];
  expect(said({ elements }).slice(3)).toEqual([
    "step: A and B: unscrew over the tray, keep the full side up; see that the old seal came off with it.",
    "step: S: take out, look, brush in clean fuel and blow through against the flow; torn gauze is replaced.",
    "step: C: clamp both hoses, note the arrow, loosen the clips, draw it out with both ends up.",
    look(),
  ]);
});

test("cardTakingOff(facts, units) reckons with wax below 5 °C", () => {
  expect(said({ temperature: 278.15 }).at(-1)).toBe(look());
  expect(said({ temperature: 278.1 }).at(-1)).toBe(look("; pale jelly: wax, or ice"));
});

const of = (head: number, style: CardElement["style"] = "spin-on", name = "A") => cardElement(name, { head, style });
const cap = "Open the tank cap, then crack a bleed screw to let pressure off.";
const clamp = "Shut the fuel cock, or clamp the line where there is none";
test.each([
  ["tank cock", [of(0.2)], `Shut tank cock: a full tank stands {head over A|0.20 m} over A and would run out. ${cap}`],
  [
    null,
    [of(0.2), of(0.9, "bowl", "B"), of(-0.1, "spin-on", "C")],
    `${clamp}: a full tank stands {head over B|0.90 m} over B and would run out. ${cap}`,
  ],
  [
    null,
    [of(-0.3), of(-0.1, "bowl", "B")],
    `${clamp}: the tank lies {head over B|0.10 m} under B, so fuel falls back and air comes in. ${cap}`,
  ],
  [
    null,
    [of(0), of(2, "in-tank", "B"), of(2, "screen", "C")],
    `${clamp}: the tank lies {head over A|0.00 m} under A, so fuel falls back and air comes in. ${cap}`,
  ],
  [null, [of(0.2, "in-tank")], `${clamp}; open the tank cap to let pressure off.`],
  ["tank cock", [of(0.2, "screen")], "Shut tank cock; open the tank cap to let pressure off."],
])(
  "cardTakingOff(facts, units) with the cock %j says what the fuel does where the deepest opens (%#)",
  (cock, elements, words) => {
    expect(said({ cock, elements })[2]).toBe(`step: ${words}`);
  },
);

const vacuum = { low: 11e3, middle: 11.7e3, high: 12e3 };
const duplex: CardDuplex = { first: "A", through: ["B"], opened: false, vacuum, verdict: "holds" };
const pair = [cardElement("A"), cardElement("B")];
const start = "step: With the engine running only if the manual says so:";
const turn = "change over to B first, shut A and change that";
const alone = "at full load expect {vacuum alone|11.7 kPa} on that side alone";
const both = "Change the other side too: a new element takes most of the flow.";
test.each([
  [{}, pair, "fixed", `${start} ${turn}; ${alone}. ${both}`],
  [
    {},
    [cardElement("A")],
    "fixed",
    `${start} ${turn}; ${alone}. A new element beside a soiled one takes most of the flow.`,
  ],
  [
    { through: ["B", "C"] },
    pair,
    "fixed",
    `${start} change over to B and C first, shut A and change that; ${alone}. A new element beside a soiled one takes most of the flow.`,
  ],
  [
    { opened: true },
    pair,
    "fixed",
    `${start} B is shut off now: change over to it first, then shut A and change that; ${alone}. ${both}`,
  ],
  [{ vacuum: null, verdict: "starves" }, pair, "fixed", `${start} ${turn}; nothing passes on that side alone. ${both}`],
  [
    { verdict: "starves" },
    pair,
    "fixed",
    `${start} ${turn}; at full load the engine would starve on that side alone. ${both}`,
  ],
  [
    { verdict: "starves" },
    pair,
    "none",
    `${start} ${turn}; at full load the engine would starve on that side alone. ${both}`,
  ],
  [{}, pair, "none", `${start} ${turn}; the engine gets its fuel on that side alone. ${both}`],
] as const)(
  "cardTakingOff(facts, units) of a bank changes one side after the other: %j",
  (more, elements, pump, words) => {
    const items = said({ duplex: { ...duplex, ...more }, elements, pump });
    expect(items.slice(1, 3)).toEqual([stop, words]);
    expect(items).toHaveLength(6);
  },
);
