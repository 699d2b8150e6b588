import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { life } from "../../life/life.js";
import { checkDraws, checkSpreadOf, type Quantiles } from "../../spread/checkSpread.js";
import { curveDraws, curveSpreadOf } from "../../spread/curveSpread.js";
import { lifeDraws } from "../../spread/lifeDraws.js";
import { spreadOf } from "../../spread/spreadOf.js";
import type { Asked } from "../Asked.js";
import { lifeScene } from "../life/lifeFacts.js";
import { proofOf } from "../proof.js";
import { sceneOf } from "../scene/Scene.js";
import { lifeSpread } from "./lifeSpread.js";
import { spreadFigures } from "./spreadFigures.js";

const DRAWS = 6;
const slice = { from: 0, to: DRAWS, seed: 5 };

/** Nobody has measured its pipe, nor the temperature of its fuel; and what its fuel holds bears on no pressure. */
const unsure = (): System => ({
  ...demoSystem("pickup-single"),
  spreads: [
    { path: ["suction", 0, "bore"], low: 0.006, high: 0.008 },
    { path: ["deliveredFuel", "solids"], low: 5e-3, high: 15e-3 },
    { path: ["temperature"], low: 270, high: 290 },
  ],
});

/** Figures by their names, each proven. */
function valuesOf(makers: ReturnType<typeof spreadFigures>): Readonly<Record<string, number | undefined>> {
  return Object.fromEntries(
    makers.map(({ name, make }) => {
      const step = make();
      if (step) expect(proofOf({ step }).misses).toEqual([]);
      return [name, step?.value];
    }),
  );
}

const three = (name: string, { low, middle, high }: Quantiles) => ({
  [`${name}, 10 % of draws`]: low,
  [`${name}, 50 % of draws`]: middle,
  [`${name}, 90 % of draws`]: high,
});

const spreadsOf = (asked: Asked) => {
  const { temperature = null, demand = null, at = null } = asked;
  return spreadFigures(sceneOf(unsure(), { temperature, demand, at }), { draws: DRAWS, seed: 5, ...asked });
};

test.each<[asked: Asked, options: Parameters<typeof checkDraws>[1]]>([
  [{}, {}],
  [{ temperature: 280 }, { temperatures: [280] }],
  [{ demand: 3e-5 }, { demand: 3e-5 }],
])("spreadFigures(scene, %j) comes to the spread of check", (asked, options) => {
  const [spread] = checkSpreadOf(checkDraws(unsure(), options, slice), 1);
  if (!spread?.feedPressure || !spread.broken) throw new Error("not every figure is met");
  const { chance, chanceError } = spread.broken;
  expect(valuesOf(spreadsOf(asked))).toEqual({
    ...three("vacuum", spread.vacuum),
    ...three("feed pressure", spread.feedPressure),
    ...three("in hand", spread.inHand),
    "chance that a limit is broken": expect.closeTo(chance, 12),
    "standard error of the chance that a limit is broken": expect.closeTo(chanceError, 12),
    draws: DRAWS,
  });
});

test("spreadFigures(scene, asked) at a demand of the curve comes to the spread of the curve there, at rest too", () => {
  const to = 2e-5;
  const [curve] = curveSpreadOf(curveDraws(unsure(), { to, points: 3 }, slice), 1, 3);
  for (const [place, at] of [0, 1e-5, 2e-5].entries()) {
    const found = valuesOf(spreadsOf({ at }));
    for (const [end, share] of [
      ["low", "10 %"],
      ["high", "90 %"],
    ] as const) {
      expect(found[`vacuum, ${share} of draws`]).toBeCloseTo(curve?.vacuum[end][place] ?? Number.NaN, 6);
      expect(found[`feed pressure, ${share} of draws`]).toBeCloseTo(curve?.feedPressure?.[end][place] ?? Number.NaN, 6);
    }
    // What has no curve is at the demand itself.
    expect(found["in hand, 50 % of draws"]).toBe(valuesOf(spreadsOf({}))["in hand, 50 % of draws"]);
  }
});

test("spreadFigures(scene, asked) tells what varies of what bears on pressures, and nothing of a system that is known", () => {
  const [first] = spreadsOf({});
  const origin = first?.make()?.origin;
  expect(origin?.by === "draws" && origin.varying).toEqual([
    "suction[0].line.bore, 0.006 to 0.008 in SI",
    "temperature, 270 to 290 in SI",
  ]);
  expect(spreadsOf({}).every(({ group, slow }) => group === "Spread of what is uncertain" && slow)).toBe(true);
  expect(spreadFigures(sceneOf(demoSystem("pickup-single"), {}), {})).toEqual([]);
});

function livesOf(system: System, asked: Asked) {
  const scene = lifeScene(sceneOf(system, {}));
  if (scene === null) throw new Error("its life cannot be told");
  return lifeSpread(scene, asked);
}

test("lifeSpread(life, asked) comes to the spread of life, against both intervals", () => {
  const pickup = demoSystem("pickup-single");
  const { interval } = life(pickup);
  const { atMost, chance, chanceError, ...quantiles } = spreadOf(lifeDraws(pickup, slice), interval);
  const near = (value: number | undefined) => expect.closeTo(value ?? Number.NaN, 12);
  expect(valuesOf(livesOf(pickup, { draws: DRAWS, seed: 5 }))).toEqual({
    ...three("life", quantiles),
    "chance of an end before the service interval": near(chance),
    "standard error of the chance of an end before the service interval": near(chanceError),
    "chance of an end before the longest interval": near(atMost?.chance),
    "standard error of the chance of an end before the longest interval": near(atMost?.chanceError),
    "draws of the life": DRAWS,
  });
});

test("lifeSpread(life, asked) tells what is only estimated of elements besides the file's own spreads", () => {
  const varying = (system: System) => {
    const [first] = livesOf(system, { draws: 1, seed: 5 });
    expect([first?.group, first?.slow]).toEqual(["Spread of the life", true]);
    const origin = first?.make()?.origin;
    return origin?.by === "draws" ? origin.varying : [];
  };
  const estimated = [
    "handbook capacity of cellulose, evenly over its logarithm",
    "catch of elements known by beta 75 at 0.000003 m alone, from the least to the most it may be",
  ];
  expect(varying(demoSystem("pickup-single"))).toEqual(estimated);
  expect(varying(unsure()).slice(-2)).toEqual(estimated);
  expect(varying(unsure())).toHaveLength(5);
});
