import { open, readFile, rename, rm, stat } from "node:fs/promises";
import { setTimeout } from "node:timers/promises";
import lockfile from "proper-lockfile";
import type { LogFiles } from "./LogFiles.js";

/** A lock not renewed for so long was left by a process that is gone, ms. */
const STALE = 10_000;
/** How often another writer is waited for, and how long each time, ms: some 5 s in all. */
const TRIES = 50;
const PAUSE = 100;
/** What a system says that cannot wait for a folder; there nothing more can be done. */
const NO_FOLDER_SYNC: ReadonlySet<string | undefined> = new Set(["EINVAL", "EISDIR", "EPERM", "ENOTSUP"]);

/** The process's own disk. */
export const diskFiles: LogFiles = {
  read: (path) => readFile(path).catch(absent),
  write: async (path, bytes, like) => {
    const rights = await stat(like).then(({ mode }) => mode & 0o777, absent);
    const file = await open(path, "w", rights ?? 0o666);
    try {
      await file.writeFile(bytes);
      if (rights !== null) await file.chmod(rights);
      await file.sync();
    } finally {
      await file.close();
    }
  },
  rename,
  remove: (path) => rm(path, { force: true }),
  syncFolder: async (path) => {
    try {
      const folder = await open(path, "r");
      await folder.sync().finally(() => folder.close());
    } catch (error) {
      if (!NO_FOLDER_SYNC.has((error as NodeJS.ErrnoException).code)) throw error;
    }
  },
  lock: async (path) => {
    let held = true;
    const release = await patiently(() =>
      lockfile.lock(path, {
        realpath: false, // a log that is begun is not there yet
        stale: STALE,
        onCompromised: () => {
          held = false;
        },
      }),
    );
    return { isHeld: () => held, release };
  },
};

function absent(error: NodeJS.ErrnoException): null {
  if (error.code !== "ENOENT") throw error;
  return null;
}

/** Tries again while someone else holds the lock; any other failure stays one. */
async function patiently<Result>(lock: () => Promise<Result>): Promise<Result> {
  for (let tries = 1; ; tries++) {
    try {
      return await lock();
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "ELOCKED" || tries >= TRIES) throw error;
    }
    await setTimeout(PAUSE * (0.5 + Math.random())); // not in step with whoever waits too
  }
}
