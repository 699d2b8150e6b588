import {
  formulaTex,
  letterTex,
  type Origin,
  type Step,
  shownFormula,
  shownLetter,
  shownWithValues,
  valuesTex,
} from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";
import { formulaLink } from "./formulaLink.js";
import { formulaNotes } from "./formulaNotes.js";
import { originWords, sentenceOf } from "./originWords.js";
import { checksList, type RowActs, rowsTable } from "./stepRows.js";
import { typeset } from "./typeset.js";
import { powersHtml, siText, valueTex } from "./valueText.js";

/** Values of a list that are typeset before the line is written as text, which wraps. */
const TYPESET = 2;

/** How a step was reached, and what it rests on. */
export function stepBody(step: Step, acts: RowActs): TemplateResult {
  const { origin } = step;
  switch (origin.by) {
    case "formula":
      return ofFormula(step, origin, acts);
    case "search":
      return html`<p>${sentenceOf(`Found by a search: ${origin.words}`)}</p>
        <h4>What proves it</h4>${checksList(origin.checks, acts)}`;
    case "draws":
      return html`<p>${sentenceOf(origin.words)}</p>
        <h4>What varies</h4><ul class="varies">${origin.varying.map((one) => html`<li>${one}</li>`)}</ul>
        ${rowsTable(plainRows(origin.from), "What it rests on", acts)}`;
    case "words":
      return html`<p>${sentenceOf(origin.words)}</p>${rowsTable(plainRows(origin.from), "What it rests on", acts)}`;
    default:
      return html`<p>${sentenceOf(originWords(step))}</p>`;
  }
}

function plainRows(steps: readonly Step[]) {
  return steps.map((step) => ({ letter: "", step }));
}

function ofFormula(step: Step, origin: Extract<Origin, { by: "formula" }>, acts: RowActs): TemplateResult {
  const { formula, inputs } = origin;
  const rows = inputs.flatMap(({ letter, steps, list }) =>
    steps.map((one, at) => ({ letter: list ? `${letter}_${at + 1}` : letter, step: one })),
  );
  return html`<p>${sentenceOf(formula.name)}</p>
    <div class="maths" tabindex="0" role="group" aria-label=${`Formula: ${shownLetter(formula.result.letter)} = ${shownFormula(formula)}`}>${typeset(formulaTex(formula), true)}</div>
    ${withValues(step, origin)}
    ${rowsTable(rows, "What was put in", acts)}
    ${formulaNotes(formula)}
    <p class="quiet"><a href=${formulaLink(formula.id)}>${formula.name}: its page among the formulas</a></p>`;
}

/** The line with values put in and what it comes to; with many terms as text, which wraps. */
function withValues(step: Step, { formula, inputs }: Extract<Origin, { by: "formula" }>): TemplateResult {
  const { letter } = formula.result;
  const most = Math.max(0, ...inputs.filter(({ list }) => list).map(({ steps }) => steps.length));
  if (most > TYPESET) {
    const terms = shownWithValues(formula, inputs, siText);
    return html`<p class="terms">${typeset(letterTex(letter))} = ${powersHtml(terms)} = <b class="came">${powersHtml(siText(step.value, step.unit))}</b></p>`;
  }
  const tex = `${letterTex(letter)} = ${valuesTex(formula, inputs, valueTex)}`;
  return html`<div class="maths" tabindex="0" role="group" aria-label="The same with values put in">${typeset(tex, true)}</div>
    <div class="maths came">${typeset(`\\phantom{${letterTex(letter)}} = ${valueTex(step.value, step.unit)}`, true)}</div>`;
}
