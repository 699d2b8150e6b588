import { readFileSync } from "node:fs";
import { captureOf, caughtMass, distributionFromMass, massOf } from "@thirstline/core";
import { readCatalogue, readSystem } from "@thirstline/spec";
import { check, type SizeAnswer, sizeSteps } from "@thirstline/study";
import { expect, test } from "vitest";

// kind: worked example. source: packages/study/README.md, "A sizing by hand"; equal branches: drop of n is a Q/n + b (Q/n)^2.

const readme = readFileSync(new URL("../../../packages/study/README.md", import.meta.url), "utf8");
const block = (kind: string) => new RegExp(`\`\`\`${kind}\\n([\\s\\S]*?)\`\`\``).exec(readme)?.[1] ?? "";

function bench() {
  const read = readSystem(block("yaml"), { file: "bench.yaml" });
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.system;
}

function elements(text = block("csv")) {
  const read = readCatalogue(text, { file: "bench.csv" });
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.elements;
}

function sized(parallel: number, stages: number): SizeAnswer {
  const steps = sizeSteps(bench(), elements(), { parallel, stages, keep: 1000 });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const answer = sized(4, 1);
const named = ({ stages }: SizeAnswer["arrangements"][number]) =>
  stages.map((one) => `${one.count} ${one.element}`).join();
const at = (place: number | null) => (place === null ? undefined : answer.arrangements[place]);

test("size(bench, A and B) passes the three arrangements worked out by hand, and fails the others as there", () => {
  expect(answer.arrangements.map(named)).toEqual(["4 B", "3 A", "4 A"]);
  expect(answer.candidates).toBe(8);
  expect(answer.failed.map(({ by, count }) => [by, count])).toEqual([
    ["vacuum clean", 4], // 1 A; 1, 2 and 3 B
    ["interval", 1], // 2 A
  ]);
});

test("size(bench, A and B) costs what the hand does, and ranks as the hand does", () => {
  expect(answer.arrangements.map(({ yearlyCost }) => yearlyCost)).toEqual(
    [480, 900, 1200].map((one) => expect.closeTo(one, 9)),
  );
  expect(
    [at(answer.best.cost), at(answer.best.vacuum), at(answer.best.changes)].map((one) => one && named(one)),
  ).toEqual(["4 B", "4 A", "3 A"]);
});

test("size(bench, A and B) draws the vacuum worked out by hand: the metre's head and a share of the element's drop", () => {
  const head = 830 * 9.80665;
  const vacuums = Object.fromEntries(answer.arrangements.map((one) => [named(one), one.vacuum]));
  expect(vacuums["4 B"]).toBeCloseTo(head + 24e3 / 4, 3);
  expect(vacuums["3 A"]).toBeCloseTo(head + 12e3 / 3, 3);
  expect(vacuums["4 A"]).toBeCloseTo(head + 12e3 / 4, 3);
});

test("size(bench, A and B) has 3 A last the 201 h worked out by hand, over the share that is really caught", () => {
  const hand = (3 * ((30e3 - 830 * 9.80665) / 4e3 - 1)) / (20 / 12 / 50) / (200 * 0.01); // h; g, L/h, g/L
  expect(hand).toBeCloseTo(201, 0);
  const life = answer.arrangements.find((one) => named(one) === "3 A")?.life ?? Number.NaN;
  const capture = captureOf({
    betas: [
      { size: 1e-6, beta: 1000 },
      { size: 2e-6, beta: 1000 },
    ],
  });
  const dirt = distributionFromMass({ mass: 0.01, dust: "A3 medium" });
  const share = capture.known ? caughtMass(dirt, capture.efficiency.middle) / massOf(dirt) : Number.NaN;
  expect(share).toBeGreaterThan(0.98); // practically all, as the hand takes it
  expect(life / 3600).toBeCloseTo(hand / share, 4);
  expect(readme).toContain(`it has ${(life / 3600).toFixed(0)} h`);
});

test.each([1, 2, 3, 5, 8])("%i equal elements side by side cost a Q/n + b (Q/n)^2, body and medium alike", (count) => {
  // Tested with the bench's own fuel: a 2 kPa and b 1 kPa at 100 L/h, so 3 kPa there and 8 kPa at twice the flow.
  const [two] = elements(
    "name,drop,flow,second drop,second flow,viscosity,density\nC,3 kPa,100 L/h,8 kPa,200 L/h,3 mm2/s,830 kg/m3",
  );
  const filter = two?.filter;
  if (!filter) throw new Error("no element");
  const branch = (place: number) => [{ ...filter, name: `C${place}` }];
  const suction =
    count === 1
      ? branch(0)
      : [{ part: "bank" as const, name: "bank", branches: Array.from({ length: count }, (_, place) => branch(place)) }];
  const drawn = check({ ...bench(), suction }).points[0]?.vacuum.middle ?? Number.NaN;
  const each = 2 / count; // hundreds of L/h through each
  expect(drawn).toBeCloseTo(2e3 * each + 1e3 * each * each, 4);
});
