import type { Reading } from "../leaf.js";

/** A reading that failed. */
export function fault(code: string, message: string): Reading<never> {
  return { fault: { code, message } };
}
