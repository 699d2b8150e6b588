import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readSystem, type System } from "@thirstline/spec";
import { expect, test } from "vitest";
import { life } from "./life.js";
import { lifeTrace } from "./lifeTrace.js";

function demo(file: string): System {
  const path = fileURLToPath(new URL(`../../../spec/demo/${file}`, import.meta.url));
  const read = readSystem(readFileSync(path, "utf8"), { file });
  if ("faults" in read) throw new Error(`${file} has faults`);
  return read.system;
}

/** What a trace reads at a time, straight between its moments. */
function at(trace: ReturnType<typeof lifeTrace>, time: number): number {
  const after = trace.time.findIndex((one) => one >= time);
  const [t0 = 0, t1 = 0] = [trace.time[after - 1], trace.time[after]];
  const [v0 = 0, v1 = 0] = [trace.vacuum[after - 1], trace.vacuum[after]];
  return after === 0 ? v1 : v0 + ((v1 - v0) * (time - t0)) / (t1 - t0);
}

test.each(["heron.yaml", "pickup-staged.yaml", "crane.yaml"])(
  "lifeTrace(%s) begins and ends as life does, and goes through its moments",
  (file) => {
    const answer = life(demo(file));
    const trace = lifeTrace(demo(file), answer, 60, 0);
    expect(trace.time.length).toBeGreaterThan(55);
    expect(trace.time[0]).toBe(0);
    expect(trace.time.at(-1)).toBeCloseTo(answer.end?.time ?? Number.NaN, -2);
    answer.trace.time.forEach((time, moment) => {
      const due = answer.trace.vacuum[moment] ?? Number.NaN;
      expect(Math.abs(at(trace, Math.min(time, trace.time.at(-1) ?? 0)) / due - 1)).toBeLessThan(2e-3);
    });
  },
);

test("lifeTrace(system, answer) bends where life's own moments would be joined straight", () => {
  const system = demo("pickup-staged.yaml");
  const answer = life(system);
  const half = (answer.end?.time ?? 0) / 2;
  expect(at(lifeTrace(system, answer, 60, 0), half)).toBeLessThan(0.8 * at(answer.trace, half));
});

test("lifeTrace(system, answer, moments, until) reaches as far as is asked where no limit is met", () => {
  const system = demo("generator.yaml");
  const trace = lifeTrace(system, life(system), 40, 200 * 3600);
  expect(trace.time.at(-1)).toBeGreaterThanOrEqual(200 * 3600);
  expect(trace.time.length).toBeGreaterThan(35);
});

test("lifeTrace(system, answer) has nothing to follow where life cannot say", () => {
  const system = demo("dewatering.yaml");
  expect(lifeTrace(system, life(system), 40, 3600).time).toEqual([]);
});
