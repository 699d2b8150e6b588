import type { CatalogueElement, System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import type { SwapFacts } from "./SwapFacts.js";
import { fitReasons } from "./swapFit.js";

const filter = (more: Partial<SystemFilter> = {}, name = "own") => ({
  ...elementOf(name, { drop: 1e3 }).filter,
  ...more,
});
const element = (more: Partial<SystemFilter> = {}, own: Partial<CatalogueElement> = {}) => ({
  ...elementOf("other", { drop: 1e3, filter: more }),
  ...own,
});
const reasonsOf = (facts: Partial<SwapFacts>) =>
  fitReasons({
    system: plainSystem,
    changed: plainSystem,
    at: ["fitted"],
    filters: [filter()],
    fitted: null,
    other: element(),
    fineness: "same",
    temperatures: [WARM],
    ...facts,
  } as SwapFacts);
/** What is said of the thread where neither side states one. */
const noThread = { weight: "note", code: "thread not known", other: null };
const kept = { weight: "note", code: "thread kept", thread: "M24x1.5" };
const threaded = { thread: "M24x1.5" };

/** What is said of an element put at some places, beside the one fitted there now. */
const fitting = (
  place: Partial<SystemFilter>[],
  other: Partial<SystemFilter>,
  fitted: Partial<SystemFilter> | null = null,
) =>
  reasonsOf({
    filters: place.map((one) => filter(one)),
    other: element(other),
    fitted: fitted && element(fitted),
  });

test("fitReasons(facts) has nothing to say but that no thread is known, where nothing is stated", () => {
  expect(reasonsOf({})).toEqual([noThread]);
});

describe("fitReasons(facts) of a build", () => {
  const of = (...given: Parameters<typeof fitting>) => fitting(...given).slice(0, -1);
  const no = { weight: "no", code: "style", fitted: "spin-on", other: "cartridge" };

  test("refuses another than is there, and lets the same and what is not stated pass", () => {
    expect(of([{ style: "spin-on" }], { style: "cartridge" })).toEqual([no]);
    expect(of([{ style: "spin-on" }], { style: "spin-on" })).toEqual([]);
    expect(of([{ style: "spin-on" }], {})).toEqual([]);
    expect(of([{}], { style: "cartridge" })).toEqual([]);
  });

  test("goes by the place, or by what a catalogue says of the element in it", () => {
    expect(of([{}], { style: "cartridge" }, { style: "spin-on" })).toEqual([no]);
    expect(of([{ style: "cartridge" }], { style: "cartridge" }, { style: "spin-on" })).toEqual([]);
    expect(of([{ style: "spin-on" }], { style: "cartridge" }, { style: "cartridge" })).toEqual([no]);
  });

  test("compares each place", () => {
    expect(of([{ style: "cartridge" }, { style: "spin-on" }], { style: "cartridge" })).toEqual([no]);
    expect(of([{ style: "cartridge" }, {}], { style: "cartridge" })).toEqual([]);
  });
});

describe("fitReasons(facts) of a thread", () => {
  const of = (place: (string | undefined)[], other?: string, fitted?: string) =>
    reasonsOf({
      filters: place.map((thread) => filter(thread === undefined ? {} : { thread })),
      other: element(other === undefined ? {} : { thread: other }),
      fitted: fitted === undefined ? null : element({ thread: fitted }),
    });

  test("refuses another, notes that it is kept, or that it is not known", () => {
    expect(of(["M20x1.5"], "M24x1.5")).toEqual([{ weight: "no", code: "thread", fitted: "M20x1.5", other: "M24x1.5" }]);
    expect(of(["M24x1.5"], "M24x1.5")).toEqual([kept]);
    expect(of([undefined], "M24x1.5")).toEqual([{ ...noThread, other: "M24x1.5" }]);
    expect(of(["M24x1.5"])).toEqual([noThread]);
    expect(of([undefined], "M24x1.5", "M24x1.5")).toEqual([kept]);
  });

  test("compares each place: one misfit refuses, one unknown leaves it open", () => {
    expect(of(["M24x1.5", "M20x1.5"], "M24x1.5")[0]).toMatchObject({ code: "thread", fitted: "M20x1.5" });
    expect(of(["M24x1.5", undefined], "M24x1.5")).toEqual([{ ...noThread, other: "M24x1.5" }]);
    expect(of([undefined, "M20x1.5"], "M24x1.5")[0]).toMatchObject({ code: "thread" });
  });

  test.each(["m24X1.5", "M24×1.5", "M 24 x 1.5", "M24-x-1.5", "M24  x1.5"])("takes %s for M24x1.5", (written) => {
    expect(of([written], "M24x1.5")).toEqual([kept]);
  });

  test.each(["M241.5", "M24x15", "M24x1.5L", "M2x41.5"])("takes %s for another than M24x1.5", (written) => {
    expect(of([written], "M24x1.5")[0]).toMatchObject({ weight: "no", code: "thread", fitted: written });
  });
});

test("fitReasons(facts) refuses an element that is flowed through the other way, place by place", () => {
  const of = (...given: Parameters<typeof fitting>) => fitting(...given).slice(1);
  const [out, into] = [{ direction: "inside out" }, { direction: "outside in" }] as const;
  const no = { weight: "no", code: "direction", fitted: "outside in", other: "inside out" };
  expect(of([into], out)).toEqual([no]);
  expect(of([out], out)).toEqual([]);
  expect(of([into], {})).toEqual([]);
  expect(of([{}], out)).toEqual([]);
  expect(of([{}], out, into)).toEqual([no]);
  expect(of([out, into], out)).toEqual([no]);
  expect(of([out, {}], out)).toEqual([]);
});

describe("fitReasons(facts) of the flow an element may carry", () => {
  const [lift] = plainSystem.suction as [SystemPart];
  const bank: SystemPart = {
    part: "bank",
    name: "pair",
    branches: [[filter({}, "A")], [elementOf("B", { drop: 3e3 }).filter]],
  };
  /** A takes three quarters of the 200 L/h. */
  const pair: System = { ...plainSystem, suction: [lift, bank] };
  const of = (mostFlow: number, changed: System, at: string[], more: Partial<SwapFacts> = {}) =>
    reasonsOf({ changed, at, other: element({}, { mostFlow: mostFlow * litresAnHour }), ...more }).slice(1);

  test("refuses more than its maker allows, by the place that carries most", () => {
    const no = (place: string, flow: number, most: number) => ({
      weight: "no",
      code: "too much flow",
      place,
      flow: expect.closeTo(flow * litresAnHour, 10),
      most: most * litresAnHour,
    });
    expect(of(199, plainSystem, ["fitted"])).toEqual([no("fitted", 200, 199)]);
    expect(of(201, plainSystem, ["fitted"])).toEqual([]);
    expect(of(149, pair, ["B", "A"])).toEqual([no("A", 150, 149)]);
    expect(of(149, pair, ["A", "B"])).toEqual([no("A", 150, 149)]);
    expect(of(151, pair, ["A", "B"])).toEqual([]);
    expect(of(51, pair, ["B"])).toEqual([]);
    expect(of(49, pair, ["B"])).toEqual([no("B", 50, 49)]);
  });

  test("goes by the most that is asked at any of the temperatures", () => {
    const demand = { power: 450e3, specificConsumption: 210 / 3.6e9, return: 0 };
    const flowAt = (...temperatures: number[]) => {
      const [reason] = of(1, { ...plainSystem, demand }, ["fitted"], { temperatures });
      return reason?.code === "too much flow" ? reason.flow : 0;
    };
    // The burn is a mass, and warm fuel is lighter.
    expect(flowAt(263.15)).toBeLessThan(flowAt(300));
    expect(flowAt(263.15, 300)).toBe(flowAt(300));
    expect(flowAt(300, 263.15)).toBe(flowAt(300));
  });
});

test("fitReasons(facts) takes care where less water is separated than now", () => {
  const of = (fitted: (number | null)[], other: number | null) => {
    const separation = (efficiency: number | null) =>
      efficiency === null ? {} : { separation: { efficiency, flow: 1e-5 } };
    return reasonsOf({
      filters: fitted.map((one) => filter(separation(one))),
      other: element(separation(other)),
    }).slice(1);
  };
  const less = (fitted: number, other: number | null) => [{ weight: "care", code: "less water", fitted, other }];
  expect(of([0.9], 0.8)).toEqual(less(0.9, 0.8));
  expect(of([0.9], null)).toEqual(less(0.9, null));
  expect(of([0.5, 0.9, null], 0.8)).toEqual(less(0.9, 0.8));
  expect(of([0.9], 0.9)).toEqual([]);
  expect(of([0.9], 0.95)).toEqual([]);
  expect(of([null], null)).toEqual([]);
  expect(of([null], 0.5)).toEqual([]);
  expect(of([0], null)).toEqual([]);
});

describe("fitReasons(facts) of neighbours in a bank", () => {
  const line: SystemPart = { part: "line", name: "line", length: 1, bore: 0.01, roughness: 1e-6 };
  const bank = (blocked = false): SystemPart => ({
    part: "bank",
    name: "pair",
    branches: [[line, filter({}, "A")], [filter({ blocked }, "B")]],
  });
  const of = (at: string[], fineness: SwapFacts["fineness"], suction: SystemPart[]) =>
    reasonsOf({ system: { ...plainSystem, suction }, at, fineness }).slice(1);

  test("takes care where one beside the swapped stays that catches otherwise", () => {
    const stays = (place: string, neighbour: string) => [{ weight: "care", code: "neighbour stays", place, neighbour }];
    for (const fineness of ["finer", "coarser", "mixed", "not known"] as const) {
      expect(of(["A"], fineness, [bank()])).toEqual(stays("A", "B"));
    }
    expect(of(["B"], "finer", [line, bank()])).toEqual(stays("B", "A"));
  });

  test("has nothing to say where all are swapped, none is, the neighbour is shut off, or it catches the same", () => {
    expect(of(["A", "B"], "finer", [bank()])).toEqual([]);
    expect(of(["C"], "finer", [bank(), filter({}, "C")])).toEqual([]);
    expect(of(["A"], "finer", [bank(true)])).toEqual([]);
    expect(of(["A"], "same", [bank()])).toEqual([]);
    expect(of(["A"], "finer", [{ part: "bank", name: "one", branches: [[filter({}, "A")], [line]] }])).toEqual([]);
  });
});

test("fitReasons(facts) notes each place at which the element was fitted backwards", () => {
  const filters = [filter({ reversed: true }, "A"), filter({}, "B"), filter({ reversed: true }, "C")];
  expect(reasonsOf({ filters }).slice(1)).toEqual([
    { weight: "note", code: "was backwards", place: "A" },
    { weight: "note", code: "was backwards", place: "C" },
  ]);
});

test("fitReasons(facts) says all of these in one order", () => {
  const place = filter({
    style: "spin-on",
    ...threaded,
    direction: "outside in",
    reversed: true,
    separation: { efficiency: 0.9, flow: 1 },
  });
  const other = element({ style: "cartridge", ...threaded, direction: "inside out" }, { mostFlow: 1e-6 });
  expect(reasonsOf({ filters: [place], other }).map(({ code }) => code)).toEqual([
    "style",
    "thread kept",
    "direction",
    "too much flow",
    "less water",
    "was backwards",
  ]);
});
