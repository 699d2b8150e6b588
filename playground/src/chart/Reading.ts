import { html, type TemplateResult } from "lit";
import type { LineLook } from "./ChartData.js";

/** One line of what a chart reads, which is its legend too. */
export interface Reading {
  /** how its line is drawn; null for what is no line */
  readonly look: LineLook | null;
  readonly label: string;
  /** with its unit; a live figure where it has a working */
  readonly value: string | TemplateResult;
}

/** A reading that is known between two ends: in plain text where neither is live. */
export function readingBetween(low: Reading["value"], high: Reading["value"]): Reading["value"] {
  return typeof low === "string" && typeof high === "string" ? `${low} to ${high}` : html`${low} to ${high}`;
}
