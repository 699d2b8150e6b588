import type { System, SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import { check } from "../check/check.js";
import { type RemedyOptions, remedy } from "./remedy.js";

const HEAD = 830 * 9.80665;
const lift = { part: "rise", name: "lift", height: 1 } as SystemPart;
const own = (drop: number, more: object = {}) => elementOf("own", { drop, filter: more }).filter;
const machine = (...suction: SystemPart[]): System => ({ ...plainSystem, suction: [lift, ...suction] });
const told = (system: System, options: RemedyOptions = {}) =>
  remedy(system, options).single.map(({ changes }) => changes.map(({ kind }) => kind).join());
const ofKind = (system: System, kind: string, options: RemedyOptions = {}) =>
  remedy(system, options).single.find(({ changes }) => changes[0]?.kind === kind);

describe("remedy(system, options) of an element that starves a pump, by round figures", () => {
  // 30 kPa at change less the metre, over 25 kPa at the demand of 200 L/h.
  const system = machine(own(25e3));
  const ceiling = (drop: number) => ((30e3 - HEAD) / drop) * (200e-3 / 3600);
  const answer = () => remedy(system);

  test("says how it is now, and is about", () => {
    const { single: _single, pairs: _pairs, worst, ...rest } = answer();
    expect(rest).toEqual({
      question: "remedy",
      system: "plain",
      pump: "fixed",
      verdict: "starves",
      demand: expect.closeTo(200e-3 / 3600, 12),
      now: {
        changes: [],
        temperature: WARM,
        verdict: "starves",
        ceiling: expect.closeTo(ceiling(25e3), 10),
        limit: "vacuum at change",
        inHand: expect.closeTo((30e3 - HEAD) / 25e3 - 1, 6),
        overClean: expect.closeTo(HEAD + 25e3 - 15e3, 4),
        cost: 0,
      },
    });
    expect(worst).toEqual(check(system).points[0]);
  });

  test("finds that one more, and one of twice the area, halve the drop", () => {
    for (const kind of ["one more branch", "larger element"]) {
      expect(ofKind(system, kind)).toMatchObject({
        inHand: expect.closeTo((30e3 - HEAD) / 12.5e3 - 1, 6),
        ceiling: expect.closeTo(ceiling(12.5e3), 10),
        verdict: "tight",
        overClean: expect.closeTo(HEAD + 12.5e3 - 15e3, 4),
        cost: null,
      });
    }
  });

  test("finds what a pump 30 cm lower is worth", () => {
    expect(ofKind(system, "lower pump")?.inHand).toBeCloseTo((30e3 - 0.7 * HEAD) / 25e3 - 1, 6);
  });

  test("judges warmer fuel at 10 K more, and tells so", () => {
    const warmer = ofKind(system, "warmer fuel");
    expect(warmer?.temperature).toBe(WARM + 10);
    expect(warmer?.inHand).toBe(check(system, { temperatures: [WARM + 10] }).points[0]?.inHand.low);
  });

  test("names pairs that beat each change alone, the best first, so many as asked", () => {
    const [best] = answer().single;
    expect(answer().pairs.length).toBeGreaterThan(0);
    const hands = answer().pairs.map(({ inHand }) => inHand);
    expect(hands).toEqual([...hands].sort((one, other) => other - one));
    expect(Math.min(...hands)).toBeGreaterThan(best?.inHand ?? Infinity);
    expect(answer().pairs.length).toBeLessThanOrEqual(3);
    expect(remedy(system, { pairs: 1 }).pairs).toEqual(answer().pairs.slice(0, 1));
    expect(remedy(system, { pairs: 0 }).pairs).toEqual([]);
  });

  test("never pairs two changes of the same element", () => {
    const soiled = machine(own(12e3, { restriction: 3 }), {
      part: "line",
      name: "hose",
      length: 4,
      bore: 0.006,
      roughness: 1e-6,
    });
    const pairs = remedy(soiled, { pairs: 1000 }).pairs.map(({ changes }) =>
      changes
        .map(({ kind }) => kind)
        .sort()
        .join(),
    );
    const ofElement = ["clean element", "larger element", "one more branch"];
    expect(pairs.length).toBeGreaterThan(0);
    for (const pair of pairs) expect(pair.split(",").filter((kind) => ofElement.includes(kind)).length).toBeLessThan(2);
    expect(pairs).toContain("clean element,wider bore");
    // One line can be both wider and shorter.
    expect(pairs).toContain("shorter run,wider bore");
  });
});

describe("remedy(system, options) ranks", () => {
  test("by what is in hand; of those that come to the same the cheaper is first, one of no known cost last", () => {
    const system = machine(own(25e3));
    const both = (costs: RemedyOptions["costs"]) =>
      told(system, costs === undefined ? {} : { costs }).filter(
        (kind) => kind === "one more branch" || kind === "larger element",
      );
    expect(both({ "one more branch": 90, "larger element": 40 })).toEqual(["larger element", "one more branch"]);
    expect(both({ "one more branch": 40, "larger element": 90 })).toEqual(["one more branch", "larger element"]);
    expect(both({ "larger element": 90 })).toEqual(["larger element", "one more branch"]);
    expect(both({ "one more branch": 90 })).toEqual(["one more branch", "larger element"]);
    expect(both(undefined)).toEqual(["one more branch", "larger element"]);
    expect(both({ "one more branch": 40, "larger element": 40 })).toEqual(["one more branch", "larger element"]);
  });

  test("what keeps the clean limit before what does not, where both leave as much in hand", () => {
    // The pump's 210 L/h are the least in hand whatever is done to the suction side; 10 kPa of the clean limit are over.
    const pump = { ...plainSystem.pump, flow: 210e-3 / 3600 } as System["pump"];
    const system = { ...machine(own(10e3)), pump };
    const { now, single, pairs } = remedy(system, { costs: { "warmer fuel": 1 } });
    expect(now).toMatchObject({ limit: "pump capacity", inHand: expect.closeTo(0.05, 9), verdict: "tight" });
    expect(now.overClean).toBeCloseTo(HEAD + 10e3 - 15e3, 4);
    for (const { inHand } of single) expect(inHand).toBeCloseTo(0.05, 9);
    const over = single.map(({ overClean }) => overClean ?? 0);
    expect(over).toEqual([...over].sort((one, other) => one - other));
    expect(over.at(0)).toBe(0);
    expect(over.at(-1)).toBeGreaterThan(0);
    // The best alone keeps the clean limit already, so no pair is any better.
    expect(pairs).toEqual([]);
  });

  test("pairs of changes that bring it nearer to the clean limit, where none alone does", () => {
    const pump = { ...plainSystem.pump, flow: 210e-3 / 3600 } as System["pump"];
    const { single, pairs } = remedy({ ...machine(own(16e3)), pump }, { pairs: 1000 });
    expect(single[0]?.overClean).toBeCloseTo(HEAD + 8e3 - 15e3, 3);
    expect(pairs.length).toBeGreaterThan(0);
    for (const { overClean } of pairs) expect(overClean ?? 0).toBeLessThan((single[0]?.overClean ?? 0) - 1);
    expect(pairs[0]?.overClean).toBeNull();
  });

  test("a change that no limit touches after it before all others", () => {
    const shut = machine(own(5e3, { blocked: true }));
    const { now, single } = remedy(shut);
    expect(now.inHand).toBe(-1);
    expect(single[0]?.changes[0]?.kind).toBe("open branch");
  });

  test("what buys nothing too, but pairs only what does", () => {
    const { single, now, pairs } = remedy(
      machine(own(25e3), { part: "valve", name: "cock", kv: 1, opening: 0, oneWay: false }),
    );
    expect(single.every(({ inHand }) => inHand >= now.inHand)).toBe(true);
    expect(pairs.every(({ changes }) => changes.length === 2)).toBe(true);
  });
});

describe("remedy(system, options) counts costs", () => {
  const system = machine(own(25e3));
  test("of each alone, and of both of a pair; none where one is not stated", () => {
    const costs = { "one more branch": 90, "lower pump": 200, "larger element": 40 };
    const { single, pairs } = remedy(system, { costs, pairs: 1000 });
    const costOf = (list: typeof single, kinds: string) =>
      list.find(
        ({ changes }) =>
          changes
            .map(({ kind }) => kind)
            .sort()
            .join() === kinds,
      )?.cost;
    expect(costOf(single, "lower pump")).toBe(200);
    expect(costOf(single, "warmer fuel")).toBeNull();
    expect(costOf(pairs, "larger element,lower pump")).toBe(240);
    expect(costOf(pairs, "larger element,warmer fuel")).toBeNull();
  });
});

describe("remedy(system, options) at several temperatures", () => {
  const system = machine(own(10e3));
  test("is where least is in hand, the coldest here, whichever is named first", () => {
    for (const temperatures of [
      [WARM, 268.15],
      [268.15, WARM],
    ]) {
      const { worst, now, single } = remedy(system, { temperatures });
      expect(worst.temperature).toBe(268.15);
      expect(now.temperature).toBe(268.15);
      expect(now.overClean).toBeCloseTo(
        (check(system, { temperatures: [268.15] }).points[0]?.vacuum.high ?? 0) - 15e3,
        6,
      );
      expect(single.find(({ changes }) => changes[0]?.kind === "warmer fuel")?.temperature).toBe(278.15);
    }
  });

  test("takes the seasons' and the file's own where none are named, and refuses an empty list", () => {
    const seasons = [{ name: "cold", share: 1, temperature: 268.15 }];
    expect(remedy({ ...system, duty: { hoursADay: 4, daysAYear: 250, seasons } }).worst.temperature).toBe(268.15);
    expect(() => remedy(system, { temperatures: [] })).toThrow("remedy requires temperatures to be one or more, got 0");
  });

  test("cools fuel that boils", () => {
    const petrol: System = {
      ...machine(own(60e3)),
      pump: { kind: "fixed", flow: 1e-3, relief: 80e3, reliefTo: "inlet" },
      fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0 },
      temperature: 308.15,
      limits: { vacuumClean: 90e3, vacuumAtChange: 90e3 },
    };
    const { worst, single } = remedy(petrol);
    expect(worst.binds).toBe("vapour");
    const cooler = single.find(({ changes }) => changes[0]?.kind === "cooler fuel");
    expect(cooler?.temperature).toBe(298.15);
    expect(single.some(({ changes }) => changes[0]?.kind === "warmer fuel")).toBe(false);
  });
});

