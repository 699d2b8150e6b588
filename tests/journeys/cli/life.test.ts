import { describe, expect, test } from "vitest";
import { thirstline } from "./thirstline.js";

const demo = { folder: "demo" } as const;
const files = { folder: "files" } as const;

interface Figure {
  readonly value: number | null;
  readonly unit: string;
}

interface LifeJson {
  readonly verdict: string;
  readonly end: { readonly time: Figure; readonly date: string | null; readonly hourMeter: Figure } | null;
  readonly change: { readonly time: Figure; readonly date: string | null; readonly by: string } | null;
  readonly spread: {
    readonly low: Figure;
    readonly middle: Figure;
    readonly chance: Figure;
    readonly draws: Figure;
  } | null;
  readonly elements: readonly { readonly name: string; readonly soil: Figure; readonly water: Figure }[];
  readonly cleanliness: readonly { readonly place: string; readonly code: string }[];
}

function answerOf(folder: typeof demo | typeof files, ...args: string[]): LifeJson {
  const { stdout, stderr } = thirstline(["life", ...args, "--json"], folder);
  expect(stderr).toBe("");
  const { answers } = JSON.parse(stdout) as { readonly answers: readonly LifeJson[] };
  const [answer] = answers;
  if (answer === undefined) throw new Error("no answer");
  return answer;
}

test.each([
  [["heron.yaml", "--draws", "0"], demo, 0],
  [["heron-finer.yaml", "--draws", "0"], demo, 1],
  [["dewatering.yaml"], demo, 4],
  [["heron.yaml", "dewatering.yaml", "--draws", "0"], demo, 4],
  [["heron.yaml", "dewatering.yaml", "heron-finer.yaml", "--draws", "0"], demo, 1],
  [["no-interval.yaml"], files, 4],
  [["soiled.yaml", "faulty.yaml"], files, 2],
  [["none.yaml"], files, 2],
  [["spread.yaml", "--draws", "many"], files, 2],
])("thirstline life %j exits with its code", (args, folder, code) => {
  expect(thirstline(["life", ...args], folder).code).toBe(code);
});

describe("thirstline life --seed --workers", () => {
  const drawn = (...args: string[]) =>
    thirstline(["life", "lorry.yaml", "--draws", "330", ...args, "--json"], demo).stdout;

  test("gives the same to the letter however many threads draw", () => {
    const alone = drawn("--seed", "3", "--workers", "1");
    for (const workers of ["2", "3", "8"]) expect(drawn("--seed", "3", "--workers", workers)).toBe(alone);
  });

  test("gives the same again for a seed, and something else for another", () => {
    expect(drawn("--seed", "3")).toBe(drawn("--seed", "3"));
    expect(drawn("--seed", "3")).not.toBe(drawn("--seed", "4"));
  });

  test("draws 400 times when left out, and not at all for 0", () => {
    expect(answerOf(demo, "lorry.yaml").spread?.draws.value).toBe(400);
    expect(answerOf(demo, "lorry.yaml", "--draws", "0").spread).toBeNull();
  });
});

test("thirstline life shows no progress in a pipe, however long it takes", () => {
  const { stderr, stdout } = thirstline(["life", "heron.yaml", "--draws", "2000"], demo);
  expect(stderr).toBe("");
  expect(stdout).toContain("2000 draws");
});

test("thirstline life counts from the last change of the file, on the calendar and on the hour meter", () => {
  const { end, change } = answerOf(demo, "heron.yaml", "--draws", "0");
  // 250 h at 9 h a day on 300 days a year are 33.8 days after 1 March 2026; the meter stood at 11,400 h.
  expect(change).toMatchObject({ time: { value: 900_000, unit: "s" }, date: "2026-04-03", by: "manual's interval" });
  expect((end?.hourMeter.value ?? 0) - (end?.time.value ?? 0)).toBeCloseTo(11_400 * 3600, 3);
});

test("thirstline life follows an element that swells, and its water", () => {
  const { elements } = answerOf(files, "spread.yaml", "--draws", "0");
  expect(elements.find(({ name }) => name === "prefilter")?.water.value).toBeGreaterThan(0);
});

test("thirstline life shows what a mis-seated element costs the injection pump", () => {
  const codes = ["heron.yaml", "heron-misseated.yaml"].map(
    (file) => answerOf(demo, file, "--draws", "0").cleanliness.at(-1)?.code.split("/").map(Number) ?? [],
  );
  const [seated = [], leaking = []] = codes;
  expect(leaking[2]).toBeGreaterThan(seated[2] ?? Number.NaN);
  expect(leaking[1]).toBeGreaterThanOrEqual(seated[1] ?? Number.NaN);
});

test("thirstline check of a file whose spreads bear on no pressure is as of one without", () => {
  const text = thirstline(["check", "heron.yaml"], demo).stdout;
  expect(text).not.toContain("draws");
  expect(thirstline(["check", "spread.yaml", "--draws", "0"], files).stdout).not.toContain("draws");
  expect(thirstline(["check", "spread.yaml", "--draws", "100"], files).stdout).toContain("100 draws");
});
