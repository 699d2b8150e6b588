import { describe, expect, test } from "vitest";
import { testKeptOutcomes } from "./keptOutcomes.js";
import { strayFigures } from "./strayFigures.js";
import { thirstline } from "./thirstline.js";

// The job card. Kept outcomes are made anew as those of the other commands are.

const transcripts: readonly (readonly [name: string, ...args: string[]])[] = [
  ["card", "card", "heron.yaml"],
  ["card-one-cold-us", "card", "heron.yaml", "--at", "prefilter A", "-t", "-10 degC", "--units", "us"],
  ["card-wax", "card", "heron.yaml", "--at", "fine filter", "-t", "-20 degC", "--prefill", "manual-allows"],
  ["card-gravity", "card", "generator.yaml"],
  ["card-soiled-elsewhere", "card", "generator-soiled.yaml", "--primer", "10 mL"],
  ["card-screen", "card", "crane.yaml", "--primer", "0.5 fl oz"],
  ["card-forbidden", "card", "lorry.yaml", "--prefill", "manual-allows"],
  ["card-shut-vent", "card", "lorry-blocked-vent.yaml", "--at", "prefilter P15"],
  ["card-petrol", "card", "workboat.yaml"],
  ["card-in-tank", "card", "dewatering.yaml"],
  ["card-no-such-filter", "card", "heron.yaml", "--at", "prefliter A", "--at", "prefilter C"],
  ["card-bad-values", "card", "heron.yaml", "--prefill", "yes", "--primer", "12", "-t", "5 degC", "-t", "0 degC"],
  ["card-two-pages", "card", "heron.yaml", "lorry.yaml", "--html"],
  ["card-help", "card", "--help"],
];

testKeptOutcomes({
  folder: "cardExpected",
  transcripts: transcripts.map(([name, ...args]) => ({ name, folder: "demo", args })),
});

const UNITS = ["Pa", "m3/s", "kg/m3", "K", "m", "m3", "s", "1"];

describe("thirstline card --json", () => {
  test.each([
    "heron.yaml",
    "lorry-blocked-vent.yaml",
    "generator.yaml",
    "workboat.yaml",
    "dewatering.yaml",
    "crane.yaml",
  ])("of %s puts every number into a value with its unit", (file) => {
    const { stdout, stderr, code } = thirstline(["card", file, "--json"], { folder: "demo" });
    const parsed: { answers: { question: string; sections: { name: string }[] }[] } = JSON.parse(stdout);
    expect(strayFigures(parsed, UNITS)).toEqual([]);
    expect(parsed.answers.map(({ question }) => question)).toEqual(["card"]);
    expect(parsed.answers[0]?.sections[0]?.name).toBe("cautions");
    expect({ stderr, code }).toEqual({ stderr: "", code: 0 });
  });

  test("is refused beside --html", () => {
    const { stdout, code } = thirstline(["card", "heron.yaml", "--html", "--json"], { folder: "demo" });
    const { faults }: { faults: { path: string; code: string }[] } = JSON.parse(stdout);
    expect(faults).toMatchObject([{ path: "--html", code: "two forms" }]);
    expect(code).toBe(2);
  });

  test("names an unknown filter as a fault", () => {
    const args = ["card", "heron.yaml", "--at", "fine fitler", "--json"];
    const { stdout, stderr, code } = thirstline(args, { folder: "demo" });
    const { faults }: { faults: { code: string; message: string }[] } = JSON.parse(stdout);
    expect(faults).toMatchObject([
      { code: "unknown filter", message: expect.stringContaining('did you mean "fine filter"?') },
    ]);
    expect({ stderr, code }).toEqual({ stderr: "", code: 2 });
  });
});

test("thirstline card exits 4 where there is nothing to change, and 2 where the file is at fault", () => {
  const bare = `format: thirstline/1
name: bare
fuel: { kind: diesel, grade: winter, temperature: 15 degC }
place: { altitude: 0 m }
demand: { burn: 20 L/h, return: 30 L/h }
tank: { full depth: 0.5 m, low depth: 0.1 m, vent: open }
suction: [line: { length: 3 m, bore: 10 mm, surface: rubber hose }]
pump: { kind: fixed, flow: 120 L/h, relief: 60 kPa, relief to: inlet }
`;
  const { stdout, code } = thirstline(["card", "-"], { folder: "files", input: bare });
  expect(stdout).toContain("The file has no filter or screen: there is nothing to change.");
  expect(code).toBe(4);
  expect(thirstline(["card", "faulty.yaml"], { folder: "files" }).code).toBe(2);
});
