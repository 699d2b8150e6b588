import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem } from "../../../../tests/support/plainSystem.js";
import { applyRemedy } from "./applyRemedy.js";
import { twiceTheArea } from "./twiceTheArea.js";

const filter = (name: string, more: Partial<SystemFilter> = {}): SystemFilter => ({
  ...elementOf(name, { drop: 1e3 }).filter,
  ...more,
});
const line = (name: string, bore: number, length = 4): SystemPart => ({
  part: "line",
  name,
  bore,
  length,
  roughness: 1e-6,
});
const bends = (name: string, bore: number, count = 3): SystemPart => ({
  part: "fitting",
  name,
  bore,
  count,
  loss: { by: "k", k: 1 },
});
const rise: SystemPart = { part: "rise", name: "lift", height: 1 };
const bank = (...branches: SystemPart[][]): SystemPart => ({ part: "bank", name: "pair", branches });
const tank = (name: string, path: readonly SystemPart[] = []): System["tanks"][number] => ({
  name,
  fullDepth: 1,
  lowDepth: 0.2,
  vent: { kind: "blocked" },
  path,
});
/** Something of every kind on every side. */
const machine: System = {
  ...plainSystem,
  tanks: [tank("port", [line("port line", 0.01), filter("in port")]), tank("starboard")],
  suction: [
    line("tank line", 0.01),
    bends("elbows", 0.01),
    bends("wide elbows", 0.02),
    line("wide line", 0.02),
    rise,
    filter("single", { restriction: 2 }),
    bank([filter("A", { restriction: 3 })], [filter("B", { blocked: true }), line("branch line", 0.01)]),
  ],
  delivery: [line("delivery line", 0.01), filter("fine")],
  spreads: [{ path: ["altitude"], low: 0, high: 1 }],
};
const { spreads: _, ...bare } = machine;
const { tanks, suction, delivery = [] } = machine;
const changedAt = (parts: readonly SystemPart[], at: number, ...instead: SystemPart[]) => [
  ...parts.slice(0, at),
  ...instead,
  ...parts.slice(at + 1),
];
const branch = suction[6] as Extract<SystemPart, { part: "bank" }>;

