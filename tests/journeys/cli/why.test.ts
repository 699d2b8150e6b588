import { describe, expect, test } from "vitest";
import { testKeptOutcomes } from "./keptOutcomes.js";
import { type Setting, thirstline } from "./thirstline.js";

// The command that shows how a figure was reached. Kept outcomes are made anew as those of the other commands are.

type Folder = Setting["folder"];

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
  ["faulty-file", "files", "faulty.yaml", "vacuum"],
  ["faulty-options", "demo", "heron.yaml", "vacuum", "--depth", "0", "--markdown", "--json"],
];

const transcripts = given.map(([name, folder, ...args]) => ({ name, folder, args: ["why", ...args] }));

testKeptOutcomes({ folder: "whyExpected", transcripts, wide: /^markdown/ });

/** Numbers that stand outside { value, unit }. */
function strayFigures(value: unknown, path: string): string[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  if ("value" in value && "unit" in value) return [];
  return Object.entries(value).flatMap(([key, inner]) => strayFigures(inner, `${path}.${key}`));
}

describe("thirstline why ... --json", () => {
  test("gives the whole working, every figure with its unit, and what the proof came to", () => {
    const { stdout, code } = thirstline(["why", "heron.yaml", "drop of prefilter A", "--json"], { folder: "demo" });
    const parsed = JSON.parse(stdout);
    expect(strayFigures(parsed, "")).toEqual([]);
    const [answer] = parsed.answers;
    expect(answer).toMatchObject({ file: "heron.yaml", question: "why", figure: "drop of prefilter A" });
    expect(answer.step.formula.text).toBe("mu * R * r * Q");
    expect(answer.proof.largest.value).toBeLessThan(1e-9);
    expect(code).toBe(0);
  });

  test("without a figure lists all there are", () => {
    const { stdout } = thirstline(["why", "heron.yaml", "--json"], { folder: "demo" });
    const names = JSON.parse(stdout).answers[0].figures.map((one: { name: string }) => one.name);
    for (const name of ["vacuum", "in hand", "ceiling at change", "share of prefilter A", "end of life"]) {
      expect(names).toContain(name);
    }
  });
});
