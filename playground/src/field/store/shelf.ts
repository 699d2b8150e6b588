import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { YardFile } from "../fleet/YardFile.js";
import type { KeptReadings } from "../gauge/KeptReadings.js";

/** What is said of the yard's files beside the files themselves. */
export interface YardState {
  /** one more with every change, so that two pages at once notice each other */
  readonly revision: number;
  /** what the folder is called */
  readonly name: string;
  /** rows put into the log here that were not saved as a file since */
  readonly unsaved: number;
}

/** What the page keeps on the device of a machine's readings and of a yard. */
export interface Shelf extends DBSchema {
  /** by the machine's name */
  readings: { key: string; value: KeptReadings };
  /** by their path */
  files: { key: string; value: YardFile };
  yard: { key: "now"; value: YardState };
  /** the log as it was before the last change */
  before: { key: "log"; value: YardFile };
}

/** Opens the shelf; rejects where the browser keeps nothing. */
export function openShelf(): Promise<IDBPDatabase<Shelf>> {
  return openDB<Shelf>("thirstline at the machine", 1, {
    upgrade(db) {
      for (const name of ["readings", "files", "yard", "before"] as const) db.createObjectStore(name);
    },
  });
}