describe("applyRemedy(system, remedy)", () => {
  test("widens all lines and fittings of one bore on the suction side, in banks and on tanks' ways too", () => {
    const remedy = { kind: "wider bore", side: "suction", from: 0.01, to: 0.015, parts: [], listed: true } as const;
    expect(applyRemedy(machine, remedy)).toEqual({
      ...bare,
      tanks: [tank("port", [line("port line", 0.015), filter("in port")]), tank("starboard")],
      suction: [
        line("tank line", 0.015),
        bends("elbows", 0.015),
        ...suction.slice(2, 6),
        bank([filter("A", { restriction: 3 })], [filter("B", { blocked: true }), line("branch line", 0.015)]),
      ],
    });
  });

  test("widens those on the delivery side alone", () => {
    const remedy = { kind: "wider bore", side: "delivery", from: 0.01, to: 0.015, parts: [], listed: true } as const;
    expect(applyRemedy(machine, remedy)).toEqual({ ...bare, delivery: [line("delivery line", 0.015), filter("fine")] });
  });

  test("shortens one line", () => {
    expect(applyRemedy(machine, { kind: "shorter run", part: "wide line", from: 4, to: 3 })).toEqual({
      ...bare,
      suction: changedAt(suction, 3, line("wide line", 0.02, 3)),
    });
    // A name is of one part; only of a line can there be less.
    expect(applyRemedy(machine, { kind: "shorter run", part: "elbows", from: 4, to: 3 })).toEqual(bare);
  });

  test("takes fittings away, and the last one whole", () => {
    expect(applyRemedy(machine, { kind: "fewer fittings", part: "elbows", from: 3, to: 1 })).toEqual({
      ...bare,
      suction: changedAt(suction, 1, bends("elbows", 0.01, 1)),
    });
    expect(applyRemedy(machine, { kind: "fewer fittings", part: "wide elbows", from: 1, to: 0 })).toEqual({
      ...bare,
      suction: changedAt(suction, 2),
    });
    expect(applyRemedy(machine, { kind: "fewer fittings", part: "tank line", from: 1, to: 0 })).toEqual(bare);
  });

  test("puts one more, new and open, beside a single filter", () => {
    const more = filter("single, one more", { restriction: 1, blocked: false });
    const beside: SystemPart = {
      part: "bank",
      name: "single and one more",
      branches: [[filter("single", { restriction: 2 })], [more]],
    };
    expect(applyRemedy(machine, { kind: "one more branch", parts: ["single"] })).toEqual({
      ...bare,
      suction: changedAt(suction, 5, beside),
    });
  });

  test("puts a copy of an open branch, with a new filter in it, beside those of a bank", () => {
    const more = filter("A, one more", { restriction: 1, blocked: false });
    expect(applyRemedy(machine, { kind: "one more branch", parts: ["A", "B"] })).toEqual({
      ...bare,
      suction: changedAt(suction, 6, { ...branch, branches: [...branch.branches, [more]] }),
    });
    const shutFirst = bank([filter("B", { blocked: true })], [line("branch line", 0.01), filter("A")]);
    const copied = bank(
      [filter("B", { blocked: true })],
      [line("branch line", 0.01), filter("A")],
      [line("branch line", 0.01), filter("A, one more", { restriction: 1 })],
    );
    const found = applyRemedy({ ...machine, suction: [shutFirst] }, { kind: "one more branch", parts: ["B", "A"] });
    expect(found.suction).toEqual([copied]);
  });

  test("leaves a bank alone that is another, or has no open branch to copy", () => {
    for (const parts of [
      ["A", "C"],
      ["A", "B", "C"],
      ["C", "D"],
    ]) {
      expect(applyRemedy(machine, { kind: "one more branch", parts }).suction[6]).toEqual(branch);
    }
    const shut = bank([filter("A", { blocked: true })], [filter("B", { blocked: true })]);
    const found = applyRemedy({ ...machine, suction: [shut] }, { kind: "one more branch", parts: ["A", "B"] });
    expect(found.suction).toEqual([shut]);
    const open = bank([line("a", 0.01)], [line("b", 0.01)]);
    expect(applyRemedy({ ...machine, suction: [open] }, { kind: "one more branch", parts: [] }).suction).toEqual([
      open,
    ]);
  });

  test("gives elements twice the area, those named and no others", () => {
    expect(applyRemedy(machine, { kind: "larger element", parts: ["single", "in port"] })).toEqual({
      ...bare,
      tanks: [tank("port", [line("port line", 0.01), twiceTheArea(filter("in port"))]), tank("starboard")],
      suction: changedAt(suction, 5, twiceTheArea(filter("single", { restriction: 2 }))),
    });
    expect(applyRemedy(machine, { kind: "larger element", parts: ["tank line"] })).toEqual(bare);
  });

  test("puts a clean element in", () => {
    expect(applyRemedy(machine, { kind: "clean element", part: "single", restriction: 2 })).toEqual({
      ...bare,
      suction: changedAt(suction, 5, filter("single", { restriction: 1 })),
    });
  });

  test("opens a branch that is shut off", () => {
    expect(applyRemedy(machine, { kind: "open branch", part: "B" }).suction[6]).toEqual(
      bank([filter("A", { restriction: 3 })], [filter("B", { blocked: false }), line("branch line", 0.01)]),
    );
  });

  test("opens one tank's vent, and fills one tank", () => {
    const [port, starboard] = tanks as [System["tanks"][number], System["tanks"][number]];
    expect(applyRemedy(machine, { kind: "open vent", tank: "starboard" })).toEqual({
      ...machine,
      tanks: [port, { ...starboard, vent: { kind: "open" } }],
    });
    expect(applyRemedy(machine, { kind: "fuller tank", tank: "port", from: 0.2, to: 0.5 })).toEqual({
      ...machine,
      tanks: [{ ...port, lowDepth: 0.5 }, starboard],
    });
  });

  test("lowers the pump: what its suction climbs less, its delivery climbs more", () => {
    const lower = { part: "rise", name: "pump lower", height: -0.3 };
    const again = { part: "rise", name: "up again from the pump", height: 0.3 };
    expect(applyRemedy(machine, { kind: "lower pump", by: 0.3 })).toEqual({
      ...machine,
      suction: [...suction, lower],
      delivery: [again, ...delivery],
    });
    const { delivery: _delivery, ...open } = machine;
    expect(applyRemedy(open, { kind: "lower pump", by: 0.3 })).toEqual({ ...open, suction: [...suction, lower] });
  });

  test("puts the tank higher", () => {
    expect(applyRemedy(machine, { kind: "higher tank", by: 0.3 })).toEqual({
      ...machine,
      suction: [...suction, { part: "rise", name: "tank higher", height: -0.3 }],
    });
  });

  test.each(["warmer fuel", "cooler fuel"] as const)("leaves the system alone for %s", (kind) => {
    expect(applyRemedy(machine, { kind, by: 10 })).toBe(machine);
  });
});
