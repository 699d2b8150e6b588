import { safetyWords } from "@thirstline/study";
import { wrap } from "./wrap.js";

/** What stands once under all that was answered. */
export function closingLines(): string[] {
  return safetyWords.flatMap((words) => wrap(words));
}
