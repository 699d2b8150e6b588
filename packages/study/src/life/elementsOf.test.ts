import { ASSUMED_RISE, assumedCapacities, type Filter, plugsAt, resistanceRatio } from "@thirstline/core";
import { build, type System, type SystemFilter, type SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, viscosity } from "../../../../tests/support/plainSystem.js";
import { elementsOf } from "./elementsOf.js";
import { type Guess, likely } from "./Guess.js";
import type { LifeCaution } from "./LifeAnswer.js";
import { lawOf } from "./lawOf.js";

const flow = 200 * litresAnHour;
const fluid = { dynamicViscosity: viscosity, density: 830 };
const own = (more: object = {}): SystemFilter => ({ ...elementOf("own", { drop: 6e3 }).filter, ...more });
const { capacityTest: full, loadingLaw: _law, ...untested } = own();
const [lift] = plainSystem.suction as [SystemPart];

/** The law of a filter, what its resistance has grown to with a load, and what is said of it. */
function lawWith(filter: SystemFilter, guess: Guess = likely) {
  const cautions: LifeCaution[] = [];
  const { suction } = build({ ...plainSystem, suction: [filter] });
  const part = (suction.kind === "series" ? suction.items[0] : suction) as Filter;
  const law = lawOf(filter, part, guess, cautions);
  return { law, at: (load: number) => (law ? resistanceRatio(law, load) : Number.NaN), cautions };
}
/** Resistance, 1/m3, of 6 kPa at 200 L/h of the plain fuel. */
const RESISTANCE = 6e3 / flow / viscosity;

describe("lawOf(filter, part, guess, cautions)", () => {
  test("goes through the capacity test: 12 kPa more than 6 are three times the resistance", () => {
    const { law, at, cautions } = lawWith(own());
    expect(law?.name).toBe("cake");
    expect(at(0.6)).toBeCloseTo(3, 9);
    expect(at(0.3)).toBeCloseTo(2, 9);
    expect(cautions).toEqual([]);
  });

  test("takes intermediate blocking where no law is named, and says so", () => {
    const { law, at, cautions } = lawWith(own({ loadingLaw: undefined }));
    expect(law?.name).toBe("intermediate");
    expect(at(0.6)).toBeCloseTo(3, 9);
    expect(cautions).toEqual([{ code: "law assumed", element: "own", law: "intermediate" }]);
  });

  test("of one constant goes through the test that went furthest, of two through both", () => {
    const lighter = { ...full, soil: 0.3, rise: 4e3 };
    const single = lawWith(own({ lighterCapacityTest: lighter }));
    expect(single.at(0.6)).toBeCloseTo(3, 9);
    expect(single.at(0.3)).toBeCloseTo(2, 9);
    const both = lawWith(own({ lighterCapacityTest: lighter, loadingLaw: "cake-complete" }));
    expect(both.at(0.6)).toBeCloseTo(3, 6);
    expect(both.at(0.3)).toBeCloseTo(1 + 4 / 6, 6);
    expect([single.cautions, both.cautions]).toEqual([[], []]);
    const only = { ...untested, lighterCapacityTest: lighter, loadingLaw: "cake" } as SystemFilter;
    expect(lawWith(only).at(0.3)).toBeCloseTo(1 + 4 / 6, 9);
  });

  test("of two constants is none with one test, or with two that it does not go through", () => {
    const none = (more: object) => {
      const { law, cautions } = lawWith(own({ loadingLaw: "cake-complete", ...more }));
      expect(law).toBeNull();
      return cautions;
    };
    expect(none({})).toEqual([
      { code: "tests fit no law", element: "own", law: "cake-complete", why: "needs two tests" },
    ]);
    const steep = { ...full, soil: 0.59, rise: 1e-3 };
    expect(none({ lighterCapacityTest: steep })).toEqual([
      { code: "tests fit no law", element: "own", law: "cake-complete", why: "grows too fast for this law" },
    ]);
  });

  test("is none without test or area, and where the flow test leaves the medium no drop", () => {
    expect(lawWith(untested)).toMatchObject({ law: null, cautions: [{ code: "no capacity", element: "own" }] });
    const points = [1, 2].map((times) => ({ drop: 6e3 * times ** 2, flow: flow * times }));
    const medium = { by: "flow test", points, ...fluid };
    for (const filter of [own({ medium }), { ...untested, medium, area: 0.5 } as SystemFilter]) {
      expect(lawWith(filter)).toMatchObject({ law: null, cautions: [{ code: "nothing to multiply", element: "own" }] });
    }
  });

  test.each([
    ["glass or synthetic", { make: "glass or synthetic" }],
    ["cellulose", {}],
  ] as const)(
    "goes by the handbook's capacity of %s and the area where no test is stated, and says so",
    (make, more) => {
      const { least, most } = assumedCapacities[make];
      const filter = { ...untested, area: 0.5, ...more } as SystemFilter;
      // At 0.2 mm/s through half a square metre, of fuel of 2.5 mPa s.
      const ratio = 1 + ASSUMED_RISE / (RESISTANCE * 2.5e-3 * 2e-4 * 0.5);
      const asked: string[] = [];
      const guess = (at: number): Guess => ({
        ...likely,
        capacity: (own) => {
          asked.push(own);
          return at;
        },
      });
      const at = (place: number, load: number) => lawWith(filter, guess(place)).at(load);
      expect(at(0, 0.5 * least) / ratio).toBeCloseTo(1, 9);
      expect(at(1, 0.5 * most) / ratio).toBeCloseTo(1, 9);
      expect(at(0.5, 0.5 * Math.sqrt(least * most)) / ratio).toBeCloseTo(1, 9);
      expect(new Set(asked)).toEqual(new Set([make]));
      expect(lawWith(filter).cautions).toEqual([
        { code: "capacity assumed", element: "own" },
        { code: "law assumed", element: "own", law: "intermediate" },
      ]);
    },
  );
});

