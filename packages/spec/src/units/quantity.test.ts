import { expect, test } from "vitest";
import { type KindName, kinds } from "./kinds.js";
import { quantity } from "./quantity.js";
import { unitWords } from "./words.js";

function si(text: string, kind: KindName): number {
  const read = quantity(text, kind);
  if ("fault" in read) throw new Error(read.fault.message);
  return read.value;
}

function fault(text: string, kind: KindName): string {
  const read = quantity(text, kind);
  return "fault" in read ? read.fault.message : `no fault: ${read.value}`;
}

/** A product of decimals over a product of decimals, worked out in whole numbers and rounded once. */
function exact(over: readonly string[], under: readonly string[] = []): number {
  let [numerator, denominator] = [1n, 1n];
  const times = (text: string, inverse: boolean) => {
    const [mantissa = "", exponent = "0"] = text.split("e");
    const [whole = "", decimals = ""] = mantissa.split(".");
    const power = Number(exponent) - decimals.length;
    const top = BigInt(whole + decimals) * 10n ** BigInt(Math.max(0, power));
    const bottom = 10n ** BigInt(Math.max(0, -power));
    numerator *= inverse ? bottom : top;
    denominator *= inverse ? top : bottom;
  };
  for (const text of over) times(text, false);
  for (const text of under) times(text, true);
  return Number((numerator * 10n ** 60n) / denominator) / 1e60;
}

// Definitions: NIST SP 811 (2008) appendix B and the international yard and pound of 1959 (from memory); the figures are
// exact by definition, the arithmetic is done here in whole numbers.
const exactly: readonly (readonly [text: string, kind: KindName, value: number])[] = [
  ["10 mm", "bore", exact(["0.010"])],
  ["10 um", "size", exact(["10e-6"])],
  ["10 micron", "size", exact(["10e-6"])],
  ["3 thou", "gap", exact(["3", "2.54e-5"])],
  ["7 ft", "length", exact(["7", "0.3048"])],
  ["5/16 in", "bore", exact(["5", "0.0254"], ["16"])],
  ["1 1/4 in", "bore", exact(["5", "0.0254"], ["4"])],
  ["3 mi", "distance", exact(["3", "1609.344"])],
  ["3 ft2", "area", exact(["3", "0.3048", "0.3048"])],
  ["200 L/h", "flow", exact(["200e-3"], ["3600"])],
  ["200 lph", "flow", exact(["200e-3"], ["3600"])],
  ["7 lpm", "flow", exact(["7e-3"], ["60"])],
  ["30 gal/h", "flow", exact(["30", "231", "0.0254", "0.0254", "0.0254"], ["3600"])],
  ["30 gph", "flow", exact(["30", "231", "0.0254", "0.0254", "0.0254"], ["3600"])],
  ["0.7 gpm", "flow", exact(["0.7", "231", "0.0254", "0.0254", "0.0254"], ["60"])],
  ["5 floz", "stroke", exact(["5", "231", "0.0254", "0.0254", "0.0254"], ["128"])],
  ["30 impgal/h", "flow", exact(["30", "4.54609e-3"], ["3600"])],
  ["10 cfm", "airFlow", exact(["10", "0.3048", "0.3048", "0.3048"], ["60"])],
  ["1.2 m3/h", "kv", exact(["1.2"], ["3600"])],
  ["12 inHg", "vacuum", exact(["12", "25.4e-3", "13595.1", "9.80665"])],
  ["77 mmHg", "vacuum", exact(["77e-3", "13595.1", "9.80665"])],
  ["0.5 inH2O", "drop", exact(["0.5", "25.4e-3", "1000", "9.80665"])],
  ["11 psi", "pressure", exact(["11", "4.4482216152605"], ["6.4516e-4"])],
  ["300 mbar", "vacuum", exact(["300e2"])],
  ["300 torr", "vacuum", exact(["300", "101325"], ["760"])],
  ["3 cSt", "kinematicViscosity", exact(["3e-6"])],
  ["0.03 St", "kinematicViscosity", exact(["0.03e-4"])],
  ["3 mm2/s", "kinematicViscosity", exact(["3e-6"])],
  ["2.5 cP", "dynamicViscosity", exact(["2.5e-3"])],
  ["0.025 P", "dynamicViscosity", exact(["0.025e-1"])],
  ["2.5 mPa s", "dynamicViscosity", exact(["2.5e-3"])],
  ["3 darcy", "permeability", exact(["3e-7"], ["101325"])],
  ["150 mg/L", "concentration", exact(["0.150"])],
  ["40 g", "mass", exact(["0.040"])],
  ["3 lb", "mass", exact(["3", "0.45359237"])],
  ["90 hp", "power", exact(["90", "550", "0.3048", "4.4482216152605"])],
  ["90 PS", "power", exact(["90", "75", "9.80665"])],
  ["210 g/kWh", "specificConsumption", exact(["0.210"], ["3.6e6"])],
  ["0.4 lb/hp-h", "specificConsumption", exact(["0.4", "0.45359237"], ["550", "0.3048", "4.4482216152605", "3600"])],
  ["250 h", "duration", exact(["250", "3600"])],
  ["15 degC", "temperature", exact(["288.15"])],
  ["59 degF", "temperature", exact(["518.67", "5"], ["9"])],
  ["2e5 1/m", "inertia", exact(["2e5"])],
];

