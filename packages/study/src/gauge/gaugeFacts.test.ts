import type { GaugeReading, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { type GaugeFacts, gaugeErrorOf, gaugeFacts } from "./gaugeFacts.js";

const HOUR = 3600;
const heron = () => demoSystem("heron");
const reading = (hours: number, more: Partial<GaugeReading> = {}): GaugeReading => ({
  row: 1,
  line: null,
  hours: hours * HOUR,
  vacuum: 6e3,
  depth: 0.5,
  changed: false,
  ...more,
});
const found = (
  system: System,
  readings: readonly GaugeReading[] = [reading(11_500)],
  gaugeError?: number,
): GaugeFacts => {
  const facts = gaugeFacts(system, readings, gaugeError === undefined ? {} : { gaugeError });
  if ("code" in facts) throw new Error(facts.code);
  return facts;
};
/** Every filter changed. */
function withFilters(system: System, change: (filter: object & { name: string }) => object): System {
  const of = (parts: System["suction"]): System["suction"] =>
    parts.map((part) => {
      if (part.part === "bank") return { ...part, branches: part.branches.map(of) };
      return part.part === "filter" ? (change(part) as typeof part) : part;
    });
  return { ...system, suction: of(system.suction), delivery: of(system.delivery ?? []) };
}

test("gaugeFacts(system, readings, options) has both sides as life predicts, and the run since the last change", () => {
  const facts = found(heron());
  expect(facts.suction).toMatchObject({ names: ["prefilter A", "prefilter B"], by: "life" });
  expect(facts.delivery).toMatchObject({ names: ["fine filter"], lead: "fine filter", by: "life" });
  expect(facts.run).toMatchObject({ earlier: 0, start: { known: true, ratio: 1, by: "last change" } });
  expect(facts).toMatchObject({ limited: true, shut: false, gaugeError: null, weight: 4, terminals: new Map() });
  expect(facts.limits).toMatchObject({ vacuumAtChange: 40e3, feedPressure: 25e3 });
});

test("gaugeFacts(system, readings, options) judges at each temperature of the duty and the file's own, once, coldest first", () => {
  const temperatures = (system: System) => found(system).points.map(({ temperature }) => temperature);
  expect(temperatures(heron())).toEqual([263.15, 281.15, 288.15, 293.15].map((one) => expect.closeTo(one, 9)));
  const { duty: _, ...idle } = heron();
  expect(temperatures(idle)).toEqual([expect.closeTo(288.15, 9)]);
  // Below its cloud point of -16 degC nothing is judged.
  expect(temperatures({ ...idle, temperature: 250 })).toEqual([]);
  // Without dirt there is no life, and the duty stays.
  const { deliveredFuel: _fuel, ...dirtless } = heron();
  expect(temperatures(dirtless)).toHaveLength(4);
  expect(found(dirtless).suction.by).toBe("equal soil");
});

test("gaugeFacts(system, readings, options) takes a gauge's zero for 500 Pa off, and the pump's rise for a tenth", () => {
  const { zero, levelRange } = found(heron());
  expect(zero.suction).toBe(500);
  expect(zero.delivery).toBeCloseTo(Math.hypot(500, 8000), 6);
  expect(levelRange).toBe(0);
});

test("gaugeFacts(system, readings, options) counts how full the tank was where one reading does not say", () => {
  const { zero, levelRange, built } = found(heron(), [
    reading(11_500),
    { ...reading(11_510), depth: undefined } as unknown as GaugeReading,
  ]);
  // 0.9 m of winter diesel.
  expect(levelRange / (9.80665 * 0.9)).toBeGreaterThan(800);
  expect(levelRange / (9.80665 * 0.9)).toBeLessThan(850);
  // Anywhere between alike: the range over the root of 12.
  expect(zero.suction).toBeCloseTo(Math.hypot(500, levelRange / Math.sqrt(12)), 6);
  expect(zero.delivery).toBeCloseTo(Math.hypot(500, 8000), 6);
  expect(built.tanks).toHaveLength(1);
});

test("gaugeFacts(system, readings, options) weighs a stated gauge error more than common practice", () => {
  const stated = found(heron(), [reading(11_500)], 200);
  expect(stated).toMatchObject({ gaugeError: 200, weight: 12 });
  expect(gaugeErrorOf(stated)).toEqual({ value: 200, by: "stated" });
  expect(gaugeErrorOf(found(heron()))).toEqual({ value: 500, by: "common practice" });
});

test("gaugeFacts(system, readings, options) with no pump has every element on the one gauge", () => {
  const facts = found(demoSystem("generator"));
  expect(facts.suction.names).toEqual(["bowl filter B10"]);
  expect(facts.delivery.names).toEqual([]);
  expect(facts.zero.delivery).toBe(500);
  const system = demoSystem("generator");
  const filter = system.suction.filter(({ part }) => part === "filter").map((part) => ({ ...part, name: "second" }));
  expect(found({ ...system, delivery: filter } as System).suction.names).toEqual(["bowl filter B10", "second"]);
});

test("gaugeFacts(system, readings, options) hands on stated terminal drops", () => {
  const system = withFilters(heron(), (filter) =>
    filter.name === "fine filter" ? { ...filter, terminalDrop: 7e4 } : filter,
  );
  expect(found(system).terminals).toEqual(new Map([["fine filter", 7e4]]));
});

test("gaugeFacts(system, readings, options) begins with the soil that the file states, where no change is known", () => {
  const { service: _, ...unserved } = withFilters(heron(), (filter) => ({
    ...filter,
    restriction: filter.name === "prefilter B" ? 3 : filter.name === "fine filter" ? 2 : 1,
  }));
  const { run, suction, delivery } = found(unserved);
  expect(run.start).toEqual({ known: true, ratio: 3, by: "stated" });
  expect(suction.lead).toBe("prefilter B");
  expect(suction.at(3).get("prefilter A")).toBeCloseTo(1, 6);
  expect(delivery.growing?.[0]?.soil).toBeGreaterThan(0);
});

test("gaugeFacts(system, readings, options) takes no heed of stated soil where a change is known", () => {
  const soiled = withFilters(heron(), (filter) => ({ ...filter, restriction: 3 }));
  const { run, suction, delivery } = found(soiled);
  expect(run.start).toMatchObject({ by: "last change", ratio: 1 });
  expect([...(suction.growing ?? []), ...(delivery.growing ?? [])].map(({ soil }) => soil)).toEqual([0, 0, 0]);
});

test("gaugeFacts(system, readings, options) begins with the most stated where life predicts nothing", () => {
  const {
    service: _,
    deliveredFuel: _fuel,
    ...system
  } = withFilters(heron(), (filter) => ({
    ...filter,
    restriction: filter.name === "prefilter B" ? 3 : 2,
  }));
  const { run, suction } = found(system as System);
  expect(run.start).toEqual({ known: true, ratio: 3, by: "stated" });
  expect(suction.by).toBe("equal soil");
});

test("gaugeFacts(system, readings, options) says where nothing can pass to the pump", () => {
  const shut = { ...heron(), tanks: heron().tanks.map((tank) => ({ ...tank, vent: { kind: "blocked" } })) } as System;
  expect(found(shut)).toMatchObject({ shut: true });
  expect(found(shut).zero.delivery).toBe(500);
});

test("gaugeFacts(system, readings, options) says why readings cannot be put in time", () => {
  const { duty: _, ...idle } = heron();
  const { hours: _hours, ...dated } = { ...reading(1), date: "2026-03-05" };
  expect(gaugeFacts(idle, [dated], {})).toEqual({ code: "no duty for dates" });
});

test("gaugeFacts(system, readings, options) says where there is no limit to the vacuum", () => {
  const petrol = demoSystem("workboat");
  const { vacuumClean: _, vacuumAtChange: _change, ...limits } = petrol.limits;
  expect(found({ ...petrol, limits }).limited).toBe(false);
});
