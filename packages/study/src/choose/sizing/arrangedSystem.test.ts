import type { CatalogueElement, System, SystemPart, SystemSpread } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem, WARM } from "../../../../../tests/support/plainSystem.js";
import { arrangedSystem } from "./arrangedSystem.js";
import { arrangementFigures } from "./arrangementFigures.js";
import { nearestMiss } from "./nearestMiss.js";
import type { SizeFailure } from "./SizeAnswer.js";
import type { Failed } from "./Tally.js";

const HEAD = 830 * 9.80665;
const line = (name: string, bore = 0.02): SystemPart => ({ part: "line", name, length: 1, bore, roughness: 1e-6 });
const filter = (name: string) => elementOf(name, { drop: 1e3 }).filter;
const spread = (path: SystemSpread["path"], low: number, group?: number): SystemSpread => ({
  path,
  low,
  high: low + 1,
  ...(group === undefined ? {} : { group }),
});
const elements: readonly CatalogueElement[] = [
  elementOf("P", { drop: 2e3 }),
  elementOf("S", { drop: 3e3, spreads: [spread(["capacityTest", "soil"], 50), spread(["capacityTest", "rise"], 60)] }),
  elementOf("T", {
    drop: 3e3,
    spreads: [spread(["capacityTest", "soil"], 70, 0), spread(["capacityTest", "rise"], 80, 0)],
  }),
];
/** A line, a filter that makes way, another line and another filter that does. */
const machine: System = {
  ...plainSystem,
  suction: [line("first"), filter("old"), line("second"), filter("older"), line("third")],
};
const put = (
  stages: readonly { readonly element: string; readonly count: number }[],
  system = machine,
  bore: number | null = null,
) => arrangedSystem(system, elements, "suction", { stages, bore });
const namesOf = ({ suction }: System) =>
  suction.map((part) =>
    part.part === "bank" ? part.branches.map((branch) => branch.map(({ name }) => name).join()) : part.name,
  );

describe("arrangedSystem(system, elements, side, arrangement) names elements", () => {
  test("after the catalogue's, lettered where several stand side by side", () => {
    expect(
      namesOf(
        put([
          { element: "P", count: 3 },
          { element: "S", count: 1 },
        ]),
      ),
    ).toEqual(["first", ["P A", "P B", "P C"], "S", "second", "third"]);
    expect(put([{ element: "P", count: 2 }]).suction[1]).toMatchObject({ part: "bank", name: "bank" });
  });

  test("apart from each other and from all that is there", () => {
    const stages = [
      { element: "P", count: 1 },
      { element: "P", count: 2 },
      { element: "P", count: 1 },
      { element: "P", count: 2 },
    ];
    expect(namesOf(put(stages)).slice(1, -2)).toEqual(["P", ["P A", "P B"], "P, 2", ["P A, 2", "P B, 2"]]);
    const taken = { ...machine, delivery: [filter("P"), filter("P, 2")] };
    expect(namesOf(put([{ element: "P", count: 1 }], taken))[1]).toBe("P, 3");
    // Its own old filter makes way, and its name with it.
    const again = { ...machine, suction: [filter("P")] };
    expect(namesOf(put([{ element: "P", count: 1 }], again))).toEqual(["P"]);
  });

  test("and changes nothing on the other side", () => {
    const delivery = [line("behind"), filter("fine")];
    const found = put([{ element: "P", count: 1 }], { ...machine, delivery });
    expect({ ...found, suction: machine.suction }).toEqual({ ...machine, delivery });
    const behind = arrangedSystem({ ...machine, delivery }, elements, "delivery", {
      stages: [{ element: "P", count: 1 }],
      bore: null,
    });
    expect(behind.suction).toEqual(machine.suction);
    expect(behind.delivery?.map(({ name }) => name)).toEqual(["behind", "P"]);
    const { delivery: _, ...open } = machine;
    const fresh = arrangedSystem(open, elements, "delivery", { stages: [{ element: "P", count: 1 }], bore: null });
    expect(fresh.delivery?.map(({ name }) => name)).toEqual(["P"]);
  });
});

