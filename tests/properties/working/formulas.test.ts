import { readFileSync } from "node:fs";
import { evaluateWithUnits, type Formula, formulas, formulaTex, formulaTopics } from "@thirstline/study/working";
import { expect, test } from "vitest";

/** Letters inside a sum or a choice that stand for one value all the same. */
const SINGLE: Readonly<Record<string, readonly string[]>> = {
  arrangements: ["e", "p"],
  "blend-grunberg-nissan": ["nu_1"],
  "chance-error": ["m"],
  "cost-share": ["d"],
  "freed-air": ["p_a", "V"],
  "gauge-free-readings": ["n", "k"],
  "gauge-held-miss": ["k", "m"],
  "gauge-load-rate": ["s", "T", "t"],
  "gauge-more-by-cold": ["r", "B", "T"],
  "gauge-more-by-fall": ["s", "T", "b"],
  "gauge-ratio-at-limit": ["r", "f", "a", "b", "s"],
  "gauge-slope-step": ["r"],
  "gauge-soil-then": ["a", "q", "t"],
  "gauge-time-left": ["t", "l", "a", "k", "s"],
  "moved-with-slip": ["p"],
  "pulse-flow": ["V"],
  "parts-to-order": ["n", "h"],
  "rise-of-element": ["d", "d_0"],
  "rise-share": ["d", "d_0"],
  "water-dissolved": ["W", "X", "rho"],
};

/** A formula evaluated at some values, with their units; letters it goes over have two. */
function evaluated(one: Formula): number {
  // Most pure numbers are shares; the numbers of ASTM D341 lie above 1.
  const number = one.id.startsWith("d341") ? 3 : 0.5;
  const inputs = Object.values(one.symbols).map(({ letter, meaning, unit, kind }) => {
    const inside = new RegExp(`\\b(sum|min|max)\\((?:[^()]|\\([^()]*\\))*\\b${letter}\\b`).test(one.text);
    const list = inside && !SINGLE[one.id]?.includes(letter);
    const origin = { by: "source", source: "a test" } as const;
    const step = { name: meaning, value: unit === "1" ? number : 1, unit, kind, origin };
    return { letter, steps: list ? [step, { ...step, value: step.value * 1.5 }] : [step], list };
  });
  return evaluateWithUnits(one, inputs);
}

test("there are formulas on every topic, and no two share a name for links", () => {
  expect(formulas.length).toBeGreaterThan(130);
  for (const { topic, formulas: own } of formulaTopics) expect(own.length, topic).toBeGreaterThan(0);
  const ids = formulas.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test("formulas of a topic stand by name, whatever order a bundle gives its modules", () => {
  for (const { topic, formulas: own } of formulaTopics) {
    const names = own.map(({ name, id }) => `${name} ${id}`);
    expect(names, topic).toEqual([...names].sort());
  }
});

test("no formula is without a source, a range, an accuracy and the meaning of its letters", () => {
  const bare = formulas.filter(
    ({ source, holds, accuracy, symbols }) =>
      source.trim() === "" ||
      holds.trim() === "" ||
      accuracy.trim() === "" ||
      Object.values(symbols).some(({ meaning }) => meaning === ""),
  );
  expect(bare).toEqual([]);
});

test("every letter of a formula is explained, and every letter explained is in it", () => {
  const faults = formulas.flatMap(({ id, text, symbols }) => {
    const words = new Set(text.match(/(?<![\d.])[A-Za-z][A-Za-z0-9_]*/g) ?? []);
    const known = new Set(["pi", "abs", "exp", "log", "log10", "max", "min", "sign", "sqrt", "sum"]);
    const unknown = [...words].filter((word) => !known.has(word) && !(word in symbols));
    const idle = Object.keys(symbols).filter((letter) => !words.has(letter));
    return [...unknown, ...idle].map((letter) => `${id}: ${letter}`);
  });
  expect(faults).toEqual([]);
});

test.each(formulas.map((one) => [one.id, one] as const))("the units of %s come out as it states", (_, one) => {
  expect(typeof evaluated(one)).toBe("number"); // it throws where units do not go together
});

test("every formula can be typeset", () => {
  for (const one of formulas) expect(formulaTex(one), one.id).toMatch(/^\\?[A-Za-z].* = .+/);
});

test("every measurement a formula names as checking it is one that the published tests make", () => {
  const measured: { readonly name: string }[] = JSON.parse(
    readFileSync(new URL("../../../playground/src/working/accuracy.json", import.meta.url), "utf8"),
  );
  const names = new Set(measured.map(({ name }) => name));
  const named = [...new Set(formulas.flatMap(({ checkedBy }) => checkedBy))];
  expect(named.length).toBeGreaterThan(30);
  expect(named.filter((name) => !names.has(name))).toEqual([]);
});
