import { type BandEnd, fuelState, screenLaws, solve, strainer } from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 835, kinematicViscosity: 3e-6 });
const cloth = { aperture: 150e-6, wire: 100e-6 };

test("strainer(cloth) costs the lowest, middle and highest of the three screen laws at its face velocity, in any order", () => {
  const cases: [aperture: number, wire: number, flow: number][] = [
    [150e-6, 100e-6, 2e-5], // 0.01 m/s over 20 cm2
    [1e-3, 2e-4, 2e-5],
    [1e-3, 1e-3, 2e-3],
    [25e-6, 1e-4, 2e-5],
    [25e-6, 1e-4, 2e-3],
  ];
  const orders = new Set<string>();
  for (const [aperture, wire, flow] of cases) {
    const laws = Object.values(screenLaws).map(({ drop }) => drop({ aperture, wire }, diesel, flow / 0.002));
    const sorted = [...laws].sort((a, b) => a - b);
    orders.add(laws.map((drop) => sorted.indexOf(drop)).join());
    const ends = (["low", "middle", "high"] as BandEnd[]).map((end) =>
      solve(strainer({ aperture, wire, area: 0.002 }), diesel, { end }).drop(flow),
    );
    sorted.forEach((drop, at) => {
      expect((ends[at] ?? 0) / drop).toBeCloseTo(1, 13);
    });
  }
  // Whichever of the laws is the largest: the cases stand for five of the six orders.
  expect(orders.size).toBe(5);
});

test("strainer(cloth) of twice the area costs at twice the flow what the single one costs", () => {
  const dropOf = (area: number, flow: number) => solve(strainer({ ...cloth, area }), diesel).drop(flow);
  expect(dropOf(0.004, 4e-5)).toBe(dropOf(0.002, 2e-5));
});

test.each([
  [{ aperture: 0, wire: 1e-4, area: 1 }, "strainer requires aperture to be more than 0 m, got 0"],
  [{ aperture: 1e-4, wire: Number.NaN, area: 1 }, "strainer requires wire to be more than 0 m, got NaN"],
  [{ aperture: 1e-4, wire: 1e-4, area: -1 }, "strainer requires area to be more than 0 m2, got -1"],
])("strainer(%j) is refused", (given, message) => {
  expect(() => strainer(given)).toThrow(message);
});