describe("arrangedSystem(system, elements, side, arrangement) carries spreads along", () => {
  const told = (system: System) => (system.spreads ?? []).map(({ path, low, group }) => [path.join("."), low, group]);

  test("none where there are none", () => expect(put([{ element: "P", count: 2 }])).not.toHaveProperty("spreads"));

  test("the file's own, at their new places; those of what makes way go with it", () => {
    const spreads = [
      spread(["suction", 0, "length"], 1),
      spread(["suction", 1, "leak"], 2),
      spread(["suction", 2, "length"], 3, 2),
      spread(["suction", 4, "length"], 4, 2),
      spread(["altitude"], 5),
    ];
    expect(
      told(
        put(
          [
            { element: "P", count: 1 },
            { element: "P", count: 2 },
          ],
          { ...machine, spreads },
        ),
      ),
    ).toEqual([
      // In the order in which the figures stand in a system.
      ["altitude", 5, undefined],
      ["suction.0.length", 1, undefined],
      ["suction.3.length", 3, 2],
      ["suction.4.length", 4, 2],
    ]);
  });

  test("but for a bore, where one is tried out in its place", () => {
    const spreads = [
      spread(["suction", 0, "bore"], 1),
      spread(["suction", 2, "length"], 2),
      spread(["delivery", 0, "bore"], 3),
    ];
    const system = { ...machine, spreads, delivery: [line("behind")] };
    const kept = (bore: number | null) => told(put([{ element: "P", count: 1 }], system, bore)).map(([path]) => path);
    expect(kept(null)).toEqual(["suction.0.bore", "suction.2.length", "delivery.0.bore"]);
    expect(kept(0.03)).toEqual(["suction.2.length", "delivery.0.bore"]);
  });

  test("an element's own, one unknown at all of its places, apart or together as they are in it", () => {
    const soil = "capacityTest.soil";
    const rise = "capacityTest.rise";
    expect(told(put([{ element: "S", count: 1 }]))).toEqual([
      [`suction.1.${soil}`, 50, undefined],
      [`suction.1.${rise}`, 60, undefined],
    ]);
    expect(
      told(
        put([
          { element: "S", count: 2 },
          { element: "T", count: 1 },
          { element: "S", count: 1 },
        ]),
      ),
    ).toEqual([
      [`suction.1.branches.0.0.${soil}`, 50, 0],
      [`suction.1.branches.0.0.${rise}`, 60, 1],
      [`suction.1.branches.1.0.${soil}`, 50, 0],
      [`suction.1.branches.1.0.${rise}`, 60, 1],
      [`suction.2.${soil}`, 70, 4],
      [`suction.2.${rise}`, 80, 4],
      [`suction.3.${soil}`, 50, 0],
      [`suction.3.${rise}`, 60, 1],
    ]);
  });

  test("the file's own apart from an element's, whatever their groups", () => {
    const spreads = [spread(["altitude"], 1, 0), spread(["temperature"], 2, 0)];
    expect(
      told(put([{ element: "T", count: 1 }], { ...machine, spreads })).map(([, low, group]) => [low, group]),
    ).toEqual([
      [2, 0],
      [1, 0],
      [70, 2],
      [80, 2],
    ]);
  });

  test("past what is null in a system", () => {
    const odd = { ...machine, note: null, spreads: [spread(["altitude"], 1)] } as System;
    expect(told(put([{ element: "P", count: 1 }], odd))).toEqual([["altitude", 1, undefined]]);
  });
});

describe("arrangementFigures(system, temperatures)", () => {
  const { suction } = plainSystem;
  const system = { ...plainSystem, suction: [...suction.slice(0, 1), elementOf("own", { drop: 12e3 }).filter] };

  test("has the least in hand over the temperatures asked for", () => {
    const of = (...temperatures: number[]) => arrangementFigures(system, temperatures).inHand;
    expect(of(WARM)).toBeCloseTo((30e3 - HEAD) / 12e3 - 1, 5);
    expect(of(268.15)).toBeLessThan(of(WARM));
    expect(of(WARM, 268.15)).toBe(of(268.15));
    expect(of(268.15, WARM)).toBe(of(268.15));
  });

  test("has the running time to the first limit, and none where none comes", () => {
    const hours = (arrangementFigures(system, [WARM]).life ?? 0) / 3600;
    expect(hours / ((30e3 - HEAD - 12e3) / 12e3 / (2 / 600))).toBeCloseTo(1, 1);
    const clean = { ...system, deliveredFuel: { solids: 1e-9, dust: "A3 medium" } } as System;
    expect(arrangementFigures(clean, [WARM]).life).toBeNull();
  });
});

describe("nearestMiss(failed, given)", () => {
  const given = { system: plainSystem, elements, side: "suction", temperatures: [WARM] } as const;
  const failedBy = (...names: SizeFailure[]) =>
    new Map(
      names.map((by, at): [SizeFailure, Failed] => {
        const picked = (element: number) => ({ elements: [element], counts: [at + 1], bore: null });
        return [by, { count: 1, example: picked(0), nearest: picked(1), miss: 0 }];
      }),
    );

  test("is of what is asked for last in a search, since more is right with it", () => {
    const order: SizeFailure[] = [
      "interval",
      "cleanliness",
      "rating",
      "vacuum at change",
      "vacuum clean",
      "feed pressure",
      "vapour",
      "pump capacity",
      "most flow",
    ];
    order.forEach((by, at) => {
      const found = nearestMiss(failedBy(...order.slice(at).reverse()), given);
      expect(found).toMatchObject({ by, stages: [{ element: "S", count: order.length - at }] });
    });
  });

  test("is none where nothing can be reckoned of any", () => {
    expect(nearestMiss(failedBy("catch not known", "capacity not known"), given)).toBeNull();
    expect(nearestMiss(new Map(), given)).toBeNull();
  });

  test("has the arrangement's own figures, and no code where none can be reckoned", () => {
    const found = nearestMiss(failedBy("interval"), given);
    expect(found).toMatchObject({
      bore: null,
      inHand: expect.closeTo(1, 6),
      code: expect.stringMatching(/^\d+\/\d+\/\d+$/),
    });
    const { deliveredFuel: _, ...open } = plainSystem;
    expect(nearestMiss(failedBy("interval"), { ...given, system: open })).toMatchObject({ code: null, life: null });
  });
});
