import type { OptionName } from "./options.js";

/** What was asked, before any value is understood. */
export interface Request {
  /** file names as given; "-" is standard input */
  readonly files: readonly string[];
  /** every value of every option given; an option without a value has an empty list */
  readonly given: ReadonlyMap<OptionName, readonly string[]>;
}
