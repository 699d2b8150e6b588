import { describe, expect, test } from "vitest";
import { testKeptOutcomes } from "./keptOutcomes.js";
import { strayFigures } from "./strayFigures.js";
import { thirstline } from "./thirstline.js";

// The commands that choose: swap, size and remedy. Kept outcomes are made anew as those of the other commands are.

const both = ["--at", "prefilter A", "--at", "prefilter B"];
const from = ["--from", "elements.csv"];

const transcripts: readonly (readonly [name: string, ...args: string[]])[] = [
  ["swap-no", "swap", "heron.yaml", ...both, "--with", "elements/p10-same-body.yaml", ...from, "--labour", "60"],
  [
    "swap-yes",
    "swap",
    "heron.yaml",
    ...both,
    "--with",
    "element P10 tall",
    ...from,
    "--labour",
    "60",
    "--stoppage",
    "2000",
  ],
  [
    "swap-yes-us",
    "swap",
    "heron.yaml",
    ...both,
    "--with",
    "element P10 tall",
    ...from,
    "--units",
    "us",
    "--draws",
    "50",
  ],
  ["swap-with-care", "swap", "heron.yaml", ...both, "--with", "elements/p30-coarser.yaml", "--draws", "50"],
  ["swap-coarser", "swap", "heron.yaml", "--at", "fine filter", "--with", "element N80", ...from, "--draws", "0"],
  [
    "swap-cannot-say",
    "swap",
    "generator.yaml",
    "--at",
    "bowl filter B10",
    "--with",
    "element W10",
    ...from,
    "--draws",
    "50",
  ],
  ["size", "size", "heron.yaml", ...from, "--labour", "60"],
  [
    "size-us",
    "size",
    "heron.yaml",
    ...from,
    "--stages",
    "1",
    "--bore",
    "16 mm",
    "--bore",
    "3/4 in",
    "--units",
    "us",
    "--rows",
    "5",
  ],
  ["size-none", "size", "heron.yaml", ...from, "--stages", "1", "--parallel", "1", "--code", "9/5/0"],
  ["size-cannot-say", "size", "crane.yaml", "dewatering.yaml", ...from, "--interval", "900 h", "-t", "-30 degC"],
  [
    "size-stoppage",
    "size",
    "heron.yaml",
    ...from,
    "--stages",
    "1",
    "--stoppage",
    "5000",
    "--draws",
    "100",
    "--rows",
    "4",
  ],
  ["remedy-starves", "remedy", "crane-narrow-hose.yaml", "--cost", "wider bore=120", "--cost", "larger element=45"],
  ["remedy-us", "remedy", "heron-finer.yaml", "--units", "us"],
  ["remedy-vent", "remedy", "lorry-blocked-vent.yaml"],
  ["remedy-boils", "remedy", "workboat-winter-petrol.yaml"],
  ["help-swap", "swap", "--help"],
  ["help-size", "size", "--help"],
  ["help-remedy", "remedy", "--help"],
  ["missing-options", "swap", "heron.yaml"],
  [
    "bad-values",
    "size",
    "heron.yaml",
    ...from,
    "--stages",
    "4",
    "--bore",
    "19",
    "--rating",
    "10 um",
    "--code",
    "15",
    "--side",
    "left",
    "--labour",
    "60 EUR",
  ],
  ["bad-cost", "remedy", "heron.yaml", "--cost", "wide bore=1", "--cost", "5"],
  ["no-such-place", "swap", "heron.yaml", "--at", "prefilter C", "--with", "elements/p10-same-body.yaml"],
  ["no-such-element", "swap", "heron.yaml", ...both, "--with", "element P01", "--fitted", "elment P25", ...from],
  ["no-catalogue", "size", "heron.yaml", "--from", "elements.cvs"],
  ["too-many-elements", "swap", "heron.yaml", ...both, "--with", "elements.csv"],
  ["too-many-arrangements", "size", "heron.yaml", ...from, "--stages", "3", "--parallel", "8"],
];

testKeptOutcomes({
  folder: "chooseExpected",
  transcripts: transcripts.map(([name, ...args]) => ({ name, folder: "demo", args })),
});

const UNITS = ["Pa", "m3/s", "m2/s", "kg/m3", "K", "m", "s", "1", "catalogue currency", "stated currency"];

describe("thirstline ... --json", () => {
  test.each<readonly string[]>([
    ["swap", "heron.yaml", ...both, "--with", "element P10 tall", ...from, "--draws", "20", "--labour", "60"],
    ["swap", "heron.yaml", ...both, "--with", "element W10", ...from, "--draws", "20", "--rating", "beta 75 at 4 um"],
    ["swap", "dewatering.yaml", "--at", "felt pick-up filter", "--with", "element W10", ...from],
    ["size", "heron.yaml", ...from, "--stages", "1", "--bore", "19 mm", "--rating", "beta 75 at 10 um"],
    ["size", "heron.yaml", ...from, "--interval", "900 h"],
    ["remedy", "crane-narrow-hose.yaml", "--cost", "wider bore=120"],
    ["remedy", "lorry-blocked-vent.yaml"],
    ["remedy", "workboat-winter-petrol.yaml"],
  ])("%s %s puts every number into a value with its unit", (...args) => {
    const { stdout, stderr } = thirstline([...args, "--json"], { folder: "demo" });
    const parsed: { answers: { question: string }[] } = JSON.parse(stdout);
    expect(parsed.answers.map(({ question }) => question)).toEqual([args[0]]);
    expect(strayFigures(parsed, UNITS)).toEqual([]);
    expect(stderr).toBe("");
  });

  // More than a hundred draws: fewer are not shared out.
  test.each<readonly string[]>([
    ["swap", "heron.yaml", ...both, "--with", "element P25 short", ...from, "--draws", "230", "--stoppage", "900"],
    ["size", "heron.yaml", ...from, "--stages", "1", "--rows", "3", "--draws", "170", "--stoppage", "900"],
  ])(
    "%s %s is the same whatever the number of threads",
    (...args) => {
      const by = (threads: string) => thirstline([...args, "--workers", threads], { folder: "demo" });
      const alone = by("1");
      expect(alone.stdout).toContain("chance");
      expect(by("3")).toEqual(alone);
    },
    60_000,
  );

  test("size names its best arrangements whole", () => {
    const { stdout } = thirstline(["size", "heron.yaml", ...from, "--stages", "1", "--json"], { folder: "demo" });
    const parsed: { answers: { best: { cost: { stages: unknown; yearlyCost: unknown } } }[] } = JSON.parse(stdout);
    expect(parsed.answers[0]?.best.cost).toMatchObject({
      stages: [{ element: "element P30", count: { value: 1, unit: "1" } }],
      yearlyCost: { value: expect.closeTo(216, 9), unit: "catalogue currency" },
    });
  });

  test("faults of a catalogue come as JSON too, with line and column", () => {
    const { stdout, code } = thirstline(["size", "heron.yaml", "--from", "-", "--json"], {
      folder: "demo",
      input: "name,drop,flow,viscosity\nA,2,200 L/h,2.5 mPa s\n",
    });
    const fault = { file: "standard input", line: 2, column: 3, path: "drop", code: "no unit", received: "2" };
    expect(JSON.parse(stdout)).toEqual({ faults: [expect.objectContaining(fault)] });
    expect(code).toBe(2);
  });
});
