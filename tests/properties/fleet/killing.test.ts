import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readLog } from "@thirstline/spec";
import { expect, test } from "vitest";

const script = fileURLToPath(new URL("../../support/appendForever.mjs", import.meta.url));
// 1,000 kills take some minutes; THIRSTLINE_LONG=1 asks for them.
const KILLS = process.env.THIRSTLINE_LONG === "1" ? 1000 : 25;
const HEAD = "machine,date,hours (h),event\n";

/** The next number of a fixed sequence, 0 to 1: moments to kill at, the same ones in every run. */
function moments(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0; // Numerical Recipes, section 7.1, from memory
    return state / 2 ** 32;
  };
}

/**
 * Runs a writer and kills it some time, ms, after it said so many records were in; the number of the last it said so of, -1
 * for none.
 */
function killedAfter(path: string, writer: string, records: number, delay: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, path, writer], { stdio: ["ignore", "pipe", "inherit"] });
    let said: string[] = [];
    let text = "";
    child.stdout.on("data", (piece: Buffer) => {
      text += piece.toString();
      const before = said.length;
      said = text.split("\n").slice(0, -1); // "ready", then a number for each
      if (before <= records && said.length > records) setTimeout(() => child.kill("SIGKILL"), delay);
    });
    child.on("error", reject);
    child.on("close", (code) => {
      if (code !== null) reject(new Error(`ended by itself with ${code}`));
      resolve(said.length - 2);
    });
  });
}

test(`a log whose writer is killed at any moment, ${KILLS} times, holds every record it was said to, whole`, {
  timeout: KILLS * 2000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), "killed-"));
  const path = join(folder, "log.csv");
  const next = moments(20261125);
  writeFileSync(path, HEAD);
  let before = HEAD;
  let [records, midway] = [0, 0];
  try {
    for (let kill = 0; kill < KILLS; kill++) {
      const least = Math.floor(next() * 4);
      const said = await killedAfter(path, `writer ${kill}`, least, next() * 15);
      expect(said).toBeGreaterThanOrEqual(least - 1);
      if (existsSync(`${path}.lock`)) midway += 1;
      // The lock it held would grow stale by itself; waiting for that 25 times proves nothing more.
      rmSync(`${path}.lock`, { recursive: true, force: true });
      const text = readFileSync(path, "utf8");
      expect(text.startsWith(before)).toBe(true);
      const { entries, faults, sound } = readLog(text.slice(0, HEAD.length) + text.slice(before.length), {
        file: "log.csv",
      });
      expect({ faults, sound }).toEqual({ faults: [], sound: true });
      expect(text.endsWith("\n")).toBe(true);
      const hours = entries.map((entry) => Math.round((entry.hours ?? Number.NaN) / 3600));
      expect(hours).toEqual(hours.map((_, at) => at)); // from 0 on, none left out, none twice
      // What was said to be in is in; one more may be, killed before it was said.
      expect(hours.length - 1 - said === 0 || hours.length - 1 - said === 1).toBe(true);
      records += hours.length;
      before = text;
    }
    // Records were written, and it was killed in the midst of writing one.
    expect(records).toBeGreaterThan(KILLS);
    expect(midway).toBeGreaterThan(KILLS / 4);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
