import { type Pump, pump } from "@thirstline/core";
import { expect, test } from "vitest";

const fixed = { kind: "fixed", flow: 1.4e-4, slip: null, relief: 80e3, reliefTo: "inlet" } as const;
const slip = { flow: 1e-5, rise: 1e5, dynamicViscosity: 0.003 };
const curve = (...points: [number, number][]): Pump => ({
  kind: "curve",
  points: points.map(([flow, rise]) => ({ flow, rise })),
});

test("pump(given) hands back what it checked", () => {
  for (const given of [
    fixed,
    { ...fixed, slip },
    { kind: "none" },
    curve([0, 2e4], [1e-4, 2e4], [2e-4, 0]),
  ] as Pump[]) {
    expect(pump(given)).toBe(given);
  }
});

test.each<[Pump, string]>([
  [{ ...fixed, flow: 0 }, "pump requires flow to be more than 0 m3/s, got 0"],
  [{ ...fixed, relief: Number.NaN }, "pump requires relief to be more than 0 Pa, got NaN"],
  [{ ...fixed, slip: { ...slip, flow: -1 } }, "pump requires slip.flow to be at least 0 m3/s, got -1"],
  [{ ...fixed, slip: { ...slip, rise: 0 } }, "pump requires slip.rise to be more than 0 Pa, got 0"],
  [
    { ...fixed, slip: { ...slip, dynamicViscosity: 0 } },
    "pump requires slip.dynamicViscosity to be more than 0 Pa s, got 0",
  ],
  [curve([0, 1]), "pump requires points to be two or more, got 1"],
  [curve([-1, 2], [1, 1]), "pump requires points[0].flow to be at least 0 m3/s, got -1"],
  [curve([0, 2], [1, -1]), "pump requires points[1].rise to be at least 0 Pa, got -1"],
  [curve([1, 2], [1, 1]), "pump requires points[1].flow to be more than 1 m3/s, got 1"],
  [curve([0, 1], [1, 2]), "pump requires points[1].rise to be at most 1 Pa, as at the smaller flow, got 2"],
  [{ kind: "pulse", flow: 0, suction: 1 }, "pump requires flow to be more than 0 m3/s, got 0"],
  [{ kind: "pulse", flow: 1, suction: 0 }, "pump requires suction to be more than 0 Pa, got 0"],
])("pump(%j) is refused", (given, message) => {
  expect(() => pump(given)).toThrow(message);
});
