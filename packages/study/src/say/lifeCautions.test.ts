import { expect, test } from "vitest";
import type { LifeCaution } from "../life/LifeAnswer.js";
import { lifeCautions } from "./lifeCautions.js";

const said = (cautions: readonly LifeCaution[]) => lifeCautions({ cautions }, "metric");
const element = "A";
const cases: readonly (readonly [LifeCaution, string])[] = [
  [
    { code: "capacity assumed", element },
    "how much soil A can hold was not tested; handbook capacities by area stand in, good to a factor of 2 or 3",
  ],
  [
    { code: "law assumed", element, law: "intermediate" },
    "one capacity does not tell how restriction grows on the way to it; for A intermediate blocking is taken, which lies between the other laws",
  ],
  [
    { code: "tests fit no law", element, law: "cake", why: "too steep" },
    "no cake law goes through what is known of A (too steep); taken not to plug",
  ],
  [
    { code: "nothing to multiply", element },
    "the flow test of A puts its whole drop down to body and inertia, none to the medium, so soil has nothing to multiply; taken not to plug. Two flows further apart would tell",
  ],
  [
    { code: "no capacity", element },
    "neither a capacity test nor an area is stated of A, so it never plugs in these figures",
  ],
  [
    { code: "capture unknown", element, why: "nominal rating" },
    "A has a nominal rating only, which rests on no agreed test and compares with nothing; taken to catch nothing",
  ],
  [{ code: "capture unknown", element, why: "no beta stated" }, "what A catches is not stated; taken to catch nothing"],
  [
    { code: "capture unknown", element, why: "fitted backwards" },
    "A is fitted against its flow arrow; what it catches is unknown, taken as nothing",
  ],
  [
    { code: "capture", element, caution: { code: "betas from test dust" } },
    "betas come from test dust; that they hold for field dirt is an assumption",
  ],
  [
    { code: "capture", element, caution: { code: "one beta point" } },
    "one beta only is known of A; what it catches of other sizes is worked out at both ends",
  ],
  [
    { code: "capture", element, caution: { code: "absolute taken as beta 75" } },
    '"absolute" has no one meaning; of A it is taken as beta 75 at that size',
  ],
  [
    { code: "capture", element, caution: { code: "beta moved", size: 10e-6, stated: 75, held: 81.26 } },
    "beta 75 at 10.0 µm of A would need a size to gain particles; 81.3 is worked with",
  ],
  [
    { code: "extrapolated", share: 0.4 },
    "40 % of the mass lies beyond the counted sizes, carried on along the outer slopes; solids in mg/L would settle it",
  ],
  [
    { code: "season not judged", season: "winter", temperature: 253.15 },
    "winter at -20 °C is below the cloud point or outside the fuel's data: elements fill then, but no limit is judged",
  ],
  [
    { code: "judged at the worst", coldest: 263.15 },
    "limits are judged at full demand and every temperature of the duty, -10 °C the coldest, whichever season it is when they are met",
  ],
  [{ code: "full load assumed" }, "no loads are stated, so full load is taken all the time, which fills fastest"],
  [{ code: "held", held: "tank" }, "held fixed: how dirty the fuel is in the tank, whatever returns"],
  [
    { code: "held", held: "delivered fuel" },
    "held fixed: how dirty the fuel is delivered; what returns filtered thins the tank",
  ],
  [
    { code: "dirty delivery", after: 100 * 3600, volume: 0.2 },
    "the dirtier delivery of 200 L is counted after 100 h; what it brings is caught within hours, so at once here",
  ],
  [{ code: "starts full of soil", element }, "A starts with the soil the file states"],
  [{ code: "absorbs all", element }, "what share of the free water A absorbs is not stated; all of it is taken"],
];
test.each(cases)("lifeCautions({ cautions: [%j] }, 'metric') says what the figures rest on", (caution, text) => {
  expect(said([caution])).toEqual([text]);
});

const several: readonly (readonly [LifeCaution, string])[] = [
  [
    { code: "no capacity", element },
    "neither a capacity test nor an area is stated of A and B, so they never plug in these figures",
  ],
  [
    { code: "capture unknown", element, why: "nominal rating" },
    "A and B have a nominal rating only, which rests on no agreed test and compares with nothing; taken to catch nothing",
  ],
  [
    { code: "capture unknown", element, why: "no beta stated" },
    "what A and B catch is not stated; taken to catch nothing",
  ],
  [
    { code: "capture unknown", element, why: "fitted backwards" },
    "A and B are fitted against their flow arrows; what they catch is unknown, taken as nothing",
  ],
  [
    { code: "capture", element, caution: { code: "one beta point" } },
    "one beta only is known of A and B; what they catch of other sizes is worked out at both ends",
  ],
  [{ code: "starts full of soil", element }, "A and B start with the soil the file states"],
  [{ code: "absorbs all", element }, "what share of the free water A and B absorb is not stated; all of it is taken"],
];
test.each(several)("lifeCautions(answer, units) speaks of several elements as several: %j", (caution, text) => {
  expect(said([caution, { ...caution, element: "B" } as LifeCaution])).toEqual([text]);
});

test("lifeCautions(answer, units) names an element once, however often it is said of it, and keeps the order", () => {
  const start: LifeCaution = { code: "starts full of soil", element };
  const load = "no loads are stated, so full load is taken all the time, which fills fastest";
  expect(said([start, { code: "full load assumed" }, start])).toEqual(["A starts with the soil the file states", load]);
  expect(said([{ code: "full load assumed" }, start, { ...start, element: "B" }, start])).toEqual([
    load,
    "A and B start with the soil the file states",
  ]);
});
