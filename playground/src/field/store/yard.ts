import { LOG, type YardFile } from "../fleet/YardFile.js";
import { ChangedElsewhere, type StoreTrouble, troubleOf } from "./StoreTrouble.js";
import { openShelf, type YardState } from "./shelf.js";

/** A yard as it is kept. */
export interface KeptYard {
  readonly state: YardState;
  readonly files: readonly YardFile[];
}

/** The yard that was kept; null where there is none. */
export async function keptYard(): Promise<KeptYard | null | StoreTrouble> {
  try {
    const shelf = await openShelf();
    const reading = shelf.transaction(["yard", "files"]);
    const [state, files] = await Promise.all([
      reading.objectStore("yard").get("now"),
      reading.objectStore("files").getAll(),
    ]);
    await reading.done;
    shelf.close();
    return state === undefined ? null : { state, files };
  } catch (error) {
    return troubleOf(error);
  }
}

/** Keeps a whole yard in place of the one before; null forgets it. All of it or, where that fails, nothing. */
export async function keepYard(yard: KeptYard | null): Promise<StoreTrouble | null> {
  try {
    const shelf = await openShelf();
    const writing = shelf.transaction(["yard", "files", "before"], "readwrite");
    const files = writing.objectStore("files");
    await Promise.all([
      files.clear(),
      writing.objectStore("before").clear(),
      ...(yard === null
        ? [writing.objectStore("yard").clear()]
        : [
            writing.objectStore("yard").put(yard.state, "now"),
            ...yard.files.map((file) => files.put(file, file.path)),
          ]),
      writing.done,
    ]);
    shelf.close();
    return null;
  } catch (error) {
    return troubleOf(error);
  }
}

/**
 * Writes a changed log in one transaction, and keeps the one before. Where another window changed the yard since it was
 * read, nothing is written.
 *
 * @param state as the yard shall be; its revision follows the one it was read at
 */
export async function writeLog(log: YardFile, state: YardState): Promise<StoreTrouble | null> {
  try {
    const shelf = await openShelf();
    const writing = shelf.transaction(["yard", "files", "before"], "readwrite");
    // A transaction that is put an end to rejects; it is told by what put the end to it.
    writing.done.catch(() => undefined);
    const now = await writing.objectStore("yard").get("now");
    if (now?.revision !== state.revision - 1) {
      writing.abort();
      shelf.close();
      throw new ChangedElsewhere();
    }
    const files = writing.objectStore("files");
    const old = await files.get(LOG);
    // A log that was only saved as a file is the same, and the one before it stays.
    if (old !== undefined && old.bytes.length !== log.bytes.length) await writing.objectStore("before").put(old, "log");
    await files.put(log, LOG);
    await writing.objectStore("yard").put(state, "now");
    await writing.done;
    shelf.close();
    return null;
  } catch (error) {
    return troubleOf(error);
  }
}

/** The log as it was before the last entry; null where there is none. */
export async function logBefore(): Promise<YardFile | null> {
  try {
    const shelf = await openShelf();
    const before = await shelf.get("before", "log");
    shelf.close();
    return before ?? null;
  } catch {
    return null;
  }
}
