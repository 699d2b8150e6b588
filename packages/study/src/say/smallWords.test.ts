import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import { bandFigure } from "./bandText.js";
import { bandWords } from "./bandWords.js";
import { capitalWords } from "./capitalWords.js";
import { moneyText } from "./chooseMoney.js";
import { csvCell } from "./csvCell.js";
import { exactQuantity } from "./exactQuantity.js";
import { isShownSpread } from "./isShownSpread.js";
import { joined } from "./joined.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import { fig, plain, say } from "./words.js";

const ICE = 273.15;
const band = (low: number, middle: number, high: number) => ({ low, middle, high });

test("bandWords(band, kind, units, figure) names each end where they differ, and the one figure where they do not", () => {
  const said = (of: ReturnType<typeof band>) =>
    marked(bandWords(of, "vacuum", "metric", { of: "now", figure: "vacuum" }));
  expect(said(band(2100, 2900, 4000))).toBe("{now: vacuum, low end|2.1} to {now: vacuum, high end|4.0}");
  expect(said(band(2900, 2900, 2900))).toBe("{now: vacuum|2.9}");
});

test("isShownSpread(band) is of a hundredth and more, and only where the ends read apart", () => {
  expect(isShownSpread(band(100e3, 100e3, 101e3), "vacuum", "metric")).toBe(true);
  expect(isShownSpread(band(100e3, 100e3, 100.9e3), "vacuum", "metric")).toBe(false);
  expect(isShownSpread(band(-101e3, -100e3, -100e3), "vacuum", "metric")).toBe(true);
  expect(isShownSpread(band(-100.9e3, -100e3, -100e3), "vacuum", "metric")).toBe(false);
  // 1.96 and 2.04 kPa both read 2.0 kPa.
  expect(isShownSpread(band(1960, 2000, 2040), "vacuum", "metric")).toBe(false);
  expect(bandFigure(band(1960, 2000, 2060), "vacuum", "metric")).toBe("2.0 to 2.1");
});

test("capitalWords(words) begins with a large letter, and leaves a figure as it is", () => {
  expect(plain(capitalWords(say`the vacuum is ${fig("vacuum", "9.3 kPa")}`))).toBe("The vacuum is 9.3 kPa");
  const figure = say`${fig("count", "a few")} readings`;
  expect(capitalWords(figure)).toEqual(figure);
});

test("say`...` takes nested words apart, and leaves no empty piece", () => {
  const inner = say`${fig("vacuum", "9.3 kPa")} clean`;
  expect(say`${inner}${"."}`).toEqual([{ figure: "vacuum", text: "9.3 kPa" }, " clean", "."]);
  expect(say``).toEqual([]);
});

test.each([
  [[], undefined, ""],
  [["a"], undefined, "a"],
  [["a", "b"], undefined, "a, and b"],
  [["a", "b", "c"], undefined, "a, b, and c"],
  [["a", "b", "c"], "; ", "a; b; c"],
])("joined(%j, %j) puts clauses one after another", (parts, between, text) => {
  expect(
    plain(
      joined(
        parts.map((part) => [part]),
        between,
      ),
    ),
  ).toBe(text);
});

test.each([
  [84, "84"],
  [7.5, "7.50"],
  [0.004, "0"],
  [99.99, "99.99"],
  [100, "100"],
  [1234.56, "1235"],
  [-7.5, "-7.50"],
  [-1234.56, "-1235"],
])("moneyText(%d) has cents below a hundred, where there are any: %s", (amount, text) => {
  expect(moneyText(amount)).toBe(text);
});

test.each([
  ["P10 tall", "P10 tall"],
  ["A, B", '"A, B"'],
  ['1" bore', '"1"" bore"'],
  ["A\nB", '"A\nB"'],
  ["A\rB", '"A\rB"'],
])("csvCell(%j) is in quotes where it holds what would end a cell", (text, cell) => expect(csvCell(text)).toBe(cell));

describe("exactQuantity(value, kind, system) has all the digits that were stated, to five", () => {
  test.each([
    [0.0127, "bore", "us", "0.5 in"],
    [0.0095, "bore", "metric", "9.5 mm"],
    [0.0123456789, "bore", "metric", "12.346 mm"],
    [ICE + 15, "temperature", "metric", "15 °C"],
    [ICE - 12.5, "temperature", "metric", "-12.5 °C"],
    [ICE, "temperature", "metric", "0 °C"],
    [ICE, "temperature", "us", "32 °F"],
    // A thousandth of a degree is not lost among the 273 it is counted from.
    [ICE + 1.0005, "temperature", "metric", "1.0005 °C"],
    // What is left of a rounding is 0, and what is small by itself is not.
    [ICE - 160 / 9, "temperature", "us", "0 °F"],
    [1e-10, "plain", "metric", "1e-10"],
    [2.5, "plain", "metric", "2.5"],
    [0.4, "ratio", "metric", "40 %"],
    [20e3, "vacuum", "metric", "20 kPa"],
  ] as const)("exactQuantity(%d, %j, %j) is %s", (value, kind, system, text) => {
    expect(exactQuantity(value, kind, system)).toBe(text);
  });
});

// Borders of how many digits are shown, from both sides: a figure of the border itself rounds up to the next digit.
test.each([
  [9.95 * 3600, "running time", "10 h"],
  [9.94 * 3600, "running time", "9.9 h"],
  [1.2345, "plain", "1.23"],
  [99.95, "plain", "100"],
  [123.4e3, "distance", "123 km"],
  [7.4e3, "distance", "7 km"],
  [1234.5, "altitude", "1235 m"],
  [7.6, "altitude", "8 m"],
  [1.25e-3, "volume", "1.3 L"],
  [25.4e-6, "small volume", "25 mL"],
] as const)("quantity(%d, %j, 'metric') is %s", (value, kind, text) => {
  expect(quantity(value, kind, "metric")).toBe(text);
});

test("limitName(limit, pump) is the head of the tank where gravity feeds", () => {
  const limits = ["vacuum clean", "vacuum at change", "feed pressure", "vapour", "pump capacity"] as const;
  expect(limits.map((limit) => limitName(limit, "fixed"))).toEqual([
    "the vacuum limit with clean elements",
    "the vacuum limit at change",
    "the feed pressure",
    "the fuel's vapour pressure",
    "the pump's own capacity",
  ]);
  expect(limitName("feed pressure", "none")).toBe("the head of the tank");
  expect(limitName("vapour", "none")).toBe("the fuel's vapour pressure");
});

test("sideWords(pump) has one side, from tank to engine, where there is no pump", () => {
  expect(sideWords("none")).toEqual({
    suction: "Tank to engine",
    delivery: "To the engine",
    inlet: "at the engine",
    feed: "at the engine",
  });
  expect(sideWords("pulse")).toEqual({
    suction: "Tank to pump",
    delivery: "Pump to injection pump",
    inlet: "at the pump",
    feed: "at the injection pump",
  });
});
