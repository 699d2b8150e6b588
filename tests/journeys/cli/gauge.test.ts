import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { type Transcript, testKeptOutcomes } from "./keptOutcomes.js";
import { strayFigures } from "./strayFigures.js";
import { thirstline } from "./thirstline.js";

// Readings of a gauge against a machine's file. Kept outcomes are made anew as those of the other commands are.

const heron = (name: string) => ["gauge", "heron.yaml", `readings/heron-${name}.csv`];
const typed = (...texts: string[]) => texts.flatMap((text) => ["--reading", text]);

const transcripts: readonly Omit<Transcript, "folder">[] = [
  { name: "loading", args: heron("loading") },
  { name: "jump", args: heron("jump") },
  { name: "air", args: heron("air") },
  { name: "high-when-new-us", args: [...heron("high-when-new"), "--units", "us"] },
  { name: "wax", args: heron("wax") },
  { name: "stated-error", args: [...heron("loading"), "--gauge-error", "2 kPa"] },
  {
    name: "typed",
    args: ["gauge", "heron.yaml", ...typed("11450 h, 9 kPa, 100 %, 12 degC", "11500 h, 9.5 kPa, 100 %, 12 degC")],
  },
  {
    name: "gravity",
    args: [
      "gauge",
      "generator.yaml",
      ...typed(
        "100 h, feed 9.1 kPa, 100 %, 12 degC, level 0.3 m, changed",
        "160 h, feed 8.9 kPa, 100 %, 12 degC, level 0.3 m",
        "220 h, feed 8.6 kPa, 100 %, 12 degC, level 0.3 m",
        "280 h, feed 8.2 kPa, 100 %, 12 degC, level 0.3 m",
        "340 h, feed 7.6 kPa, 100 %, 12 degC, level 0.3 m",
        "400 h, feed 6.8 kPa, 100 %, 12 degC, level 0.3 m",
      ),
      "--gauge-error",
      "0.2 kPa",
    ],
  },
  { name: "help", args: ["gauge", "--help"] },
  { name: "no-readings", args: ["gauge", "heron.yaml"] },
  { name: "no-such-file", args: ["gauge", "heron.yaml", "readings/heron-loding.csv"] },
  {
    name: "bad-table",
    args: ["gauge", "heron.yaml", "-"],
    input:
      "# a bad day\nhours (h),vacuum (inHg),load,temperature (degC),changed\n" +
      "11450,4,90,59 degF,\n11440,x,80 %,12,perhaps\n,5 kPa,200 %,300,\n11500,40,75 %,12,,7\n",
  },
  { name: "bad-heads", args: ["gauge", "heron.yaml", "-"], input: "hour,vacum (inHg),load (kW),note (h)\n1,2,3,4\n" },
  {
    name: "bad-typed",
    args: ["gauge", "heron.yaml", ...typed("14 kPa", "11450 h, 14, foo 3", "11460 h, 200 bar"), "--gauge-error", "1"],
  },
  { name: "too-much", args: ["gauge", "heron.yaml", "crane.yaml", "readings/heron-air.csv", ...typed("1 h, 4 kPa")] },
];

testKeptOutcomes({ folder: "gaugeExpected", transcripts: transcripts.map((one) => ({ ...one, folder: "demo" })) });

test.each([
  ["loading", 0],
  ["jump", 0],
  ["air", 0],
  ["high-when-new", 0],
  ["wax", 0],
])("thirstline gauge heron.yaml readings/heron-%s.csv exits %i: what is named is an answer", (name, code) => {
  expect(thirstline(heron(name), { folder: "demo" }).code).toBe(code);
});

test("thirstline gauge exits 4 while it cannot tell, and 2 for bad input", () => {
  const of = (...args: string[]) => thirstline(["gauge", "heron.yaml", ...args], { folder: "demo" }).code;
  expect(of(...typed("11450 h, 9 kPa"))).toBe(4);
  expect(of(...typed("11450 h"))).toBe(2);
  expect(of("heron.yaml")).toBe(2);
});

test("every demonstration of readings says that it is invented", () => {
  const folder = fileURLToPath(new URL("../../../packages/spec/demo/readings/", import.meta.url));
  const names = readdirSync(folder);
  expect(names).toHaveLength(5);
  for (const name of names) expect(readFileSync(`${folder}${name}`, "utf8")).toMatch(/^# Invented readings/);
});

const UNITS = ["Pa", "K", "s", "1"];

describe("thirstline gauge --json", () => {
  test.each([
    [heron("loading")],
    [heron("jump")],
    [heron("air")],
    [heron("wax")],
    [heron("high-when-new")],
    [["gauge", "heron.yaml", ...typed("11450 h, 9 kPa")]],
  ])("%j puts every number into a value with its unit", (args) => {
    const { stdout, stderr } = thirstline([...args, "--json"], { folder: "demo" });
    const parsed: { answers: { question: string }[] } = JSON.parse(stdout);
    expect(parsed.answers.map(({ question }) => question)).toEqual(["gauge"]);
    expect(strayFigures(parsed, UNITS)).toEqual([]);
    expect(stderr).toBe("");
  });

  test("gives faults of readings with line and column", () => {
    const { stdout, code } = thirstline(["gauge", "heron.yaml", "-", "--json"], {
      folder: "demo",
      input: "hours (h),vacuum\n11450,14\n",
    });
    const fault = { file: "standard input", line: 2, column: 7, path: "vacuum", code: "no unit", received: "14" };
    expect(JSON.parse(stdout)).toEqual({ faults: [expect.objectContaining(fault)] });
    expect(code).toBe(2);
  });
});
