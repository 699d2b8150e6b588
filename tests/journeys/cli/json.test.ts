import { describe, expect, test } from "vitest";
import { strayFigures } from "./strayFigures.js";
import { thirstline } from "./thirstline.js";

interface Json {
  readonly answers: readonly Record<string, unknown>[];
}

const asked = (folder: "demo" | "files", ...args: string[]) => {
  const { stdout, stderr, code } = thirstline([...args, "--json"], { folder });
  return { parsed: JSON.parse(stdout) as Json, stderr, code };
};

const UNITS = ["Pa", "m3/s", "m2/s", "kg/m3", "K", "m", "1", "s", "m3", "1/m3", "kg", "kg/s"];

const cases: [string, "demo" | "files", ...string[]][] = [
  ["a system that holds", "demo", "check", "heron.yaml"],
  ["one that starves, at two temperatures", "demo", "check", "heron-finer.yaml", "-t", "15 degC", "-t", "-10 degC"],
  ["gravity with soil", "demo", "check", "generator-soiled.yaml"],
  ["several tanks", "demo", "check", "lorry-blocked-vent.yaml"],
  ["an estimate", "demo", "check", "dewatering-paper.yaml"],
  ["fuel below its cloud point", "demo", "check", "heron.yaml", "-t", "-30 degC"],
  ["no limit", "files", "check", "no-limit.yaml"],
  ["a shut system", "files", "check", "shut.yaml"],
  ["relief to the tank", "files", "check", "relief-to-tank.yaml"],
  ["a life with its spread", "demo", "life", "heron.yaml"],
  ["a life that meets no limit", "demo", "life", "generator.yaml"],
  ["a life nobody can tell", "demo", "life", "dewatering.yaml"],
  ["a life of estimates, water and a dirty delivery", "files", "life", "spread.yaml"],
  ["a check of spreads", "files", "check", "spread.yaml", "--draws", "50"],
  ["a curve of spreads", "files", "curve", "spread.yaml", "--draws", "50"],
  ["several files", "files", "check", "soiled.yaml", "shut.yaml"],
  ["a curve in three states", "files", "curve", "soiled.yaml"],
  ["a curve with ends", "demo", "curve", "dewatering-paper.yaml"],
  ["the curve of a shut system", "files", "curve", "shut.yaml"],
];

describe("thirstline ... --json", () => {
  test.each(cases)(
    "of %s puts every number into a value with its unit, or a null with its reason",
    (_, folder, ...args) => {
      const { parsed, stderr } = asked(folder, ...args);
      expect(parsed.answers.length).toBe(args.filter((arg) => arg.endsWith(".yaml")).length);
      expect(strayFigures(parsed, UNITS)).toEqual([]);
      expect(stderr).toBe("");
    },
  );

  test("strayFigures(value, units) finds what is not as promised", () => {
    expect(
      strayFigures({ a: 1, b: [{ value: 2 }], c: { value: 1, unit: "kPa" }, d: { value: null, unit: "Pa" } }, UNITS),
    ).toEqual([".a", ".b.0", ".c", ".d"]);
    expect(
      strayFigures({ a: { value: [1, null], unit: "Pa" }, b: { value: [1], unit: "Pa", reason: "?" } }, UNITS),
    ).toEqual([".a", ".b"]);
    expect(strayFigures({ a: { value: [1, null], unit: "Pa", reason: "why" } }, UNITS)).toEqual([]);
  });

  test("gives SI figures: the demand of 120 L/h, and a temperature of 15 degC in K", () => {
    const { parsed } = asked("files", "check", "soiled.yaml", "--demand", "120 L/h");
    const total = { value: expect.closeTo(120e-3 / 3600, 15), unit: "m3/s" };
    const point = { temperature: { value: 288.15, unit: "K" }, demand: expect.objectContaining({ total }) };
    expect(parsed.answers[0]).toMatchObject({ points: [point] });
  });

  test("says of a shut system that it is, in place of its vacuum", () => {
    const { parsed, code } = asked("files", "check", "shut.yaml");
    const vacuum = { middle: { value: null, unit: "Pa", reason: "shut" } };
    expect(parsed.answers[0]).toMatchObject({ verdict: "starves", points: [{ vacuum }] });
    expect(code).toBe(1);
  });

  test("puts the faults of one file, and nothing else, on standard output", () => {
    const { stdout, stderr, code } = thirstline(["check", "soiled.yaml", "faulty.yaml", "--json"], { folder: "files" });
    const parsed = JSON.parse(stdout) as { faults: { file: string; line: number; path: string }[] };
    expect(Object.keys(parsed)).toEqual(["faults"]);
    expect(parsed.faults.map(({ file, line, path }) => `${file}:${line} ${path}`)).toEqual([
      "faulty.yaml:3 fuel.temperature",
      "faulty.yaml:4 demand",
      "faulty.yaml:5 tank.low depth",
      "faulty.yaml:7 suction[0].line.bore",
    ]);
    expect(stderr).toBe("");
    expect(code).toBe(2);
  });

  test.each([
    [["check", "--json"], { path: "check", code: "missing file" }],
    [["check", "soiled.yaml", "-t", "10", "--json"], { path: "--temperature", code: "no unit" }],
    [["check", "none.yaml", "--json"], { file: "none.yaml", code: "no such file" }],
  ])("tells the fault of %j as JSON too", (args, fault) => {
    const { stdout, stderr, code } = thirstline(args, { folder: "files" });
    expect(JSON.parse(stdout)).toEqual({ faults: [expect.objectContaining(fault)] });
    expect(stderr).toBe("");
    expect(code).toBe(2);
  });
});
