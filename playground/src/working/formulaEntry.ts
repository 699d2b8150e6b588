import { capital } from "@thirstline/study";
import {
  type Formula,
  type FormulaSymbol,
  formulaTex,
  letterTex,
  shownFormula,
  shownLetter,
} from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";
import { formulaLink } from "./formulaLink.js";
import { formulaNotes } from "./formulaNotes.js";
import { typeset } from "./typeset.js";
import { unitWords } from "./valueText.js";

/** A formula with more letters than this takes the whole width of a sheet of paper. */
const WIDE = 70;

/** One formula of the reference: equation, letters, range, accuracy, source and what checks it. */
export function formulaEntry(formula: Formula, here: boolean): TemplateResult {
  const { id, name, result, symbols } = formula;
  const look = `${here ? "here" : ""} ${shownFormula(formula).length > WIDE ? "wide" : ""}`;
  return html`<article id=${id} class=${look}><h4 tabindex="-1">${capital(name)} <a class="no-print link" href=${formulaLink(id)} aria-label=${`Link to ${name}`}>#</a></h4>
    <div class="maths" tabindex="0" role="group" aria-label=${`${shownLetter(result.letter)} = ${shownFormula(formula)}`}>${typeset(formulaTex(formula), true)}</div>
    <table><caption class="unseen">Letters of ${name}</caption><thead class="unseen"><tr><th scope="col">Letter</th><th scope="col">Meaning</th><th scope="col">Unit</th></tr></thead>
      <tbody>${[result, ...Object.values<FormulaSymbol>(symbols)].map(
        ({ letter, meaning, unit }) => html`<tr><td class="letter">${typeset(letterTex(letter))}</td><td>${meaning}</td>
          <td class="unit">${unit === "1" ? "pure number" : unitWords(unit)}</td></tr>`,
      )}</tbody></table>
    ${formulaNotes(formula)}</article>`;
}
