import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { keptText } from "./keptText.js";
import { type Setting, thirstline } from "./thirstline.js";

const refresh = process.env.REFRESH_EXPECTED === "1";

/** A command line whose whole outcome is kept. */
export interface Transcript {
  /** name of the kept file, without its ending */
  readonly name: string;
  readonly folder: Setting["folder"];
  readonly args: readonly string[];
  /** what it reads from standard input */
  readonly input?: string;
}

/** How outcomes are kept. */
export interface Keeping {
  /** folder beside the tests */
  readonly folder: string;
  readonly transcripts: readonly Transcript[];
  /** names of outcomes that need not fit 80 columns */
  readonly wide?: RegExp;
}

/** Path of a kept outcome's folder, with a slash at its end. */
export const keptIn = (folder: string): string => fileURLToPath(new URL(`./${folder}/`, import.meta.url));

function outcome({ args, folder, input = "" }: Transcript): string {
  return keptText(args, thirstline(args, { folder, input }));
}

/**
 * Tests that every command line does what is kept of it, and that what is kept belongs to one and fits 80 columns. With
 * REFRESH_EXPECTED=1 they are written anew instead.
 */
export function testKeptOutcomes({ folder, transcripts, wide }: Keeping): void {
  const kept = keptIn(folder);
  if (refresh) {
    test.each(transcripts)("$name is written anew, to be read line by line before it is taken in", (one) => {
      mkdirSync(kept, { recursive: true });
      writeFileSync(`${kept}${one.name}.txt`, outcome(one));
      throw new Error("written; run again without REFRESH_EXPECTED to compare"); // a run that writes must not pass
    });
  } else {
    test.each(transcripts)("thirstline does what is kept: $name", (one) => {
      expect(outcome(one)).toBe(readFileSync(`${kept}${one.name}.txt`, "utf8"));
    });
  }

  test("every kept outcome belongs to a command line, and fits 80 columns", () => {
    // What else lies there is kept by other tests.
    const names = readdirSync(kept).filter((name) => name.endsWith(".txt"));
    expect(names.sort()).toEqual(transcripts.map(({ name }) => `${name}.txt`).sort());
    const tooWide = names
      .filter((name) => !wide?.test(name))
      .flatMap((name) => readFileSync(`${kept}${name}`, "utf8").split("--- standard error")[0]?.split("\n") ?? [])
      .filter((line) => [...line].length > 80 && !line.startsWith("$ "));
    expect(tooWide).toEqual([]);
  });
}