/** The elements of a system with these filters on its suction side, one after another. */
function elementsWith(
  filters: readonly SystemPart[],
  guess: Guess = likely,
  more: Partial<System> = {},
  flows = new Map<string, number>(),
) {
  const system = { ...plainSystem, suction: [lift, ...filters], ...more };
  let asked = 0;
  const found = elementsOf(system, build(system), guess, () => {
    asked++;
    return flows;
  });
  return { ...found, asked };
}

describe("elementsOf(system, built, guess, flowsAtFull)", () => {
  test("are all filters that fuel passes, wherever they stand, clean and without a word where all is known", () => {
    const named = (name: string, more: object = {}) => ({ ...elementOf(name, { drop: 1e3 }).filter, ...more });
    const line: SystemPart = { part: "line", name: "line", length: 1, bore: 0.01, roughness: 1e-6 };
    const bank: SystemPart = {
      part: "bank",
      name: "pair",
      branches: [[named("A")], [line, named("B", { blocked: true })]],
    };
    const tanks = plainSystem.tanks.map((tank) => ({ ...tank, path: [named("in tank")] }));
    const { elements, cautions, asked } = elementsWith([bank, named("C")], likely, {
      tanks,
      delivery: [named("fine")],
    });
    expect(elements.map(({ name }) => name)).toEqual(["in tank", "A", "C", "fine"]);
    for (const element of elements) {
      expect(element).toEqual({
        name: element.name,
        law: expect.objectContaining({ name: "cake" }),
        efficiency: expect.anything(),
        soil: 0,
      });
    }
    // Of two betas only that they are of a test dust.
    expect(new Set(cautions.map((one) => (one.code === "capture" ? one.caution.code : one.code)))).toEqual(
      new Set(["betas from test dust"]),
    );
    expect(asked).toBe(0);
  });

  test("start with the soil that a stated restriction comes of, which is said", () => {
    const { elements, cautions } = elementsWith([own({ restriction: 2 })]);
    expect(elements[0]?.soil).toBeCloseTo(0.3, 9);
    expect(cautions).toContainEqual({ code: "starts full of soil", element: "own" });
    const unknown = elementsWith([{ ...untested, restriction: 2 } as SystemFilter]);
    expect(unknown.elements[0]?.soil).toBe(0);
    expect(unknown.cautions).not.toContainEqual({ code: "starts full of soil", element: "own" });
  });

  test("catch nothing that anybody knows of without betas, and say why", () => {
    const { elements, cautions } = elementsWith([own({ betas: undefined }), own({ name: "back", reversed: true })]);
    expect(elements.map(({ efficiency }) => efficiency)).toEqual([null, null]);
    expect(cautions).toEqual([
      { code: "capture unknown", element: "own", why: "no beta stated" },
      { code: "capture unknown", element: "back", why: "fitted backwards" },
    ]);
  });

  test("catch by one beta as the guess stands, elements of one beta alike; by several what these say", () => {
    const one = own({ betas: [{ size: 10e-6, beta: 75 }] });
    const asked: string[] = [];
    const at = (place: number) =>
      elementsWith([one, own({ name: "two" })], {
        ...likely,
        capture: (beta) => {
          asked.push(beta);
          return place;
        },
      }).elements;
    const sum = (element: ReturnType<typeof at>[number] | undefined) =>
      element?.efficiency?.reduce((all, share) => all + share, 0) ?? 0;
    const [low, middle, high] = [at(0), at(0.5), at(1)].map(([first]) => sum(first)) as [number, number, number];
    expect(low).toBeLessThan(middle);
    expect(high).toBeGreaterThan(middle);
    expect(sum(at(0)[1])).toBe(sum(at(1)[1]));
    expect(new Set(asked)).toEqual(new Set(["75 at 0.00001"]));
    expect(elementsWith([one]).cautions).toEqual([
      { code: "capture", element: "own", caution: { code: "betas from test dust" } },
      { code: "capture", element: "own", caution: expect.objectContaining({ code: "one beta point" }) },
    ]);
  });
});

