import { expect, test } from "vitest";
import { type KindName, kinds } from "./kinds.js";
import { spreadEnds } from "./spreadEnds.js";
import { spreadQuantity } from "./spreadQuantity.js";

function ends(text: string, kind: KindName): readonly [number, number, number] {
  const read = spreadQuantity(text, kind);
  if (read === undefined || "fault" in read) throw new Error(read?.fault.message ?? `no spread in ${text}`);
  return [read.low, read.value, read.high];
}

const spreads: readonly (readonly [text: string, kind: KindName, ends: readonly [number, number, number]])[] = [
  ["0.4 mg/L ± 50 %", "concentration", [2e-4, 4e-4, 6e-4]],
  ["0.4 mg/L ±50%", "concentration", [2e-4, 4e-4, 6e-4]],
  ["0.4 mg/L +/- 50 %", "concentration", [2e-4, 4e-4, 6e-4]],
  ["0.40 ± 0.05 mg/L", "concentration", [3.5e-4, 4e-4, 4.5e-4]],
  ["0.40 mg/L ± 50 ug/L", "concentration", [3.5e-4, 4e-4, 4.5e-4]],
  ["2 to 8 mg/L", "concentration", [2e-3, 4e-3, 8e-3]],
  ["2 mg/L to 8 g/m3", "concentration", [2e-3, 4e-3, 8e-3]],
  ["0 to 8 mg/L", "concentration", [0, 4e-3, 8e-3]],
  ["1/4 to 1 in", "bore", [0.00635, 0.0127, 0.0254]],
  ["0.9 m ± 10 %", "height", [0.81, 0.9, 0.99]],
  ["-0.9 m ± 10 %", "height", [-0.99, -0.9, -0.81]],
  ["-20 to 60 cm", "height", [-0.2, 0.2, 0.6]],
  ["15 degC ± 5 K", "temperature", [283.15, 288.15, 293.15]],
  ["15 ± 5 degC", "temperature", [283.15, 288.15, 293.15]],
  ["15 °C ± 9 °F", "temperature", [283.15, 288.15, 293.15]],
  ["59 ± 9 degF", "temperature", [283.15, 288.15, 293.15]],
  ["288.15 ± 5 K", "temperature", [283.15, 288.15, 293.15]],
  ["10 to 20 degC", "temperature", [283.15, 288.15, 293.15]],
  ["50 degF to 20 degC", "temperature", [283.15, 288.15, 293.15]],
  ["−10 to 20 °C", "temperature", [263.15, 278.15, 293.15]],
];

test.each(spreads)("spreadQuantity(%j, %j) has its ends and its middle in SI", (text, kind, wanted) => {
  ends(text, kind).forEach((value, at) => {
    // Two or three roundings of the largest figure that takes part.
    expect(Math.abs(value - (wanted[at] ?? Number.NaN))).toBeLessThanOrEqual(5e-16 * Math.abs(wanted[2]));
  });
});

test.each(["0.4 mg/L", "up to 5 mg/L", "5 ± -2 mg/L", "2 to 5 to 8 mg/L", "± 2 mg/L", "2 mg/L ±", "2 to mg/L", ""])(
  "spreadQuantity(%j) leaves a text without a spread to quantity",
  (text) => {
    expect(spreadQuantity(text, "concentration")).toBeUndefined();
  },
);

const faults: readonly (readonly [text: string, kind: KindName, message: string])[] = [
  ["5 to 2 mg/L", "concentration", '"5 to 2 mg/L" runs backwards; write it as "2 to 5 mg/L"'],
  ["5 mg/L to 9 ug/L", "concentration", '"5 mg/L to 9 ug/L" runs backwards; write it as "9 ug/L to 5 mg/L"'],
  ["2 to 2 mg/L", "concentration", '"2 to 2 mg/L" has no width; write one figure: "2 mg/L"'],
  ["2 ± 0 mg/L", "concentration", '"2 ± 0 mg/L" has no width; write one figure: "2 mg/L"'],
  ["0 m ± 10 %", "height", '"0 m ± 10 %" has no width; write one figure: "0 m"'],
  [
    "0.1 ± 0.2 mg/L",
    "concentration",
    '"0.1 ± 0.2 mg/L" crosses zero, and a concentration is never negative; write both ends',
  ],
  [
    "2 mg/L ± 100 %",
    "concentration",
    '"2 mg/L ± 100 %" reaches down to zero; write less than 100 %, or both ends: "1 mg/L to 4 mg/L"',
  ],
  [
    "15 degC ± 10 %",
    "temperature",
    '"15 degC ± 10 %": per cent of a temperature depends on its scale; write the spread in degrees, such as "15 degC ± 5 K"',
  ],
  ["2 to 5", "concentration", '"2 to 5" lacks a unit; write it as "2 to 5 mg/L"'],
  ["2 mg/L to 5", "concentration", '"2 mg/L to 5" lacks a unit; write it as "2 to 5 mg/L"'],
  ["15 degC ± 5", "temperature", '"15 degC ± 5" lacks a unit; write it as "15 ± 5 degC"'],
  ["2 ± 50 %", "concentration", '"2 ± 50 %" lacks a unit; write it as "2 mg/L ± 50 %"'],
  ["2-5 mg/L", "concentration", '"2-5 mg/L" may be a spread; write it as "2 to 5 mg/L"'],
  ["2 – 5 mg/L", "concentration", '"2 – 5 mg/L" may be a spread; write it as "2 to 5 mg/L"'],
  ["2 to 5 kPa", "concentration", '"2 to 5 kPa" is a pressure; a density is wanted, such as "150 mg/L"'],
  ["15 degC ± 5 kPa", "temperature", '"5 kPa" is a pressure; a temperature is wanted, such as "15 degC"'],
  ["2 to 5 KPA", "pressure", '"2 to 5 KPA": "KPA" is not a unit known here; write "kPa"'],
  [
    "90 to 120 degC",
    "temperature",
    '"90 to 120 degC" is too high for a fuel temperature; -60 degC to 100 degC makes sense, such as "15 degC"',
  ],
];

test.each(faults)("spreadQuantity(%j, %j) says what is wrong and what would be right", (text, kind, message) => {
  expect(spreadQuantity(text, kind)).toMatchObject({ fault: { message } });
});

test("spreadQuantity(1-1/4 in) stays the inches of a hose", () => {
  expect(spreadQuantity("1-1/4 in", "bore")).toBeUndefined();
});

test("spreadEnds(text) writes ends that each read as the spread's own, for every kind", () => {
  for (const [name, { least, most }] of Object.entries(kinds)) {
    const kind = name as KindName;
    const text = `${least} to ${most}`;
    const [low, , high] = ends(text, kind);
    const written = spreadEnds(text);
    expect(ends(`${written?.low} to ${written?.high}`, kind)).toEqual([low, expect.any(Number), high]);
  }
});
