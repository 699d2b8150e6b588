import { createHash } from "node:crypto";
import { dirname } from "node:path";
import { logWith } from "@thirstline/spec";
import type { LogFiles } from "./LogFiles.js";

/** What came of it: written, or refused with the old log as it was. `doubt` is said of what is written all the same. */
export type Appended = { readonly written: true; readonly doubt: string | null } | { readonly refused: string };

/**
 * Puts lines after a log's last. At every moment, whatever fails and wherever the process dies, the log is on the disk as it
 * was or as it shall be: the new one is written beside it, made sure of, and put in its place all at once. The one before
 * is kept as `.bak`.
 *
 * Writers of ours keep each other out with a lock. Another program knows of no lock: where it changed the log in between,
 * nothing is written.
 *
 * @param path of the log
 * @param linesAfter the lines to put after what the log holds now, or why not; told under the lock
 */
export async function appendToLog(
  path: string,
  files: LogFiles,
  linesAfter: (log: Uint8Array) => readonly string[] | { readonly refused: string },
): Promise<Appended> {
  const fresh = `${path}.new`;
  try {
    const lock = await files.lock(path);
    try {
      const old = await files.read(path);
      const lines = linesAfter(old ?? new Uint8Array());
      if ("refused" in lines) return lines;
      await files.write(fresh, logWith(old ?? new Uint8Array(), lines), path);
      if (old !== null) await keepBackup(path, old, files);
      if (!lock.isHeld()) return { refused: "the lock on it was lost; nothing was written, try again" };
      if (fingerprint(await files.read(path)) !== fingerprint(old)) {
        return { refused: "another program changed it in between; nothing was written, try again" };
      }
      await files.rename(fresh, path);
      return { written: true, doubt: await doubtOf(dirname(path), files) };
    } finally {
      // What is left lying about does no harm: it is written over next time, and a lock grows stale.
      await files.remove(fresh).catch(() => undefined);
      await lock.release().catch(() => undefined);
    }
  } catch (error) {
    return { refused: reasonOf(error as NodeJS.ErrnoException) };
  }
}

async function keepBackup(path: string, old: Uint8Array, files: LogFiles): Promise<void> {
  const fresh = `${path}.bak.new`;
  try {
    await files.write(fresh, old, path);
    await files.rename(fresh, `${path}.bak`);
  } finally {
    await files.remove(fresh).catch(() => undefined);
  }
}

function fingerprint(bytes: Uint8Array | null): string {
  return bytes === null ? "none" : createHash("sha256").update(bytes).digest("hex");
}

async function doubtOf(folder: string, files: LogFiles): Promise<string | null> {
  try {
    await files.syncFolder(folder);
    return null;
  } catch (error) {
    return `written, but it may not outlast a power cut: ${(error as Error).message}`;
  }
}

/** Why nothing was written, in plain words. */
function reasonOf({ code, message }: NodeJS.ErrnoException): string {
  switch (code) {
    case "ENOSPC":
    case "EDQUOT":
      return "the disk is full; nothing was written";
    case "EROFS":
      return "the folder is read-only; nothing was written";
    case "EACCES":
    case "EPERM":
      return "permission denied; nothing was written";
    case "ELOCKED":
      return "someone else is writing to it; nothing was written, try again";
    default:
      return `nothing was written: ${message}`;
  }
}