test.each(exactly)("quantity(%j, %j) is exact to a relative 1e-15", (text, kind, value) => {
  expect(Math.abs(si(text, kind) / value - 1)).toBeLessThanOrEqual(1e-15);
});

// NIST SP 811 appendix B, figures as printed (from memory, recomputed); tolerance is half their last digit.
const printed: readonly (readonly [text: string, kind: KindName, value: number, tolerance: number])[] = [
  ["1 psi", "pressure", 6894.757, 5e-4],
  ["1 inHg", "vacuum", 3386.389, 5e-4],
  ["1 inH2O", "drop", 249.0889, 5e-5],
  ["1 mmHg", "pressure", 133.3224, 5e-5],
  ["1 atm", "pressure", 101325, 0],
  ["6 inHg", "vacuum", 20318, 0.5],
  ["12 inHg", "vacuum", 40637, 0.5],
  ["1 darcy", "permeability", 9.869233e-13, 5e-20],
];

test.each(printed)("quantity(%j, %j) is the published %d", (text, kind, value, tolerance) => {
  expect(Math.abs(si(text, kind) - value)).toBeLessThanOrEqual(tolerance);
});

const sameAs: readonly (readonly [text: string, plain: string, kind: KindName])[] = [
  ["3 mm²/s", "3 mm2/s", "kinematicViscosity"],
  ["3 mm^2/s", "3 mm2/s", "kinematicViscosity"],
  ["1 m³/h", "1 m3/h", "flow"],
  ["2.5 mPa·s", "2.5 mPa s", "dynamicViscosity"],
  ["2.5 mPa.s", "2.5 mPa s", "dynamicViscosity"],
  ["2.5 mPas", "2.5 mPa s", "dynamicViscosity"],
  ["2.5 mPa*s", "2.5 mPa s", "dynamicViscosity"],
  ["10 µm", "10 um", "size"],
  ["10 μm", "10 um", "size"],
  ["10 microns", "10 um", "size"],
  ["15 °C", "15 degC", "temperature"],
  ["15°C", "15 degC", "temperature"],
  ["15 ℃", "15 degC", "temperature"],
  ["59 °F", "59 degF", "temperature"],
  ["−10 degC", "-10 degC", "temperature"],
  ["+15 degC", "15 degC", "temperature"],
  ["10\u00a0mm", "10 mm", "bore"],
  ["10\u202fmm", "10 mm", "bore"],
  ["10mm", "10 mm", "bore"],
  ["  10   mm ", "10 mm", "bore"],
  ["1e1 mm", "10 mm", "bore"],
  ["10. mm", "10 mm", "bore"],
  [".9 m", "0.9 m", "height"],
  ["210 g/kW h", "210 g/kWh", "specificConsumption"],
  ["210 g/(kW h)", "210 g/kWh", "specificConsumption"],
  ["0.4 lb/(hp h)", "0.4 lb/hp-h", "specificConsumption"],
  ["30 imp gal/h", "30 impgal/h", "flow"],
  ["30 US gal/h", "30 gal/h", "flow"],
  ["0.8 fl oz", "0.8 floz", "stroke"],
  ["0.8 fl. oz.", "0.8 floz", "stroke"],
  ["1-1/4 in", "1 1/4 in", "bore"],
  ["6 in Hg", "6 inHg", "vacuum"],
  ["6 in. Hg", "6 inHg", "vacuum"],
  ['6 "Hg', "6 inHg", "vacuum"],
  ["20 in H2O", "20 inH2O", "vacuum"],
  ["150 mm Hg", "150 mmHg", "vacuum"],
  ["2e5/m", "2e5 1/m", "inertia"],
  ["2e5 m^-1", "2e5 1/m", "inertia"],
];

test.each(sameAs)("quantity(%j) is %j", (text, plain, kind) => {
  expect(si(text, kind)).toBe(si(plain, kind));
});

