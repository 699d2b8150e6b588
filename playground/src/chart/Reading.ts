import type { TemplateResult } from "lit";
import type { LineLook } from "./ChartData.js";

/** One line of what a chart reads, which is its legend too. */
export interface Reading {
  /** how its line is drawn; null for what is no line */
  readonly look: LineLook | null;
  readonly label: string;
  /** with its unit; a live figure where it has a working */
  readonly value: string | TemplateResult;
}
