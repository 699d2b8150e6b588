import { type DBSchema, openDB } from "idb";

/** The reader's own catalogue as it was opened. */
export interface KeptCatalogue {
  readonly file: string;
  readonly bytes: Uint8Array;
}

interface Shelf extends DBSchema {
  catalogue: { key: string; value: KeptCatalogue };
}

const KEY = "own";

const shelf = () =>
  openDB<Shelf>("thirstline", 1, {
    upgrade(db) {
      db.createObjectStore("catalogue");
    },
  });

/** The catalogue that was kept in this browser; null when there is none, or none can be kept. */
export async function keptCatalogue(): Promise<KeptCatalogue | null> {
  try {
    return (await (await shelf()).get("catalogue", KEY)) ?? null;
  } catch {
    return null;
  }
}

/** Keeps a catalogue in this browser; false where it keeps nothing, as in some private windows. */
export async function keepCatalogue(kept: KeptCatalogue): Promise<boolean> {
  try {
    await (await shelf()).put("catalogue", kept, KEY);
    return true;
  } catch {
    return false;
  }
}

/** Forgets what was kept. */
export async function forgetCatalogue(): Promise<void> {
  try {
    await (await shelf()).delete("catalogue", KEY);
  } catch {
    // Nothing is kept where nothing can be.
  }
}
