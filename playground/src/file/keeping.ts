import type { System } from "@thirstline/spec/system";

const KEY = "thirstline/1 sheet";

/** What was on the sheet when it was last changed. */
export interface Kept {
  readonly system: System;
  /** ms since 1970 */
  readonly at: number;
}

/** Keeps what is on the sheet in this browser; false where it keeps nothing, being full or a private window. */
export function keep(system: System): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify({ system, at: Date.now() } satisfies Kept));
    return true;
  } catch {
    return false;
  }
}

/** What was kept; null when there is nothing, or nothing that can be read. Whether it can be answered the caller sees. */
export function kept(): Kept | null {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null") as Kept | null;
    return found?.system?.format === "thirstline/1" ? found : null;
  } catch {
    return null;
  }
}

/** Forgets what was kept. */
export function forget(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Nothing is kept where nothing can be.
  }
}
