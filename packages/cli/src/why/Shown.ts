import type { Exit } from "../exit.js";

/** What is written, and the code it ends with. */
export interface Shown {
  readonly text: string;
  readonly code: Exit;
}
