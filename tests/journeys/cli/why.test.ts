import { describe, expect, test } from "vitest";
import { testKeptOutcomes } from "./keptOutcomes.js";
import { strayFigures } from "./strayFigures.js";
import { type Setting, thirstline } from "./thirstline.js";

// The command that shows how a figure was reached. Kept outcomes are made anew as those of the other commands are.

type Folder = Setting["folder"];

const other = ["--with", "element P10 tall", "--from", "elements.csv"];
const swap = ["--of", "swap", "--at", "prefilter A", "--at", "prefilter B", ...other];
const size = ["--of", "size", "--from", "elements.csv", "--stages", "1"];
const fleet = ["--of", "fleet", "--on", "2026-11-25"];
const warmAndCold = ["-t", "15 degC", "-t", "-10 degC"];

const given: readonly (readonly [name: string, folder: Folder, ...args: string[]])[] = [
  ["list", "demo", "heron.yaml"],
  ["list-us", "demo", "lorry.yaml", "--units", "us"],
  ["vacuum", "demo", "heron.yaml", "vacuum"],
  ["vacuum-two-steps-us", "demo", "generator.yaml", "vacuum", "--depth", "2", "--units", "us"],
  ["line", "demo", "heron.yaml", "drop of tank line", "-t", "-10 degC", "-t", "20 degC"],
  ["line-down-to-the-file", "demo", "heron.yaml", "drop of tank line", "--depth", "20"],
  ["between-laminar-and-turbulent", "demo", "heron.yaml", "drop of delivery line", "--depth", "3"],
  ["ceiling-within-a-step", "demo", "pickup-staged.yaml", "ceiling at change", "--depth", "2"],
  ["two-tanks", "demo", "lorry.yaml", "flow in left hose"],
  ["estimate", "demo", "dewatering-paper.yaml", "vacuum, high end", "--depth", "2"],
  ["life", "demo", "heron.yaml", "end of life"],
  ["change", "demo", "lorry.yaml", "change"],
  ["spread", "files", "spread.yaml", "vacuum, 90 % of draws", "--draws", "60"],
  ["markdown", "demo", "heron.yaml", "Reynolds number in tank line", "--markdown", "--depth", "2"],
  ["no-value-here", "files", "no-limit.yaml", "limit at change"],
  ["no-such-figure", "demo", "heron.yaml", "vaccum"],
  ["swap", "demo", "heron.yaml", "changed: cost of a year", ...swap, "--labour", "60"],
  ["swap-warm-and-cold-us", "demo", "heron.yaml", "changed: in hand", ...swap, ...warmAndCold, "--units", "us"],
  ["swap-list", "demo", "heron.yaml", ...swap],
  ["size", "demo", "heron.yaml", "arrangement 2: cost of a year", ...size, "--labour", "60", "--depth", "2"],
  ["size-search", "demo", "heron.yaml", "passing", ...size],
  ["remedy", "demo", "crane-narrow-hose.yaml", "single 1: cost", "--of", "remedy", "--cost", "wider bore=120"],
  ["remedy-markdown", "demo", "heron-finer.yaml", "single 1: ceiling gained", "--of", "remedy", "--markdown"],
  ["card", "demo", "heron.yaml", "time to settle", "--of", "card", "-t", "5 degC"],
  ["card-list", "demo", "generator.yaml", "--of", "card"],
  ["gauge", "demo", "heron.yaml", "readings/heron-loading.csv", "left: running time left", "--of", "gauge"],
  [
    "gauge-typed",
    "demo",
    "heron.yaml",
    "readings used",
    "--of",
    "gauge",
    "--reading",
    "11450 h, 9 kPa, 100 %, 12 degC",
  ],
  ["fleet", "demo", "yard", "Yard crane: rate of use", ...fleet],
  ["fleet-list-of-one", "demo", "yard", "prefilter element P25", ...fleet],
  ["no-value-of-one", "demo", "heron.yaml", "now: cost of stoppages in a year", ...swap],
  ["of-several", "demo", "heron.yaml", "vacuum", ...swap],
  ["of-one-unknown", "demo", "heron.yaml", "changed: start below", ...swap],
  ["of-none", "demo", "yard", "dais until it is due", ...fleet],
  ["of-unknown-question", "demo", "heron.yaml", "vacuum", "--of", "swop", "--at", "prefilter A"],
  ["of-check", "demo", "heron.yaml", "vacuum", "--of", "check"],
  ["of-missing-options", "demo", "heron.yaml", "vacuum", "--of", "swap"],
  ["of-foreign-options", "demo", "heron.yaml", "vacuum", "--of", "swap", "--stages", "2", "--csv", "--demand", "1 L/h"],
  ["of-left-out", "demo", "heron.yaml", "vacuum", "--at", "prefilter A", "--stages", "2"],
  ["of-no-such-place", "demo", "heron.yaml", "now: vacuum", "--of", "swap", "--at", "prefilter C", ...other],
  ["of-no-readings", "demo", "heron.yaml", "--of", "gauge"],
  ["of-faulty-yard", "files", "yard-faulty", "yard: days looked ahead", ...fleet],
  ["help", "demo", "--help"],
  ["faulty-file", "files", "faulty.yaml", "vacuum"],
  ["faulty-options", "demo", "heron.yaml", "vacuum", "--depth", "0", "--markdown", "--json"],
];

