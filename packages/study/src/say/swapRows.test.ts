import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { SwapAnswer, SwapSide } from "../choose/SwapAnswer.js";
import { swapRows } from "./swapRows.js";

const HOUR = 3600;
const WARM = 303.15;
const COLD = 263.15;
const band = (low: number, middle = low, high = low) => ({ low, middle, high });
const pointAt = (temperature: number, inHand: number, vacuum = band(9e3)) => ({
  temperature,
  inHand: band(inHand, inHand + 0.1, inHand + 0.2),
  vacuum,
});
const side = {
  element: "P30",
  code: "15/13/10",
  fillingUnknown: null,
  warm: pointAt(WARM, 0.9),
  cold: pointAt(COLD, 0.3),
  inHandAtChange: 0.2,
  starves: { code: "below", temperature: 255.15 },
  lifeKnown: true,
  life: 300 * HOUR,
  spread: { low: 200 * HOUR, middle: 300 * HOUR, high: 450 * HOUR, chance: 0.18, chanceError: 0.012, draws: 400 },
  cost: { changes: 2.44, elements: 84, labour: 7.5, stoppages: 120.4, total: 212 },
} as unknown as SwapSide;
const answer = {
  pump: "fixed",
  asked: "15/13/10",
  interval: { time: 250 * HOUR, source: null },
  now: side,
  changed: { ...side, element: "P10" },
} as unknown as SwapAnswer;

const rowsOf = (more: object = {}) => swapRows({ ...answer, ...more } as SwapAnswer, "metric");
const table = (more: object = {}) =>
  rowsOf(more).map(({ name, now, changed, temperature }) => [name, marked(now), marked(changed), temperature]);
/** The row so called, with one side changed; nothing where it is left out. */
const cells = (name: string, now: object, changed: object = now, more: object = {}) =>
  table({ now: { ...side, ...now }, changed: { ...side, ...changed }, ...more })
    .find(([is]) => is === name)
    ?.slice(1, 3);

test("swapRows(answer, units) has both sides beside each other, each figure by its name and its side", () => {
  const both = (figure: string, text: string) => [`{now: ${figure}|${text}}`, `{changed: ${figure}|${text}}`];
  const range = (of: string) => `{${of}: life, 10 % of draws|200} to {${of}: life, 90 % of draws|450 h}`;
  expect(table()).toEqual([
    ["element", "P30", "P10", null],
    ["at the injection pump, asked 15/13/10", "15/13/10", "15/13/10", null],
    ["in hand at 30 °C", ...both("in hand, low end", "90 %"), WARM],
    ["in hand at -10 °C", ...both("in hand, low end", "30 %"), COLD],
    ["and with the soil of the interval", ...both("in hand at the change", "20 %"), null],
    ["vacuum at -10 °C, clean, kPa", ...both("vacuum", "9.0"), COLD],
    ["starves below", ...both("starves below", "-18 °C"), null],
    ["lasts, at the likely figures", ...both("end of life", "300 h"), null],
    ["10 to 90 % of what may be", range("now"), range("changed"), null],
    ["chance of starving before 250 h", ...both("chance of an end before the service interval", "18 %"), null],
    ["changes a year", ...both("changes a year", "2.4"), null],
    ["elements a year", ...both("cost of elements in a year", "84"), null],
    ["work a year", ...both("cost of work in a year", "7.50"), null],
    ["stoppages a year, at their chance", ...both("cost of stoppages in a year", "120"), null],
    ["cost a year", ...both("cost of a year", "212"), null],
  ]);
});

test("swapRows(answer, units) of what gravity feeds has the pressure over the air, with its ends turned round", () => {
  const cold = pointAt(COLD, 0.3, band(-4e3, -3e3, -2e3));
  const rows = table({ pump: "none", asked: null, changed: { ...side, cold } });
  expect(rows[1]?.[0]).toBe("at the engine");
  expect(rows[5]).toEqual([
    "pressure at -10 °C, clean, kPa",
    "{now: feed pressure clean|-9.0}",
    "{changed: feed pressure clean, low end|2.0} to {changed: feed pressure clean, high end|4.0}",
    COLD,
  ]);
});

test("swapRows(answer, units) has one row in hand where one temperature is all", () => {
  const names = table({ changed: { ...side, warm: side.cold } }).map(([name]) => name);
  expect(names.filter((name) => String(name).startsWith("in hand"))).toEqual(["in hand at -10 °C"]);
});

test("swapRows(answer, units) leaves out what is known of neither side, and leaves empty what is not known of one", () => {
  const cost = { changes: null, elements: null, labour: null, stoppages: null, total: null };
  const none = { code: null, inHandAtChange: null, lifeKnown: false, spread: null, cost };
  expect(table({ now: { ...side, ...none }, changed: { ...side, ...none } }).map(([name]) => name)).toEqual([
    "element",
    "in hand at 30 °C",
    "in hand at -10 °C",
    "vacuum at -10 °C, clean, kPa",
    "starves below",
  ]);
  expect(rowsOf({ now: { ...side, ...none } }).filter(({ now }) => now.length === 0)).toHaveLength(10);
  expect(table({ interval: null }).map(([name]) => name)).not.toContain("chance of starving before ");
});

describe("swapRows(answer, units) says", () => {
  test.each([
    ["not above", "not down to {now: starves below|-18 °C}", "not down to {changed: starves below|-18 °C}"],
    ["always", "{now: starves below|-18 °C} and up", "{changed: starves below|-18 °C} and up"],
  ])("of starving %s that it does not, or always does", (code, ...both) => {
    expect(cells("starves below", { starves: { code, temperature: 255.15 } })).toEqual(both);
  });

  test("of a life that it has no end, none at all, or none that is known", () => {
    const name = "lasts, at the likely figures";
    expect(cells(name, { life: null }, { life: 0 })).toEqual(["over ten years", "not at all"]);
    expect(cells(name, {}, { fillingUnknown: "catch" })).toEqual(["{now: end of life|300 h}", ""]);
    expect(cells(name, {}, { lifeKnown: false })).toEqual(["{now: end of life|300 h}", ""]);
  });

  test("of a range one figure where its ends are alike, and nothing where there is none", () => {
    const name = "10 to 90 % of what may be";
    const spread = (low: number, high: number) => ({ spread: { ...side.spread, low, high } });
    const [same, never] = [spread(300 * HOUR, 300 * HOUR), spread(Infinity, Infinity)];
    expect(cells(name, same, never)).toEqual(["{now: life, 10 % of draws|300 h}", "ten years on"]);
    const half = cells(name, spread(300 * HOUR, Infinity), spread(0, 300 * HOUR));
    expect(half).toEqual([
      "{now: life, 10 % of draws|300} to ten years on",
      "{changed: life, 10 % of draws|0.0} to {changed: life, 90 % of draws|300 h}",
    ]);
    expect(cells(name, {}, spread(0, 0))?.[1]).toBe("");
    expect(cells(name, {}, { fillingUnknown: "capacity" })?.[1]).toBe("");
    expect(cells(name, {}, { spread: null })?.[1]).toBe("");
  });
});
