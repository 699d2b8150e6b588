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
