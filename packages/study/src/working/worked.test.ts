import { expect, test } from "vitest";
import { formula } from "./Formula.js";
import type { FigureMaker } from "./figures/FigureMaker.js";
import { figuresIn } from "./figures/figuresIn.js";
import { listed } from "./listed.js";
import { type Member, memberFigures, membersOf, memberWorking } from "./members.js";
import { proofOf, stepsBefore } from "./proof.js";
import type { Check, Step } from "./Step.js";
import { asked, fromFile, fromSource, inWords, renamed, searched, worked } from "./worked.js";

const sum = formula({
  id: "sum-of-two",
  name: "Sum of two",
  text: "a + sum(b)",
  symbols: { a: ["first", "Pa"], b: ["others", "Pa", "vacuum"] },
  result: ["c", "both together", "Pa"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});
const step = (value: number, name = "a figure", unit = "Pa") => fromSource("a test", { name, value, unit });

test("formula(given) fills in letters, and how a unit is shown where nothing else is said", () => {
  expect(sum.symbols.a).toEqual({ letter: "a", meaning: "first", unit: "Pa", kind: "pressure" });
  expect(sum.symbols.b).toEqual({ letter: "b", meaning: "others", unit: "Pa", kind: "vacuum" });
  expect(sum.result).toEqual({ letter: "c", meaning: "both together", unit: "Pa", kind: "pressure" });
  expect(sum.checkedBy).toEqual([]);
  const own = {
    ...sum,
    symbols: { x: ["a rate", "1/m3"] },
    result: ["y", "a time", "s", "plain"],
    checkedBy: ["a table"],
  };
  const { symbols, result, checkedBy } = formula(own as unknown as Parameters<typeof formula>[0]);
  expect([symbols, result.kind, checkedBy]).toEqual([
    { x: { letter: "x", meaning: "a rate", unit: "1/m3", kind: null } },
    "plain",
    ["a table"],
  ]);
});

test("worked(formula, given, more) has the formula's own words and figure where nothing else is said", () => {
  const put = { a: step(1), b: [step(2), step(3)] };
  expect(worked(sum, put)).toEqual({
    name: "both together",
    value: 6,
    unit: "Pa",
    kind: "pressure",
    origin: {
      by: "formula",
      formula: sum,
      inputs: [
        { letter: "a", steps: [put.a], list: false },
        { letter: "b", steps: put.b, list: true },
      ],
    },
  });
  const more = { name: "total", value: 6.0001, kind: "vacuum", part: ["suction", 0], scale: 1000 } as const;
  expect(worked(sum, put, more)).toMatchObject(more);
});

test("steps of every other origin carry what they are given, and no part where none is", () => {
  const plain = { name: "a figure", value: 1, unit: "Pa" };
  const bare = { ...plain, kind: null };
  const check: Check = { words: "it is", left: step(1), relation: "=", right: step(1) };
  expect(fromFile("pump.flow", plain)).toEqual({ ...bare, origin: { by: "file", path: "pump.flow" } });
  expect(fromSource("a book", plain)).toEqual({ ...bare, origin: { by: "source", source: "a book" } });
  expect(asked("to", plain)).toEqual({ ...bare, origin: { by: "asked", option: "to" } });
  expect(inWords("counted", plain)).toEqual({ ...bare, origin: { by: "words", words: "counted", from: [] } });
  expect(searched("found", plain, [check])).toEqual({
    ...bare,
    origin: { by: "search", words: "found", checks: [check] },
  });
  const placed = fromFile("pump.flow", { ...plain, kind: "pressure", part: ["suction", 1] });
  expect([placed.kind, placed.part]).toEqual(["pressure", ["suction", 1]]);
  expect("part" in fromFile("pump.flow", plain)).toBe(false);
  expect(renamed(placed, "another")).toEqual({ ...placed, name: "another" });
  expect(renamed(placed, "another", null).kind).toBeNull();
});

const checked = (more: Partial<Check>) =>
  proofOf({
    step: searched("found", { name: "found", value: 1, unit: "Pa" }, [
      { words: "it is", left: step(1), relation: "=", right: step(1), ...more },
    ]),
  });

test.each<[what: string, more: Partial<Check>, by: number | null]>([
  ["the same", {}, null],
  ["a hair apart", { left: step(1 + 5e-10) }, null],
  ["two hairs apart", { left: step(1 + 2e-9) }, 2e-9],
  // On the right side of a bound there may be as much room as there will.
  ["well below a bound", { relation: "<=", right: step(9) }, null],
  ["above it", { relation: "<=", left: step(2) }, 0.5],
  ["a hair above it", { relation: "<=", left: step(1 + 5e-10) }, null],
  ["well above a bound", { relation: ">=", left: step(9) }, null],
  ["below it", { relation: ">=", right: step(2) }, 0.5],
  ["on it", { relation: ">=" }, null],
  // Sides near nothing are differences of larger figures.
  ["near nothing", { left: step(1e-12), right: step(-1e-12) }, 2],
  ["near nothing, of larger figures", { left: step(1e-12), right: step(-1e-12), scale: 1 }, null],
  ["as close as a sum over time comes", { left: step(1.001), within: 0.01 }, null],
  ["further off than a sum over time comes", { left: step(1.1), within: 0.01 }, 0.1 / 1.1],
  ["no number", { left: step(Number.NaN) }, Number.NaN],
])("proofOf(working) compares both sides of a search: %s", (_, more, by) => {
  const { checks, formulas, misses } = checked(more);
  expect([checks, formulas]).toEqual([1, 0]);
  expect(misses).toEqual(
    by === null ? [] : [{ name: "found", why: "it is", by: Number.isNaN(by) ? by : expect.closeTo(by, 6) }],
  );
});

test("proofOf(working) tells the largest disagreement, of sums over time apart", () => {
  expect(checked({}).largest).toBe(0);
  expect(checked({ left: step(1 + 5e-10) }).largest).toBeCloseTo(5e-10, 14);
  expect(checked({ left: step(1.001), within: 0.01 }).largest).toBe(0);
});

test.each<[what: string, step: Step, by: number | null]>([
  ["its own figure", worked(sum, { a: step(1), b: [step(2)] }), null],
  ["a hair off", worked(sum, { a: step(1), b: [step(2)] }, { value: 3 + 2e-9 }), null],
  ["off", worked(sum, { a: step(1), b: [step(2)] }, { value: 3.1 }), 0.1 / 3.1],
  // A difference may be off by as much as what it is a difference of rounds.
  ["a difference of larger figures", worked(sum, { a: step(1e6), b: [step(-1e6)] }, { value: 5e-4 }), null],
  [
    "a difference of larger figures, further off",
    worked(sum, { a: step(1e6), b: [step(-1e6)] }, { value: 5e-3 }),
    5e-9,
  ],
  [
    "a difference that core takes of larger ones",
    worked(sum, { a: step(1), b: [step(-1)] }, { value: 5e-4, scale: 1e6 }),
    null,
  ],
  ["nothing of nothing", worked(sum, { a: step(0), b: [step(0)] }, { value: 0 }), null],
  ["units that do not go together", worked(sum, { a: step(1), b: [step(2, "a length", "m")] }), Infinity],
])("proofOf(working) works a formula out anew: %s", (_, one, by) => {
  const { formulas, checks, misses } = proofOf({ step: one });
  expect([formulas, checks]).toEqual([1, 0]);
  expect(misses).toEqual(
    by === null
      ? []
      : [{ name: "both together", why: "sum-of-two", by: by === Infinity ? by : expect.closeTo(by, 12) }],
  );
});

test("proofOf(working) allows for what is of the figure's own unit alone", () => {
  const times = formula({
    ...sum,
    text: "k * a",
    symbols: { k: ["times", "1"], a: ["first", "Pa"] },
    result: ["c", "product", "Pa"],
  });
  const given = { k: step(1e6, "times", "1"), a: step(1e-6) };
  expect(proofOf({ step: worked(times, given, { value: 1 + 5e-9 }) }).misses).toHaveLength(1);
  expect(proofOf({ step: worked(times, given, { value: 1 + 5e-10 }) }).misses).toEqual([]);
});

test("proofOf(working) goes through all that a step rests on, and through what is shared once", () => {
  const inner = worked(sum, { a: step(1), b: [step(2)] });
  const wrong = worked(sum, { a: step(1), b: [step(2)] }, { value: 4, name: "wrong" });
  const over = inWords("counted", { name: "over", value: 1, unit: "Pa" }, [inner, wrong]);
  const drawn: Step = {
    ...step(1, "drawn"),
    origin: { by: "draws", words: "drawn", varying: [], from: [over, inner] },
  };
  const top = searched("found", { name: "top", value: 1, unit: "Pa" }, [
    { words: "it is", left: drawn, relation: "<=", right: inner },
  ]);
  const { formulas, checks, misses } = proofOf({ step: top });
  expect([formulas, checks, misses.map(({ name }) => name)]).toEqual([2, 1, ["wrong"]]);
  expect(stepsBefore(top)).toEqual([drawn, inner]);
  expect(stepsBefore(drawn)).toEqual([over, inner]);
  expect(stepsBefore(over)).toEqual([inner, wrong]);
  expect(stepsBefore(inner).map(({ value }) => value)).toEqual([1, 2]);
  expect(stepsBefore(step(1))).toEqual([]);
});

const maker = (name: string, value: number | null, slow?: boolean): FigureMaker => ({
  name,
  group: "Figures",
  make: () => (value === null ? null : step(value, name)),
  ...(slow === undefined ? {} : { slow }),
});

test("listed(makers) shows what has a value here, and leaves out the values of what takes long", () => {
  const all = [
    maker("one", 1),
    maker("none", null),
    maker("endless", Infinity),
    maker("slow", 2, true),
    maker("quick", 3, false),
  ];
  expect(listed(all)).toEqual([
    { name: "one", group: "Figures", step: step(1, "one") },
    { name: "slow", group: "Figures", step: null },
    { name: "quick", group: "Figures", step: step(3, "quick") },
  ]);
});

test("figuresIn(group, slow) names a figure's step by the figure, and says of slow ones that they are", () => {
  const make = () => step(1, "by another name");
  expect(figuresIn("Figures")("one", make)).toEqual({ group: "Figures", name: "one", make: expect.any(Function) });
  expect(figuresIn("Figures", true)("one", make).slow).toBe(true);
  expect(figuresIn("Figures")("one", make).make()).toEqual(step(1, "one"));
  expect(figuresIn("Figures")("one", () => null).make()).toBeNull();
});

test("membersOf(makers) makes each member when it is first asked for, and keeps it", () => {
  let made = 0;
  const own = [maker("one", 1), maker("none", null), maker("endless", Infinity)];
  const members = membersOf(
    new Map<string, () => Member | null>([
      [
        "first",
        () => {
          made++;
          return { name: "the first", system: null, own };
        },
      ],
      ["second", () => null],
    ]),
  );
  expect([members.names, made]).toEqual([["first", "second"], 0]);
  expect(members.get("first")).toBe(members.get("first"));
  expect(made).toBe(1);
  expect([members.get("second"), members.get("third")]).toEqual([null, null]);
  expect(memberWorking(members, "first", { figure: "one", asked: {} })).toEqual({
    figure: "one",
    system: "the first",
    step: step(1, "one"),
  });
  for (const figure of ["none", "endless", "unheard of"]) {
    expect(memberWorking(members, "first", { figure, asked: {} })).toBeNull();
  }
  expect(memberWorking(members, "second", { figure: "one", asked: {} })).toBeNull();
  expect(memberFigures(members, "first")).toEqual(["one", "endless"]);
  expect(memberFigures(members, "second")).toEqual([]);
});