const transcripts = given.map(([name, folder, ...args]) => ({ name, folder, args: ["why", ...args] }));

testKeptOutcomes({ folder: "whyExpected", transcripts, wide: /markdown\.txt$/ });

describe("thirstline why ... --json", () => {
  test("gives the whole working, every figure with its unit, and what the proof came to", () => {
    const { stdout, code } = thirstline(["why", "heron.yaml", "drop of prefilter A", "--json"], { folder: "demo" });
    const parsed = JSON.parse(stdout);
    expect(strayFigures(parsed)).toEqual([]);
    const [answer] = parsed.answers;
    expect(answer).toMatchObject({ file: "heron.yaml", question: "why", figure: "drop of prefilter A" });
    expect(answer.step.formula.text).toBe("mu * R * r * Q");
    expect(answer.proof.largest.value).toBeLessThan(1e-9);
    expect(code).toBe(0);
  });

  test("of another question says which, and what of its answer the figure is of", () => {
    const { stdout, code } = thirstline(["why", "heron.yaml", "changed: cost of a year", ...swap, "--json"], {
      folder: "demo",
    });
    const parsed = JSON.parse(stdout);
    expect(strayFigures(parsed)).toEqual([]);
    expect(parsed.answers[0]).toMatchObject({
      file: "heron.yaml",
      question: "why",
      of: "swap",
      subject: "changed",
      system: "Heron, port engine",
      figure: "cost of a year",
    });
    expect(code).toBe(0);
  });

  test("of another question without a figure lists what its answer is of, with the figures of each", () => {
    const { stdout } = thirstline(["why", "heron.yaml", ...size, "--json"], { folder: "demo" });
    const { answers } = JSON.parse(stdout);
    expect(strayFigures(answers)).toEqual([]);
    const subjects = answers.map((one: { subject: string }) => one.subject);
    expect(subjects.slice(0, 3)).toEqual(["search", "arrangement 1", "arrangement 2"]);
    const names = answers[1].figures.map((one: { name: string }) => one.name);
    expect(names).toContain("cost of a year");
  });

  test("of a yard with a faulty file gives the faults and no answer", () => {
    const { stdout, code } = thirstline(["why", "yard-faulty", "yard: days looked ahead", ...fleet, "--json"], {
      folder: "files",
    });
    expect(Object.keys(JSON.parse(stdout))).toEqual(["faults"]);
    expect(code).toBe(2);
  });

  test("without a figure lists all there are", () => {
    const { stdout } = thirstline(["why", "heron.yaml", "--json"], { folder: "demo" });
    const names = JSON.parse(stdout).answers[0].figures.map((one: { name: string }) => one.name);
    for (const name of ["vacuum", "in hand", "ceiling at change", "share of prefilter A", "end of life"]) {
      expect(names).toContain(name);
    }
  });
});
