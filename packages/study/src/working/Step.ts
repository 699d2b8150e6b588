import type { QuantityKind } from "../say/units.js";
import type { Formula } from "./Formula.js";

/** A place in the system, such as ["suction", 3, "branches", 0, 0], so that a drawing can show it. */
export type PartPath = readonly (string | number)[];

/** A figure with where it comes from: one step of a working, which leads to the steps before it. */
export interface Step {
  /** what it is called */
  readonly name: string;
  /** SI */
  readonly value: number;
  /** SI unit, "1" for a pure number */
  readonly unit: string;
  /** how people read it; null for what is shown in SI */
  readonly kind: QuantityKind | null;
  readonly origin: Origin;
  /** the part it belongs to */
  readonly part?: PartPath;
  /** size of the figures core takes it as a difference of, where those are far larger than itself */
  readonly scale?: number;
}

/** Where a figure comes from. */
export type Origin =
  /** worked out by a formula, from steps of their own */
  | { readonly by: "formula"; readonly formula: Formula; readonly inputs: readonly Input[] }
  /** stated in the system file, at this place of it */
  | { readonly by: "file"; readonly path: string }
  /** asked for, in place of what the file says */
  | { readonly by: "asked"; readonly option: string }
  /** published, or exact by definition */
  | { readonly by: "source"; readonly source: string }
  /** counted or chosen from what the file says, in these words */
  | { readonly by: "words"; readonly words: string; readonly from: readonly Step[] }
  /** found by a search, a numeric solution or an integration: what proves it is what it must satisfy */
  | { readonly by: "search"; readonly words: string; readonly checks: readonly Check[] }
  /** read off many draws of what is uncertain */
  | {
      readonly by: "draws";
      readonly words: string;
      readonly varying: readonly string[];
      readonly from: readonly Step[];
    };

/** What was put in for a letter of a formula: one step, or several where the formula goes over all of them. */
export interface Input {
  readonly letter: string;
  readonly steps: readonly Step[];
  /** whether the letter stands for a list, even of one */
  readonly list: boolean;
}

/** What a figure found by a search must satisfy, with both sides worked out at that figure. */
export interface Check {
  /** such as "at this flow the vacuum is the limit" */
  readonly words: string;
  readonly left: Step;
  readonly relation: "=" | "<=" | ">=";
  readonly right: Step;
  /** size of the figures the sides are differences of, in their unit, where the sides themselves may be nothing */
  readonly scale?: number;
  /** relative agreement to expect of an independent sum over time; a billionth when left out */
  readonly within?: number;
}

/** How one figure of an answer was reached. */
export interface Working {
  readonly figure: string;
  readonly system: string;
  readonly step: Step;
}
