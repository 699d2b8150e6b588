import type { Formula } from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";
import { checkedAgainst } from "./checkedAgainst.js";
import { sentenceOf } from "./originWords.js";

const ARITHMETIC =
  "By working it out anew, units and all, against the answers; no table of figures from outside checks it by itself.";

/** Where a formula holds, how far it may be wrong, where it comes from, and what it was checked against. */
export function formulaNotes(formula: Formula): TemplateResult {
  const checks = checkedAgainst(formula);
  return html`<dl class="notes">
    <div><dt>Holds for</dt><dd>${sentenceOf(formula.holds)}</dd></div>
    <div><dt>Accuracy</dt><dd>${sentenceOf(formula.accuracy)}</dd></div>
    <div><dt>Source</dt><dd>${sentenceOf(formula.source)}</dd></div>
    <div><dt>Checked</dt><dd>${
      checks.length === 0 ? ARITHMETIC : html`<ul>${checks.map((one) => html`<li>${one}</li>`)}</ul>`
    }</dd></div></dl>`;
}