const faults: readonly (readonly [text: string, kind: KindName, message: string])[] = [
  ["10", "bore", '"10" has no unit; write it as "10 mm"'],
  ["1e1", "length", '"1e1" has no unit; write it as "1e1 m"'],
  ["10mm2", "length", '"10mm2" is an area; a length is wanted, such as "6 m"'],
  [
    "3 mm2/s",
    "dynamicViscosity",
    '"3 mm2/s" is a kinematic viscosity; a dynamic viscosity is wanted, such as "2.5 mPa s"',
  ],
  ["10 L", "flow", '"10 L" is a volume; a flow is wanted, such as "200 L/h"'],
  ["10 kg/h", "flow", '"10 kg/h" is a mass flow; a flow is wanted, such as "200 L/h"'],
  ["1500 rpm", "flow", '"1500 rpm" is a speed of rotation; a flow is wanted, such as "200 L/h"'],
  ["10 m/m", "length", '"10 m/m" is a pure number; a length is wanted, such as "6 m"'],
  ["10 m4", "length", '"10 m4" is something else; a length is wanted, such as "6 m"'],
  ["-3 m", "length", '"-3 m" is negative; 1 mm to 1 km makes sense, such as "6 m"'],
  ["10 m", "bore", '"10 m" is too large for a bore; 0.5 mm to 300 mm makes sense, such as "10 mm"'],
  [
    "-80 degC",
    "temperature",
    '"-80 degC" is too low for a fuel temperature; -60 degC to 100 degC makes sense, such as "15 degC"',
  ],
  ["15 C", "temperature", '"15 C": "C" is not a unit known here; write "degC"'],
  ["60 KPA", "pressure", '"60 KPA": "KPA" is not a unit known here; write "kPa"'],
  ["20 psig", "pressure", '"20 psig": "psig" is not a unit known here; write "psi"'],
  ["2 bbl", "volume", '"2 bbl": "bbl" is not a unit known here; write a volume such as "60 L"'],
  ["0,9 m", "height", '"0,9 m" has a comma; write it as "0.9 m"'],
  ["1,000 L/h", "flow", '"1,000 L/h" has a comma; write the number with a decimal point, such as "200 L/h"'],
  ['3/8"', "bore", `'3/8"' has no unit that can be read; write inches as "3/8 in"`],
  ["1e999 m", "length", '"1e999 m" is too large for a length; 1 mm to 1 km makes sense, such as "6 m"'],
  ["1e-999 m", "length", '"1e-999 m" is too small for a length; 1 mm to 1 km makes sense, such as "6 m"'],
  ["0/0 in", "bore", '"0/0 in" is not one number with one unit; write a bore such as "10 mm"'],
];

test.each(faults)("quantity(%j, %j) says what is wrong and what would be right", (text, kind, message) => {
  expect(fault(text, kind)).toBe(message);
});

const nonsense = [
  "",
  " ",
  "m",
  "NaN m",
  "Infinity m",
  "5 m 6 m",
  "2 m + 3 m",
  "2 m + createUnit('x')",
  'import("fs")',
  "evaluate(1) m",
  "2 m; 3 m",
  "2 m # comment",
  "0x10 m",
  "1_000 m",
  "10 m^9",
  "10 m^-",
  "10 m//s",
  "10 / m /",
  "(10 m)",
  "10 m()",
  "10 __proto__",
  "10 m.constructor",
  "10 % m",
  "--5 m",
  "5 - m",
  "10 m\u0000",
  "10 m\n",
  "十 m",
];

test.each(nonsense)("quantity(%j) is no length", (text) => {
  expect(quantity(text.replace("\n", "\nx"), "length")).toHaveProperty("fault");
});

test('quantity("10 constructor") knows no unit by an inherited name', () => {
  for (const word of ["constructor", "toString", "hasOwnProperty", "valueOf"]) {
    expect(fault(`10 ${word}`, "length")).toContain(`"${word}" is not a unit known here`);
  }
});

test("quantity(text) refuses a long text before it looks at it", () => {
  expect(fault(`1 ${"m ".repeat(100_000)}`, "length")).toContain("too long for a quantity");
});

test("every kind's range and example can be read as that kind", () => {
  for (const [name, { least, most, example }] of Object.entries(kinds)) {
    for (const text of [least, most, example]) expect(quantity(text, name as KindName)).toHaveProperty("value");
  }
});

test("every unit word is a unit of the parser, and measures what its kind does", () => {
  for (const word of unitWords) {
    const read = quantity(`1 ${word}`, "length");
    if ("fault" in read) expect(["wrong measure", "out of range"]).toContain(read.fault.code);
  }
});
