import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import type { CardAnswer, CardSettling } from "../../card/CardAnswer.js";
import { proofOf } from "../proof.js";
import { benchFigures } from "./benchFigures.js";
import type { CardGiven } from "./CardGiven.js";

const rise = (name: string, height: number): SystemPart => ({ part: "rise", name, height });
const filter = (name: string) => ({ part: "filter", name }) as unknown as SystemPart;

/** Two tanks of 0.5 m and 0.8 m; one is left over a climb of its own. As far as heads look at a system. */
const system = {
  tanks: [
    { name: "left", fullDepth: 0.5, path: [rise("out", 0.2), filter("pick-up")] },
    { name: "right", fullDepth: 0.8, path: [filter("foot")] },
  ],
  suction: [rise("up", 0.3), filter("prefilter")],
  delivery: [rise("on", 0.1), filter("fine filter")],
} as unknown as System;

const figures = (own: System, answer: Partial<CardAnswer>, temperature = own.temperature) =>
  benchFigures({
    system: own,
    answer: { elements: [], settling: { code: "not known" }, relief: null, ...answer },
    temperature,
  } as unknown as CardGiven);

function headOver(name: string, head: number, own = system) {
  const elements = [{ name, head }] as unknown as CardAnswer["elements"];
  const step = figures(own, { elements })[0]?.make() ?? null;
  if (step) expect(proofOf({ step }).misses).toEqual([]);
  return step === null ? null : stepLines([step]);
}

const depth = (at: number, value: number) =>
  `depth of the full tank (length, m) | file tanks[${at}].full depth | ${value}`;
const out = "climb of out (length, m) | file tanks[0].path[0].rise.height | 0.2";
const up = "climb of up (length, m) | file suction[0].rise.height | 0.3";
const on = "climb of on (length, m) | file delivery[0].rise.height | 0.1";

test.each([
  // In a tank's own path, only that tank stands over it.
  ["pick-up", 0.3, "h depth of the full tank; r[] climb of out", [depth(0, 0.5), out]],
  // On the suction side either tank may, and the one that gives the head is told.
  ["prefilter", 0.5, "h depth of the full tank; r[] climb of up", [depth(1, 0.8), up]],
  ["prefilter", 0, "h depth of the full tank; r[] climb of out, climb of up", [depth(0, 0.5), out, up]],
  ["fine filter", 0.4, "h depth of the full tank; r[] climb of up, climb of on", [depth(1, 0.8), up, on]],
  [
    "fine filter",
    -0.1,
    "h depth of the full tank; r[] climb of out, climb of up, climb of on",
    [depth(0, 0.5), out, up, on],
  ],
] as const)(
  "benchFigures(given) tells the head over %s, %s m, from the tank that gives it",
  (name, head, put, lines) => {
    expect(headOver(name, head)).toEqual([`head over ${name} (length, m) | head-over: ${put}`, ...lines]);
  },
);

test("benchFigures(given) tells the head over what nothing climbs to as the depth of its tank", () => {
  expect(headOver("foot", 0.8)).toEqual(["head over foot (length, m) | file tanks[1].full depth | 0.8"]);
});

test("benchFigures(given) takes a head for the same when it only rounds otherwise", () => {
  expect(headOver("prefilter", 0.5 + 0.9e-9)).not.toBeNull();
  expect(headOver("prefilter", 0.5 + 1.1e-9)).toBeNull();
  const high = { ...system, tanks: [{ ...system.tanks[1], fullDepth: 10.3 }] } as unknown as System;
  expect(headOver("prefilter", 10 + 0.9e-8, high)).not.toBeNull();
  expect(headOver("prefilter", 10 + 1.1e-8, high)).toBeNull();
  expect(headOver("elsewhere", 0.5)).toBeNull();
  const { delivery: _, ...half } = system;
  expect(headOver("fine filter", 0.4, half as System)).toBeNull();
});

const lorry = demoSystem("lorry");
const settled: CardSettling = { code: "time", size: 5e-5, depth: 0.8, time: 1234 };

test("benchFigures(given) tells relief and settling where there are any", () => {
  expect(figureLines(figures(lorry, {}))).toEqual([]);
  const deep = { ...lorry, tanks: lorry.tanks.map((tank, at) => ({ ...tank, fullDepth: at === 0 ? 0.6 : 0.8 })) };
  expect(figureLines(figures(deep, { relief: 350e3, settling: settled }))).toEqual([
    "At the bench: relief of the pump = 350000 | relief of the pump (pressure, Pa) | file pump.relief | 350000",
    "At the bench: size of the drops = 0.00005 | size of the drops (particle size, m) | source common practice, no source | 0.00005",
    "At the bench: depth of the deepest tank = 0.8 | depth of the deepest tank (length, m) | words of the deepest tank: depth of the full tank | 0.8",
    "At the bench: time to settle = 1234 | time to settle (running time, s) | settling-time: h depth of the deepest tank; u speed down",
  ]);
  const one = { ...deep, tanks: deep.tanks.slice(1) };
  expect(figureLines(figures(one, { settling: settled }))[1]).toBe(
    "At the bench: depth of the deepest tank = 0.8 | depth of the deepest tank (length, m) | file tank.full depth | 0.8",
  );
});

test("benchFigures(given) reckons settling by Stokes' law with water and fuel as dense as they are on the day", () => {
  const [, , , time] = figures(lorry, { relief: 1, settling: settled }, 293.15);
  const step = time?.make();
  const inside = step ? stepLines([step]) : [];
  expect(inside).toContain("ice point (temperature, K) | source exact by definition | 273.15");
  expect(inside.join("\n")).toContain(
    "density of water (density, kg/m3) | water-density: rho_0 greatest density of water; T temperature",
  );
  const speed =
    step?.origin.by === "formula" ? step.origin.inputs.find(({ letter }) => letter === "u")?.steps[0] : null;
  const of = (letter: string) =>
    (speed?.origin.by === "formula" && speed.origin.inputs.find((one) => one.letter === letter)?.steps[0]?.value) ||
    Number.NaN;
  // Water of 20 °C weighs 998.2 kg/m3.
  expect(of("rho_w")).toBeCloseTo(998.2, 1);
  expect(speed?.value).toBeCloseTo((9.80665 * 5e-5 ** 2 * (of("rho_w") - of("rho"))) / (18 * of("rho") * of("nu")), 12);
});
