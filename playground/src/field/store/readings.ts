import type { KeptReadings } from "../gauge/KeptReadings.js";
import { type StoreTrouble, troubleOf } from "./StoreTrouble.js";
import { openShelf } from "./shelf.js";

/** The readings kept of a machine, by its name; null where there are none. */
export async function keptReadings(machine: string): Promise<KeptReadings | null | StoreTrouble> {
  try {
    const shelf = await openShelf();
    const kept = await shelf.get("readings", machine);
    shelf.close();
    return kept ?? null;
  } catch (error) {
    return troubleOf(error);
  }
}

/** Keeps a machine's readings; null forgets them. */
export async function keepReadings(machine: string, kept: KeptReadings | null): Promise<StoreTrouble | null> {
  try {
    const shelf = await openShelf();
    if (kept === null) await shelf.delete("readings", machine);
    else await shelf.put("readings", kept, machine);
    shelf.close();
    return null;
  } catch (error) {
    return troubleOf(error);
  }
}
