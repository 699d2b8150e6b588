import { readdirSync } from "node:fs";
import { PassThrough, Readable } from "node:stream";
import { expect, test } from "vitest";
import { parse } from "../../../packages/cli/src/args/parse.js";
import { readWhy } from "../../../packages/cli/src/args/readWhy.js";
import { openers } from "../../../packages/cli/src/commands/why.js";
import { Output } from "../../../packages/cli/src/io/Output.js";
import { findFigure } from "../../../packages/cli/src/why/findFigure.js";
import type { Opened } from "../../../packages/cli/src/why/Opened.js";
import type { Subject } from "../../../packages/cli/src/why/Subject.js";
import { FOLDERS } from "../../journeys/cli/thirstline.js";
import { filtersIn } from "./filtersIn.js";
import { LONG } from "./sampled.js";
import { systemsIn } from "./systems.js";

// What `why` lists it must also answer: whichever question its figures are of, and whatever stands before their names.

/** A question asked as the command line asks it, and what was complained of. */
async function opened(args: readonly string[]): Promise<{ readonly found: Opened | null; readonly told: string }> {
  const { request, faults } = await parse(["why", ...args]);
  expect(faults).toEqual([]);
  const why = readWhy(request);
  if ("faults" in why || why.of === null) throw new Error(`${args.join(" ")} asks nothing of another question`);
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const io = { stdin: Readable.from([]), stdout, stderr, cwd: FOLDERS.demo, columns: 80, isTerminal: false };
  const files = { ...request, files: why.files };
  const found = await openers[why.of](files, { ...io, environment: {} }, new Output(stdout), new Output(stderr));
  return { found, told: (stderr.read() as Buffer | null)?.toString() ?? "" };
}

/** Names that a list shows and that are not understood, or mean something else. */
function unanswered(subjects: readonly Subject[]): string[] {
  return subjects.flatMap((subject) =>
    subject.brief().flatMap(({ name }) => {
      const asked = subject.label === "" ? name : `${subject.label}: ${name}`;
      const meant = findFigure(subjects, asked);
      return "subject" in meant && meant.subject === subject && meant.figure === name ? [] : [asked];
    }),
  );
}

/** Figures that a list shows with a value, and that have none or another when asked for. */
function changed(subjects: readonly Subject[]): string[] {
  return subjects.flatMap((subject) =>
    subject.brief().flatMap(({ name, step }) => {
      if (step === null) return [];
      return subject.workings(name)[0]?.step.value === step.value ? [] : [`${subject.label}: ${name}`];
    }),
  );
}

const demos = systemsIn("demo");
const readings = readdirSync(`${FOLDERS.demo}/readings`).map((name) => `readings/${name}`);
const catalogue = ["--from", "elements.csv"];

const asked: readonly (readonly string[])[] = [
  ...demos.flatMap(({ name, system }) => {
    const [first] = filtersIn(system);
    return [
      ...(first === undefined
        ? []
        : [[name, "--of", "swap", "--at", first, "--with", "element P10 tall", ...catalogue]]),
      [name, "--of", "size", ...catalogue, "--stages", "1", "--parallel", "2"],
      [name, "--of", "remedy"],
      [name, "--of", "card"],
    ];
  }),
  ...readings.map((file) => ["heron.yaml", file, "--of", "gauge"]),
  ["yard", "--of", "fleet", "--on", "2026-11-25"],
];

test.each(asked.map((args) => [args.join(" "), args] as const))(
  "every figure that `why %s` lists has an answer",
  {
    timeout: 120_000,
  },
  async (_, args) => {
    const { found, told } = await opened(args);
    expect(told).toBe("");
    const subjects = found?.subjects() ?? [];
    expect(subjects.length).toBeGreaterThan(0);
    expect(unanswered(subjects)).toEqual([]);
    // Some systems can be compared a hundred ways; one of each kind shows what the others show.
    const kinds = new Map(subjects.map((one) => [one.label.replace(/ \d+$/, ""), one]));
    expect(changed(LONG ? subjects : [...kinds.values()])).toEqual([]);
  },
);

test.each([
  ["heron.yaml", "--of", "swap", "--at", "fine filter", "--with", "element P10 tall", ...catalogue],
  ["yard", "--of", "fleet", "--on", "2026-11-25"],
])(
  "every figure of one of those that `why %s %s %s` lists has an answer, those of check and life too",
  {
    timeout: 120_000,
  },
  async (...args) => {
    const { found } = await opened(args);
    const subjects = found?.subjects() ?? [];
    const one = subjects.find(({ general }) => general);
    expect(one?.list().length).toBeGreaterThan(100);
    for (const { name } of one?.list() ?? []) {
      expect(findFigure(subjects, `${one?.label}: ${name}`), name).toMatchObject({ figure: name });
    }
  },
);
