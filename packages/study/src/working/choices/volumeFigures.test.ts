import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import type { CardAnswer } from "../../card/CardAnswer.js";
import type { CardOptions } from "../../card/card.js";
import { proofOf } from "../proof.js";
import type { CardGiven } from "./CardGiven.js";
import { volumeFigures } from "./volumeFigures.js";

const lorry = demoSystem("lorry");
const area = (bore: number) => (Math.PI / 4) * bore ** 2;
const pumpHose = area(0.0127) * 1.8;
const pipe = area(0.01);

/** What a card says of volumes, worked out by hand. */
const answer = (more: object, priming: object = {}) =>
  ({
    volumes: { bodies: 0.0014, lines: 0 },
    priming: { forbidden: [], assumed: [], stroke: null, fill: 0.8, least: 0, most: 0, ...priming },
    ...more,
  }) as unknown as CardAnswer;

function figures(options: CardOptions, own: CardAnswer, system = lorry) {
  const makers = volumeFigures({ system, answer: own, options } as unknown as CardGiven);
  for (const { make, name } of makers) {
    const step = make();
    if (step) expect(proofOf({ step }).misses, name).toEqual([]);
  }
  return makers;
}
const lines = (...given: Parameters<typeof figures>) =>
  figureLines(figures(...given)).map((line) => line.replace("Fuel and air: ", ""));

test("volumeFigures(given) tells what runs out when the elements named are opened, and the strokes to get the air out", () => {
  const F4 = { at: ["fine filter F4"], primer: 1e-5 };
  // Only the fine filter is opened, and the pipe before it; it comes dry.
  const beside = { volumes: { bodies: 0.0006, lines: pipe } };
  const priming = { forbidden: ["fine filter F4"], stroke: 1e-5, least: 0.0006, most: 0.0006 + pipe };
  expect(lines(F4, answer(beside, priming))).toEqual([
    "body of fine filter F4 = 0.0006 | body of fine filter F4 (volume, m3) | file delivery[1].filter.body | 0.0006",
    "fuel in the bodies = 0.0006 | fuel in the bodies (volume, m3) | volumes: v[] body of fine filter F4",
    "fuel in the lines beside = 0.0000785398 | fuel in the lines beside (volume, m3) | volumes: v[] fuel in delivery pipe",
    "sweep of a stroke = 0.00001 | sweep of a stroke (small volume, m3) | asked primer | 0.00001",
    "share of the sweep that moves = 0.8 | share of the sweep that moves (ratio, 1) | source common practice, no source | 0.8",
    "least air to move = 0.0006 | least air to move (volume, m3) | volumes: v[] body of fine filter F4",
    "most air to move = 0.00067854 | most air to move (volume, m3) | volumes: v[] volume",
    // 0.6 L in strokes of 8 mL are 75; 0.67854 L are 84.8.
    "least strokes = 75 | least strokes (plain, 1) | words rounded up to whole ones: strokes | 75",
    "most strokes = 85 | most strokes (plain, 1) | words rounded up to whole ones: strokes | 85",
  ]);
});

test("volumeFigures(given) counts every element, and as air only what is fitted dry", () => {
  const both = { volumes: { bodies: 0.0014, lines: pumpHose + pipe } };
  const priming = { assumed: ["prefilter P15"], stroke: 1.2e-5, least: 0.0008, most: 0.0008 + pumpHose + pipe };
  const own = lines({}, answer(both, priming));
  expect(own.slice(0, 3)).toEqual([
    "body of prefilter P15 = 0.0008 | body of prefilter P15 (volume, m3) | file suction[1].filter.body | 0.0008",
    "bowl of prefilter P15 = 0.00025 | bowl of prefilter P15 (volume, m3) | file suction[1].filter.bowl | 0.00025",
    "body of fine filter F4 = 0.0006 | body of fine filter F4 (volume, m3) | file delivery[1].filter.body | 0.0006",
  ]);
  expect(own[3]).toMatch("volumes: v[] body of prefilter P15, body of fine filter F4");
  expect(own[5]).toBe(
    "sweep of a stroke = 0.000012 | sweep of a stroke (small volume, m3) | file service.primer | 0.000012",
  );
  expect(own[7]).toBe(
    "least air to move = 0.0008 | least air to move (volume, m3) | volumes: v[] body of prefilter P15",
  );
  const [most] = figures({}, answer(both, priming)).flatMap(({ name, make }) =>
    name === "most air to move" ? (make() ?? []) : [],
  );
  expect(stepLines(most ? [most] : [])).toContain("bore of pump hose (bore, m) | file suction[2].line.bore | 0.0127");
});

test("volumeFigures(given) has no strokes where no sweep is known", () => {
  const names = figures(
    {},
    answer({ volumes: { bodies: 0.0014, lines: pumpHose + pipe } }, { most: pumpHose + pipe }),
  ).flatMap(({ name, make }) => (make() ? [name] : []));
  expect(names).not.toContain("sweep of a stroke");
  expect(names).not.toContain("least strokes");
  expect(names.at(-1)).toBe("most air to move");
});

test("volumeFigures(given) of an element that is lifted out of the tank opens nothing", () => {
  const paper = demoSystem("dewatering-paper");
  expect(lines({}, answer({ volumes: { bodies: 0, lines: 0 } }), paper)).toEqual([
    "fuel in the bodies = 0 | fuel in the bodies (volume, m3) | words nothing is opened that holds any:  | 0",
    "fuel in the lines beside = 0 | fuel in the lines beside (volume, m3) | words nothing is opened that holds any:  | 0",
    "share of the sweep that moves = 0.8 | share of the sweep that moves (ratio, 1) | source common practice, no source | 0.8",
    "least air to move = 0 | least air to move (volume, m3) | words nothing is opened that holds any:  | 0",
    "most air to move = 0 | most air to move (volume, m3) | volumes: v[] volume",
  ]);
});

test("volumeFigures(given) has no body and no bowl of a screen, which holds what the line does", () => {
  const crane = demoSystem("crane");
  const makers = figures({ at: ["pick-up screen"] }, answer({ volumes: { bodies: 0, lines: 0 } }), crane);
  expect(makers.slice(0, 2).map(({ name }) => name)).toEqual(["fuel in the bodies", "fuel in the lines beside"]);
});
