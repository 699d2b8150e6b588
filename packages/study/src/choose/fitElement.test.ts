import type { System, SystemFilter, SystemSpread } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem } from "../../../../tests/support/plainSystem.js";
import { fitElement } from "./fitElement.js";
import { filterPlaces } from "./places.js";

const place = (name: string, more: Partial<SystemFilter> = {}) => elementOf(name, { drop: 1e3, filter: more }).filter;
const pair = (a: Partial<SystemFilter> = {}, b: Partial<SystemFilter> = {}): System => ({
  ...plainSystem,
  suction: [
    { part: "rise", name: "lift", height: 1 },
    {
      part: "bank",
      name: "bank",
      branches: [[place("A", a)], [{ part: "rise", name: "up", height: 0 }, place("B", b)]],
    },
  ],
  delivery: [place("fine")],
});
const fitted = (system: System, name: string) => filterPlaces(system).find(({ part }) => part.name === name)?.part;
const other = elementOf("other", { drop: 5e3 });

describe("fitElement(system, names, element)", () => {
  test("puts the element at the places named, under their names, and leaves the rest and the system given as they are", () => {
    const system = pair();
    const before = structuredClone(system);
    const changed = fitElement(system, ["A", "B"], other);
    expect(fitted(changed, "A")).toEqual({ ...other.filter, name: "A" });
    expect(fitted(changed, "B")).toEqual({ ...other.filter, name: "B" });
    expect(fitted(changed, "fine")).toBe(fitted(system, "fine"));
    expect({ ...changed, suction: system.suction }).toEqual(system);
    expect(system).toEqual(before);
  });

  test("keeps what belongs to the machine: whether the place is shut off; clean and the right way round, it is new", () => {
    const changed = fitElement(pair({ blocked: true, reversed: true, restriction: 3, leak: 0.1 }), ["A"], other);
    expect(fitted(changed, "A")).toEqual({ ...other.filter, name: "A", blocked: true });
    expect(fitted(changed, "B")).toEqual(fitted(pair(), "B"));
  });

  const machine = { housing: { k: 2, port: 0.01 }, thread: "M20x1.5", direction: "outside in" } as const;
  const element = { housing: { k: 3, port: 0.02 }, thread: "M24x1.5", direction: "inside out" } as const;
  test.each(["housing", "thread", "direction"] as const)(
    "keeps the place's %s where the element states none",
    (key) => {
      const stated = elementOf("stated", { drop: 5e3, filter: { [key]: element[key] } });
      expect(fitted(fitElement(pair({ [key]: machine[key] }), ["A"], other), "A")?.[key]).toEqual(machine[key]);
      expect(fitted(fitElement(pair({ [key]: machine[key] }), ["A"], stated), "A")?.[key]).toEqual(element[key]);
      expect(fitted(fitElement(pair(), ["A"], stated), "A")?.[key]).toEqual(element[key]);
      expect(fitted(fitElement(pair(), ["A"], other), "A")).not.toHaveProperty(key);
    },
  );
});

describe("fitElement(system, names, element) carries spreads along", () => {
  const spread = (path: SystemSpread["path"], low: number, group?: number): SystemSpread => ({
    path,
    low,
    high: low + 1,
    ...(group === undefined ? {} : { group }),
  });
  const a = ["suction", 1, "branches", 0, 0];
  const b = ["suction", 1, "branches", 1, 1];
  const named = (system: System) => (system.spreads ?? []).map(({ path, low, group }) => [path.join(), low, group]);
  const soil = elementOf("soiled", { drop: 5e3, spreads: [spread(["capacityTest", "soil"], 50)] });

  test("none where neither has any", () => expect(fitElement(pair(), ["A"], other)).not.toHaveProperty("spreads"));

  test("the system's own, each apart or together as it was, in their order", () => {
    const spreads = [spread(["delivery", 0, "leak"], 1), spread(["altitude"], 2, 1), spread(["temperature"], 3, 1)];
    expect(named(fitElement({ ...pair(), spreads }, ["A"], other))).toEqual([
      ["delivery,0,leak", 1, undefined],
      ["altitude", 2, 1],
      ["temperature", 3, 1],
    ]);
  });

  test("without those of the element that makes way, in whose place come the new one's", () => {
    const spreads = [
      spread(["altitude"], 1),
      spread([...a, "area"], 2),
      spread([...a, "leak"], 3),
      spread(["temperature"], 4),
    ];
    expect(named(fitElement({ ...pair(), spreads }, ["A"], soil))).toEqual([
      ["altitude", 1, undefined],
      [[...a, "capacityTest", "soil"].join(), 50, undefined],
      ["temperature", 4, undefined],
    ]);
    expect(named(fitElement({ ...pair(), spreads }, ["A"], other))).toEqual([
      ["altitude", 1, undefined],
      ["temperature", 4, undefined],
    ]);
    expect(fitElement({ ...pair(), spreads: spreads.slice(1, 3) }, ["A"], other)).not.toHaveProperty("spreads");
  });

  test("the new one's at the end where nothing stood, one unknown at all of its places", () => {
    const spreads = [spread(["altitude"], 1)];
    expect(named(fitElement({ ...pair(), spreads }, ["A", "B"], soil))).toEqual([
      ["altitude", 1, undefined],
      [[...a, "capacityTest", "soil"].join(), 50, 1],
      [[...b, "capacityTest", "soil"].join(), 50, 1],
    ]);
  });

  test("two of the new one's apart or together as they are in it", () => {
    const apart = elementOf("apart", { drop: 1, spreads: [spread(["area"], 5), spread(["leak"], 6)] });
    const together = elementOf("together", { drop: 1, spreads: [spread(["area"], 5, 0), spread(["leak"], 6, 0)] });
    const groups = (element: typeof apart, at: string[]) =>
      named(fitElement(pair(), at, element)).map(([, , group]) => group);
    expect(groups(apart, ["A"])).toEqual([undefined, undefined]);
    expect(groups(together, ["A"])).toEqual([0, 0]);
    expect(groups(apart, ["A", "B"])).toEqual([0, 1, 0, 1]);
    expect(groups(together, ["A", "B"])).toEqual([0, 0, 0, 0]);
  });

  test("an own group of the system apart from one of the element that bears the same number", () => {
    const spreads = [spread(["altitude"], 1, 0), spread(["temperature"], 2, 0)];
    const together = elementOf("together", { drop: 1, spreads: [spread(["area"], 5, 0), spread(["leak"], 6, 0)] });
    expect(named(fitElement({ ...pair(), spreads }, ["A"], together)).map(([, , group]) => group)).toEqual([
      0, 0, 2, 2,
    ]);
  });
});
