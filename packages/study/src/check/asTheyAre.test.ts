import { readSystem, type System } from "@thirstline/spec";
import { expect, test } from "vitest";
import { check } from "./check.js";

function systemOf(restriction: number, altitude = "0 m"): System {
  const text = `
format: thirstline/1
name: bench
fuel: { kind: diesel, grade: winter, cloud point: -16 degC, temperature: 15 degC }
place: { altitude: ${altitude} }
demand: { burn: 60 L/h, return: 40 L/h }
tank: { full depth: 1 m, low depth: 0.2 m, vent: open }
suction:
  - line: { name: hose, length: 3 m, bore: 10 mm, surface: rubber hose }
  - filter: { name: element, flow test: [{ drop: 4 kPa, flow: 100 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }], restriction: ${restriction} }
pump: { kind: fixed, flow: 200 L/h, relief: 80 kPa, relief to: inlet }
limits: { vacuum clean: 20 kPa, vacuum at change: 40 kPa }
`;
  const read = readSystem(text, { file: "bench.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  return read.system;
}

const pointOf = (system: System) => {
  const [point] = check(system).points;
  if (point === undefined) throw new Error("check answers at one temperature at least");
  return point;
};

test("check(system) gives the descent as it is where soil is stated: a soiled element costs its restriction times as much", () => {
  const { suction, asTheyAre } = pointOf(systemOf(3));
  const cost = (rows: typeof suction | undefined) => rows?.find(({ name }) => name === "element")?.drop ?? Number.NaN;
  expect(cost(asTheyAre?.suction) / cost(suction)).toBeCloseTo(3, 9);
  expect(asTheyAre?.suction.map(({ name }) => name)).toEqual(suction.map(({ name }) => name));
});

test("check(system) ends the descent as it is on the vacuum it says there is now", () => {
  const { ambientPressure, vacuumNow, asTheyAre } = pointOf(systemOf(3, "1500 m"));
  const last = asTheyAre?.suction.at(-1)?.pressure ?? Number.NaN;
  expect(ambientPressure - last).toBeCloseTo(vacuumNow?.middle ?? Number.NaN, 6);
});

test("check(system) has no descent as it is apart from the clean one where no soil is stated", () => {
  expect(pointOf(systemOf(1)).asTheyAre).toBeNull();
});
