import type { System } from "@thirstline/spec/system";

const KEY = "thirstline/1 opened";

/** A file as it was opened: its text, to give back as it was while nothing is changed. */
export interface Opened {
  readonly file: string;
  readonly text: string;
  /** what was read from it, as JSON */
  readonly read: string;
}

/** What is remembered of a file that was opened, also over a reload where the browser keeps anything. */
export function remember(file: string, text: string, system: System): Opened {
  const opened = { file, text, read: JSON.stringify(system) };
  try {
    localStorage.setItem(KEY, JSON.stringify(opened));
  } catch {
    // Full or refused: it is remembered until the page is left.
  }
  return opened;
}

/** The file that was opened last; null where none is remembered. */
export function remembered(): Opened | null {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null") as Opened | null;
    return typeof found?.text === "string" && typeof found.read === "string" ? found : null;
  } catch {
    return null;
  }
}

/** Whether a system is still the one that was read from a file. */
export function isUnchanged({ read }: Opened, system: System): boolean {
  return JSON.stringify(system) === read;
}

/** Whether a changed system came of a file, by its name, that has comments a written one would not. */
export function losesComments(opened: Opened, system: System): boolean {
  const same = (JSON.parse(opened.read) as System).name === system.name;
  return same && !isUnchanged(opened, system) && /(^|\s)#/m.test(opened.text);
}