describe("elementsOf(system, built, guess, flowsAtFull) of water", () => {
  const separation = { efficiency: 0.9, flow };
  const water = (filters: readonly SystemPart[], flows = new Map([["own", flow]])) => {
    const { elements, cautions, asked } = elementsWith(filters, likely, {}, flows);
    return {
      elements: elements.map(({ name: _n, law: _l, efficiency: _e, soil: _s, ...rest }) => rest),
      cautions: cautions.filter(({ code }) => code !== "capture"),
      asked,
    };
  };

  test("says nothing of a filter that neither separates nor absorbs it", () => {
    expect(water([own()])).toEqual({ elements: [{}], cautions: [], asked: 0 });
  });

  test("has a separator keep its share, at the flow it has where another absorbs; else no flow is asked", () => {
    expect(water([own({ separation })])).toEqual({ elements: [{ separates: 0 }], cautions: [], asked: 0 });
    const absorbing = own({ name: "other", absorbs: { water: 0.2, restriction: 3 } });
    const both = water([own({ separation }), absorbing]);
    expect(both.asked).toBe(1);
    expect(both.elements[0]).toEqual({ separates: expect.closeTo(0.9, 9) });
  });

  test("has an absorber close as far as stated, by a restriction or by a rise", () => {
    const by = (absorbs: object, more: object = {}) => {
      const found = water([own({ absorbs, separation, ...more })]);
      const [{ swells, separates }] = found.elements as [
        { swells?: Parameters<typeof resistanceRatio>[0]; separates?: number },
      ];
      return {
        at: (load: number) => (swells ? resistanceRatio(swells, load) : Number.NaN),
        separates,
        cautions: found.cautions,
        swells,
      };
    };
    const stated = by({ water: 0.2, restriction: 3 });
    expect(stated.at(0.2)).toBeCloseTo(3, 9);
    expect(stated.at(0)).toBe(1);
    expect(stated.separates).toBeCloseTo(0.9, 9);
    expect(stated.cautions).toEqual([]);
    expect(stated.swells && plugsAt(stated.swells)).toBeGreaterThan(0.2);
    const risen = by({ water: 0.2, rise: 12e3, flow, ...fluid });
    expect(risen.at(0.2)).toBeCloseTo(3, 9);
    expect(risen.separates).toBeCloseTo(0.9, 9);
  });

  test("takes all of the free water to stay in one of which no share is stated, and says so", () => {
    const { elements, cautions } = water([own({ absorbs: { water: 0.2, restriction: 3 } })]);
    expect(elements[0]).toMatchObject({ separates: 1 });
    expect(cautions).toEqual([{ code: "absorbs all", element: "own" }]);
  });

  test("has nothing to close where the flow test leaves the medium no drop", () => {
    const points = [1, 2].map((times) => ({ drop: 6e3 * times ** 2, flow: flow * times }));
    const medium = { by: "flow test", points, ...fluid };
    const { elements, cautions } = water([
      own({ medium, separation, absorbs: { water: 0.2, rise: 12e3, flow, ...fluid } }),
    ]);
    expect(elements).toEqual([{ separates: expect.closeTo(0.9, 9) }]);
    expect(cautions).toEqual([
      { code: "nothing to multiply", element: "own" },
      { code: "nothing to multiply", element: "own" },
    ]);
  });
});