describe("remedy(system, options).pairs", () => {
  const hose = (bore: number): SystemPart => ({ part: "line", name: "hose", length: 4, bore, roughness: 1e-6 });
  const named = (system: System) =>
    remedy(system, { pairs: 1000 }).pairs.map(({ changes }) =>
      changes
        .map((one) =>
          "part" in one ? `${one.kind} ${one.part}` : "parts" in one ? `${one.kind} ${one.parts.join()}` : one.kind,
        )
        .sort()
        .join(" + "),
    );

  test("are never of one soiled element, cleaned and made larger or doubled, which would do twice what can be done once", () => {
    const pairs = named(machine(own(15e3, { restriction: 3 }), hose(0.012)));
    expect(pairs).toContain("one more branch own + wider bore hose");
    for (const pair of pairs) expect(pair.match(/ own/g)?.length ?? 0).toBeLessThan(2);
  });

  test("are of two elements, each changed by itself", () => {
    const second = elementOf("second", { drop: 15e3 }).filter;
    const pairs = named(machine(own(15e3), second));
    for (const kind of ["larger element", "one more branch"]) {
      expect(pairs).toContain(`${kind} own + ${kind} second`);
      expect(pairs).toContain([`${kind} own`, "lower pump"].sort().join(" + "));
    }
    expect(pairs).not.toContain("larger element own + one more branch own");
  });

  test("are of an element that is shut off and another, but not of its opening and its doubling", () => {
    const beside = {
      part: "bank",
      name: "pair",
      branches: [[own(40e3, { blocked: true })], [elementOf("open", { drop: 40e3 }).filter]],
    };
    const pairs = named(machine(beside as SystemPart, elementOf("second", { drop: 20e3 }).filter));
    expect(pairs).toContain("larger element second + open branch own");
    const alone = named(machine(own(40e3, { blocked: true })));
    expect(alone).not.toContain("larger element own + open branch own");
    expect(alone).not.toContain("one more branch own + open branch own");
  });
});
