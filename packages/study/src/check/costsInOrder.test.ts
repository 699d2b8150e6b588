import { expect, test } from "vitest";
import type { PartRow } from "./CheckAnswer.js";
import { costsInOrder } from "./costsInOrder.js";

const row = (name: string, share: number, more: Partial<PartRow> = {}): PartRow => ({
  name,
  kind: "line",
  depth: 0,
  flow: 1e-4,
  drop: share * 1000,
  share,
  pressure: 1e5,
  reynolds: null,
  regime: null,
  ...more,
});

test("costsInOrder(rows) puts the largest first and leaves out what helps", () => {
  expect(costsInOrder([row("tank", 0, { drop: -1600 }), row("hose", 0.3), row("rise", 0.7)])).toEqual([
    { name: "rise", share: 0.7 },
    { name: "hose", share: 0.3 },
  ]);
});

test("costsInOrder(rows) names in place of a bank the parts that make up most of its drop", () => {
  const bank = row("2 in parallel", 0.6, { kind: "bank", drop: 600 });
  const inside = (name: string, drop: number) => row(name, drop / 1000, { depth: 1, drop });
  const rows = [bank, inside("stub", 100), inside("A", 500), inside("B", 600), row("hose", 0.4)];
  expect(costsInOrder(rows)[0]).toEqual({ name: "A and B", share: 0.6 });
});

test("costsInOrder(rows) is empty when nothing costs", () => {
  expect(costsInOrder([row("fall", 0, { drop: -10 })])).toEqual([]);
});

test("costsInOrder(rows) looks into a bank as far as it goes, those inside it left out for what is in them", () => {
  const at = (depth: number, name: string, drop: number, kind: PartRow["kind"] = "filter") =>
    row(name, drop / 1000, { depth, drop, kind });
  const outer = [
    at(0, "outer bank", 600, "bank"),
    at(1, "inner bank", 600, "bank"),
    at(2, "A", 600),
    at(2, "B", 300),
    at(1, "C", 599),
    at(1, "D", 299),
  ];
  // Half of its drop is enough; a part behind the bank is none of it.
  expect(costsInOrder([...outer, at(0, "hose", 601, "line"), at(1, "stray", 600)])).toEqual([
    { name: "hose", share: 0.601 },
    { name: "A, B and C", share: 0.6 },
  ]);
  expect(costsInOrder(outer)[0]?.name).toBe("A, B and C");
});

test("costsInOrder(rows) names a bank itself where no part in it costs half, and a part by itself whatever stands behind it", () => {
  const inside = (name: string, drop: number) => row(name, drop / 1000, { depth: 1, drop });
  const bank = row("2 in parallel", 0.6, { kind: "bank", drop: 600 });
  expect(costsInOrder([bank, inside("A", 200), inside("B", 200)])[0]?.name).toBe("2 in parallel");
  expect(costsInOrder([bank, inside("A", 400), inside("B", 200)])[0]?.name).toBe("A");
  expect(costsInOrder([row("hose", 0.6), inside("A", 600)])[0]?.name).toBe("hose");
});
