import fc from "fast-check";
import { expect, test } from "vitest";
import { type ViscosityLaw, viscosityAt } from "./viscosityAt.js";

const point = (temperature: number, kinematicViscosity: number) => ({ temperature, kinematicViscosity });
const points = [point(313.15, 1.31e-6), point(233.15, 9.2e-6), point(253.15, 4.5e-6)];

test("viscosityAt(D341 line, temperature) is the example", () => {
  expect(viscosityAt({ kind: "D341", a: 9.495607, b: 4.011309 }, 273.15)).toBeCloseTo(2.671e-6, 9);
});

test("viscosityAt(points, temperature) passes through every point, in whatever order they come", () => {
  for (const one of points) {
    const got = viscosityAt({ kind: "points", points }, one.temperature);
    expect(Math.abs(got / one.kinematicViscosity - 1)).toBeLessThanOrEqual(1e-14);
  }
});

test("viscosityAt(points, temperature) runs the outer lines on", () => {
  const pair = (kelvin: number, of: typeof points) => viscosityAt({ kind: "points", points: of }, kelvin);
  expect(pair(223.15, points)).toBeCloseTo(
    pair(
      223.15,
      [points[1], points[2]].flatMap((one) => one ?? []),
    ),
    18,
  );
  expect(pair(333.15, points)).toBeCloseTo(
    pair(
      333.15,
      [points[0], points[2]].flatMap((one) => one ?? []),
    ),
    18,
  );
});

test("viscosityAt(one point and a slope, temperature) is the line of that slope through it", () => {
  const single: ViscosityLaw = { kind: "points", points: [point(313.15, 2.6e-6)], slope: 4 };
  expect(viscosityAt(single, 313.15)).toBeCloseTo(2.6e-6, 18);
  const line = (kelvin: number) => Math.log10(Math.log10(zOf(viscosityAt(single, kelvin) * 1e6)));
  const zOf = (v: number) => v + 0.7 + Math.exp(-1.47 - 1.84 * v - 0.51 * v * v);
  expect((line(273.15) - line(313.15)) / Math.log10(313.15 / 273.15)).toBeCloseTo(4, 10);
});

test("viscosityAt(law, temperature) falls as the fuel warms", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 220, max: 350, noNaN: true }),
      fc.double({ min: 0.1, max: 20, noNaN: true }),
      (from, by) => {
        const law: ViscosityLaw = { kind: "points", points };
        expect(viscosityAt(law, from + by)).toBeLessThan(viscosityAt(law, from));
      },
    ),
  );
});

test("viscosityAt(mixed law, temperature) mixes what the parts are there", () => {
  const thin: ViscosityLaw = { kind: "points", points: [point(293.15, 1e-6)], slope: 4 };
  const thick: ViscosityLaw = { kind: "points", points: [point(293.15, 4e-6)], slope: 4 };
  const parts = [
    { share: 0.5, law: thin },
    { share: 0.5, law: thick },
  ];
  expect(viscosityAt({ kind: "mixed", rule: "Grunberg-Nissan", parts }, 293.15)).toBeCloseTo(2e-6, 18);
});

test("viscosityAt refuses what it cannot answer, naming the field", () => {
  expect(() => viscosityAt({ kind: "points", points }, 0)).toThrow(
    "viscosityAt requires temperature to be more than 0 K, got 0",
  );
  expect(() => viscosityAt({ kind: "points", points }, 20)).toThrow("one at which the fuel still flows, got 20");
  expect(() => viscosityAt({ kind: "points", points: [] }, 300)).toThrow(
    "points to be one point or more, got a list of 0",
  );
  expect(() => viscosityAt({ kind: "points", points: [point(300, 1e-6)] }, 300)).toThrow(
    "slope to be more than 0, got NaN",
  );
  expect(() => viscosityAt({ kind: "points", points: [point(300, 1e-6), point(310, 2e-6)] }, 300)).toThrow(
    "points[1].kinematicViscosity to be less than 0.000001 m2/s",
  );
  expect(() => viscosityAt({ kind: "D341", a: 9, b: -4 }, 300)).toThrow("law.b to be more than 0, got -4");
  expect(() => viscosityAt({ kind: "D341", a: Number.NaN, b: 4 }, 300)).toThrow("law.a to be a finite number, got NaN");
});
