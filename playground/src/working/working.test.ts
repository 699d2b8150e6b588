import { formulas } from "@thirstline/study/working";
import { expect, test } from "vitest";
import accuracy from "./accuracy.json";
import { checkedAgainst } from "./checkedAgainst.js";
import { isAbout } from "./formulaSearch.js";
import { placeOfPart } from "./placeOfPart.js";
import { siText, valueTex, valueText } from "./valueText.js";

test("placeOfPart(part) finds what the drawing shows, in a bank and in a tank's path too", () => {
  expect(placeOfPart(["suction", 3, "branches", 1, 0])).toEqual({
    kind: "part",
    place: { side: "suction", at: 3, branch: 1, inner: 0 },
  });
  expect(placeOfPart(["tanks", 1, "path", 0])).toEqual({ kind: "part", place: { side: "tank", tank: 1, at: 0 } });
  expect(placeOfPart(["tanks", 0])).toEqual({ kind: "tank", tank: 0 });
  expect(placeOfPart(["delivery", 2])).toEqual({ kind: "part", place: { side: "delivery", at: 2 } });
  expect(placeOfPart(["fuel"])).toBe(null);
});

test("valueText(step, units) gives SI beside the reader's units only where it says more", () => {
  const step = { name: "", origin: { by: "asked", option: "" } } as const;
  const pressure = { ...step, value: 9261.14159, unit: "Pa", kind: "pressure" } as const;
  expect(valueText(pressure, "metric")).toEqual({ shown: "9.3 kPa", si: "9261.14 Pa" });
  expect(valueText({ ...step, value: 830, unit: "kg/m3", kind: "density" }, "metric").si).toBe("");
  expect(valueText({ ...step, value: 273.15, unit: "K", kind: "temperature" }, "metric")).toEqual({
    shown: "0 °C",
    si: "273.15 K",
  });
  expect(valueText({ ...step, value: 4, unit: "1", kind: "plain" }, "us")).toEqual({ shown: "4", si: "" });
});

test("valueTex(value, unit) writes powers of ten and of units for a typesetter", () => {
  expect(siText(3e-6, "m2/s")).toBe("3e-6 m²/s");
  expect(valueTex(3e-6, "m2/s")).toBe("3 \\cdot 10^{-6}\\,\\mathrm{m^{2}/s}");
  expect(valueTex(0.002, "Pa s")).toBe("0.002\\,\\mathrm{Pa\\,s}");
});

test("every table a formula names is among those measured, and none is said to have no answer", () => {
  const names = new Set(accuracy.map(({ name }) => name));
  for (const { checkedBy } of formulas) expect(checkedBy.filter((name) => !names.has(name))).toEqual([]);
  const checked = formulas.filter(({ checkedBy }) => checkedBy.length > 0);
  expect(checked.length).toBeGreaterThan(40);
  expect(checked.flatMap(checkedAgainst).join(" ")).not.toMatch(/undefined|no answer/);
});

test("isAbout(formula, topic, wanted) takes every word, of names, letters, sources and topics", () => {
  const found = (wanted: string) => formulas.filter((one) => isAbout(one, "Lines", wanted)).map(({ id }) => id);
  expect(found("poiseuille laminar")).toContain("laminar-drop");
  expect(found("REYNOLDS")).toContain("reynolds");
  expect(found("poiseuille nothing-of-the-kind")).toEqual([]);
});
