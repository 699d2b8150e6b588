import type { System } from "@thirstline/spec/system";
import { assumedWords } from "../trial/assumedWords.js";

const MARK = "# Assumed, not tested: ";

/** A file's text with a comment on top for everything in it that is assumed. */
export function withNotes(text: string, system: System): string {
  return [...assumedWords(system, "metric").map((words) => `${MARK}${words}.`), text].join("\n");
}

/** What a file says on top of itself that it assumes. */
export function notesIn(text: string): string[] {
  const lines = text.split(/\r\n?|\n/);
  return lines.filter((line) => line.startsWith(MARK)).map((line) => line.slice(MARK.length));
}
