import type { CatalogueElement, System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { arranged, holdsFilter, stackOf, withParts } from "./stack.js";

const line = (name: string, bore = 0.01) => ({ part: "line", name, bore }) as SystemPart;
const bend = { part: "fitting", name: "bend", bore: 0.01 } as SystemPart;
const rise = { part: "rise", name: "rise", height: 1 } as SystemPart;
const filter = (name: string) => ({ part: "filter", name }) as SystemPart;
const bank = (...branches: SystemPart[][]) => ({ part: "bank", name: "bank", branches }) as unknown as SystemPart;
const systemOf = (suction: SystemPart[], more: object = {}) =>
  ({ suction, delivery: [], ...more }) as unknown as System;

test("holdsFilter(part) is of a filter, and of a bank with one in any branch", () => {
  expect([filter("A"), bank([line("l")], [line("m"), filter("B")])].map(holdsFilter)).toEqual([true, true]);
  expect([line("l"), bank([line("l")], [rise])].map(holdsFilter)).toEqual([false, false]);
});

test("stackOf(system, side) puts new ones where the first stood, and names all that make way", () => {
  const suction = [line("l"), bank([filter("A")], [line("m"), filter("B")]), rise, filter("C"), bend];
  const { before, after, replaced, side } = stackOf(systemOf(suction), "suction");
  expect({ before, after, replaced, side }).toEqual({
    before: [line("l")],
    after: [rise, bend],
    replaced: ["A", "B", "C"],
    side: "suction",
  });
});

test("stackOf(system, side) puts them at the end of a path that has none, and of one not stated", () => {
  expect(stackOf(systemOf([line("l"), rise]), "suction")).toMatchObject({ before: [line("l"), rise], after: [] });
  expect(stackOf({ suction: [] } as unknown as System, "delivery")).toMatchObject({
    before: [],
    after: [],
    replaced: [],
  });
});

test("stackOf(system, side) leaves its spreads out", () => {
  expect(stackOf(systemOf([], { spreads: [{}] }), "suction").system).not.toHaveProperty("spreads");
});

test("arranged(stack, layout) sets stages one after another, several of a stage side by side, each by a name of its own", () => {
  const stack = stackOf(systemOf([line("l"), filter("old"), rise]), "suction");
  const element = { filter: filter("P10") } as unknown as CatalogueElement;
  const { suction } = arranged(stack, {
    stages: [
      { element, count: 2 },
      { element, count: 1 },
    ],
    bore: null,
  });
  expect(suction).toEqual([
    line("l"),
    { part: "bank", name: "stage 1", branches: [[filter("stage 1 · 1")], [filter("stage 1 · 2")]] },
    filter("stage 2 · 1"),
    rise,
  ]);
});

test("withParts(stack, parts, bore) gives lines and fittings on that side the bore, and nothing else", () => {
  const stack = stackOf(systemOf([line("l"), bend, rise], { delivery: [line("d")] }), "suction");
  const changed = withParts(stack, [line("new", 0.03)], 0.02);
  expect(changed.suction).toEqual([line("l", 0.02), { ...bend, bore: 0.02 }, rise, line("new", 0.02)]);
  expect(changed.delivery).toEqual([line("d")]);
  expect(withParts(stack, [], null).suction).toEqual([line("l"), bend, rise]);
});
