import fc from "fast-check";
import { expect, test } from "vitest";
import { appendToLog } from "../../../packages/cli/src/log/appendToLog.js";
import type { LogFiles } from "../../../packages/cli/src/log/LogFiles.js";

const LOG = "yard/log.csv";
const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

/** A disk in memory, every step of which waits for its turn, and which may be told to fail at a step or to stop there. */
class MemoryDisk implements LogFiles {
  readonly files = new Map<string, Uint8Array>();
  steps = 0;
  failAt = Infinity;
  failure: Error & { code?: string } = new Error("failed");
  private locked = false;
  private readonly turn: () => Promise<void>;

  constructor(turn: () => Promise<void> = () => Promise.resolve()) {
    this.turn = turn;
  }

  private async step(): Promise<void> {
    await this.turn();
    this.steps += 1;
    if (this.steps === this.failAt) throw this.failure;
  }

  read = async (path: string) => {
    await this.step();
    return this.files.get(path) ?? null;
  };

  write = async (path: string, bytes: Uint8Array) => {
    this.files.set(path, bytes.slice(0, bytes.length >> 1)); // half of it is there when it fails
    await this.step();
    this.files.set(path, bytes);
  };

  rename = async (from: string, to: string) => {
    await this.step();
    this.files.set(to, this.files.get(from) ?? new Uint8Array());
    this.files.delete(from);
  };

  remove = async (path: string) => {
    this.files.delete(path);
  };

  syncFolder = async () => {
    await this.step();
  };

  lock = async () => {
    while (this.locked) await this.turn();
    this.locked = true;
    return {
      isHeld: () => true,
      release: async () => {
        this.locked = false;
      },
    };
  };
}

test("appendToLog(path, files, lines): two writers in any order of their steps lose no record and tear none", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 12 }),
      fc.scheduler(),
      async (one, other, s) => {
        const disk = new MemoryDisk(() => s.schedule(Promise.resolve()));
        disk.files.set(LOG, bytesOf("machine,date\n"));
        const writer = async (name: string, count: number) => {
          for (let at = 0; at < count; at++) {
            const done = await appendToLog(LOG, disk, () => [`${name},${at}`]);
            expect(done).toEqual({ written: true, doubt: null });
          }
        };
        const both = Promise.all([writer("one", one), writer("other", other)]);
        await s.waitFor(both);
        const lines = textOf(disk.files.get(LOG)).split("\n");
        expect(lines.shift()).toBe("machine,date");
        expect(lines.pop()).toBe("");
        for (const [name, count] of [
          ["one", one],
          ["other", other],
        ] as const) {
          const own = lines.filter((line) => line.startsWith(`${name},`));
          expect(own).toEqual(Array.from({ length: count }, (_, at) => `${name},${at}`)); // each once, in its own order
        }
        expect(lines).toHaveLength(one + other);
      },
    ),
    { numRuns: 60 },
  );
});

const OLD = "machine,date\nHeron,2026-11-24\n";
const failures = [
  ["ENOSPC", "the disk is full; nothing was written"],
  ["EROFS", "the folder is read-only; nothing was written"],
  ["EACCES", "permission denied; nothing was written"],
  ["ELOCKED", "someone else is writing to it; nothing was written, try again"],
  ["EIO", "nothing was written: EIO"],
] as const;

test.each(failures)(
  "appendToLog(path, files, lines) leaves the log as it was when a step fails with %s",
  async (code, said) => {
    const whole = new MemoryDisk();
    whole.files.set(LOG, bytesOf(OLD));
    await appendToLog(LOG, whole, () => ["Heron,2026-11-25"]);
    expect(whole.steps).toBe(7); // read, write, back up (write, rename), read, rename, then the folder
    for (let failAt = 1; failAt <= whole.steps; failAt++) {
      const disk = new MemoryDisk();
      disk.files.set(LOG, bytesOf(OLD));
      disk.failAt = failAt;
      disk.failure = Object.assign(new Error(code), { code });
      const done = await appendToLog(LOG, disk, () => ["Heron,2026-11-25"]);
      if (failAt < whole.steps) {
        expect(done).toEqual({ refused: said });
        expect(textOf(disk.files.get(LOG))).toBe(OLD);
        expect([...disk.files.keys()].filter((name) => name.endsWith(".new"))).toEqual([]);
      } else {
        expect(done).toEqual({ written: true, doubt: `written, but it may not outlast a power cut: ${code}` });
        expect(textOf(disk.files.get(LOG))).toBe(`${OLD}Heron,2026-11-25\n`);
      }
    }
  },
);

test("appendToLog(path, files, lines) refuses where a program without the lock changed the log in between", async () => {
  const disk = new MemoryDisk();
  disk.files.set(LOG, bytesOf(OLD));
  const done = await appendToLog(LOG, disk, () => {
    disk.files.set(LOG, bytesOf(`${OLD}by hand,2026-11-25\n`));
    return ["Heron,2026-11-25"];
  });
  expect(done).toEqual({ refused: "another program changed it in between; nothing was written, try again" });
  expect(textOf(disk.files.get(LOG))).toBe(`${OLD}by hand,2026-11-25\n`);
});

test("appendToLog(path, files, lines) refuses when its lock was lost while it stood still", async () => {
  const disk = new MemoryDisk();
  disk.files.set(LOG, bytesOf(OLD));
  const lost = { ...disk, lock: async () => ({ isHeld: () => false, release: async () => undefined }) };
  const done = await appendToLog(LOG, lost, () => ["Heron,2026-11-25"]);
  expect(done).toEqual({ refused: "the lock on it was lost; nothing was written, try again" });
  expect(textOf(disk.files.get(LOG))).toBe(OLD);
});

test("appendToLog(path, files, lines) keeps the log before as .bak, every byte of the old and its line ends", async () => {
  const disk = new MemoryDisk();
  const old = "\ufeffmachine,date\r\nHeron,2026-11-24"; // as a spreadsheet leaves it, the last line not ended
  disk.files.set(LOG, bytesOf(old));
  await appendToLog(LOG, disk, () => ["Heron,2026-11-25"]);
  expect(disk.files.get(LOG)).toEqual(bytesOf(`${old}\r\nHeron,2026-11-25\r\n`));
  expect(disk.files.get(`${LOG}.bak`)).toEqual(bytesOf(old));
  expect([...disk.files.keys()]).toEqual([LOG, `${LOG}.bak`]);
});

test("appendToLog(path, files, lines) begins a log that is not there yet", async () => {
  const disk = new MemoryDisk();
  expect(await appendToLog(LOG, disk, (log) => [`${log.length} bytes`])).toEqual({ written: true, doubt: null });
  expect(textOf(disk.files.get(LOG))).toBe("0 bytes\n");
  expect([...disk.files.keys()]).toEqual([LOG]);
});
