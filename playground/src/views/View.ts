import type { UnitSystem } from "@thirstline/study";
import type { TemplateResult } from "lit";
import type { Example } from "../model/Example.js";
import type { Chosen } from "../model/Place.js";
import type { Sheet } from "../model/Sheet.js";

/** What every view is given. */
export interface Shown {
  readonly sheet: Sheet;
  readonly units: UnitSystem;
  /** demonstration systems */
  readonly examples: readonly Example[];
  /** where in the view: what follows its name and a slash in the address, or "" */
  readonly place: string;
  /** the part that is spoken of beside it; null for none */
  readonly marked: Chosen | null;
}

/** One view of the page, at its own address behind "#". */
export interface View {
  readonly id: string;
  /** as the page's row of views names it */
  readonly label: string;
  /** fetches what it needs */
  readonly load: () => Promise<unknown>;
  readonly show: (shown: Shown) => TemplateResult;
  /** whether it is apart from the sheet: no files to open and save, and its own head and cautions on paper */
  readonly apart?: boolean;
}
