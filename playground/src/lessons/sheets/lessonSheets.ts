import { safetyWords, type UnitSystem } from "@thirstline/study";
import { html, nothing, type TemplateResult } from "lit";
import type { Lesson, Question, Told } from "../Lesson.js";
import { of, type Words, wordsOf } from "../words.js";
import { pointOf } from "../yard/answers.js";

/** A lesson as it goes on paper. */
export interface Printed {
  readonly lesson: Lesson;
  readonly told: Told;
  /** its place among the lessons, from 1 */
  readonly number: number;
}

/** Two sheets for each lesson: those to fill in, and behind them all those with the answers. */
export function lessonSheets(all: readonly Printed[], units: UnitSystem): TemplateResult {
  return html`${all.map((one) => toFillIn(one, units))}${all.map((one) => withAnswers(one, units))}`;
}

function toFillIn(printed: Printed, units: UnitSystem): TemplateResult {
  const { situation, machine, first, second, safety = [] } = printed.told;
  return html`<div class="leaf">
    ${head(printed, "to fill in")}
    <p class="who"><span>Name</span><span>Date</span></p>
    <h3>The situation</h3>${paragraphs(situation, units)}
    <div class="drawing"><fuel-path still .system=${machine} .point=${pointOf(machine)} .units=${units}></fuel-path></div>
    <h3>Predict first</h3>${asked(first, units)}
    <h3>Another case</h3>${asked(second, units)}
    ${cautions(safety, units)}</div>`;
}

function withAnswers(printed: Printed, units: UnitSystem): TemplateResult {
  const { first, second, explanation, working, sources = [] } = printed.told;
  return html`<div class="leaf">
    ${head(printed, "answers")}
    <div class="compact">
    <h3>Predict first</h3>${answered(first, units)}
    ${drawing(printed.told, units)}
    <h3>Why</h3>${paragraphs(explanation, units)}
    <div class="working">${paragraphs(working, units)}</div>
    <h3>Another case</h3>${answered(second, units)}
    ${sources.map((words) => html`<p class="sources">${wordsOf(words, units)}</p>`)}</div></div>`;
}

function head({ lesson, number }: Printed, what: string): TemplateResult {
  return html`<div class="head"><h2>${lesson.title}</h2><p>Thirstline, lesson ${number}, ${what}</p></div>`;
}

function asked(question: Question, units: UnitSystem): TemplateResult {
  const words = html`<p class="asked">${wordsOf(question.ask, units)}</p>`;
  if (question.form === "number") {
    return html`${words}<ul class="lines"><li>${question.label}:</li><li>Because:</li></ul>`;
  }
  return html`${words}<ul class="picks">${question.choices.map(
    ({ label }) => html`<li><i></i><span>${wordsOf(label, units)}</span></li>`,
  )}</ul><ul class="lines"><li>Because:</li></ul>`;
}

function answered(question: Question, units: UnitSystem): TemplateResult {
  const shown = (words: Words) => wordsOf(words, units);
  const words = html`<p class="asked">${shown(question.ask)}</p>`;
  if (question.form === "choice") {
    const inOrder = [...question.choices].sort((one, two) => Number(two.right) - Number(one.right));
    return html`${words}<ul class="answers">${inOrder.map(
      ({ label, right, answer }) =>
        html`<li>${right ? html`<b>Right: ${shown(label)}.</b>` : html`<i>${shown(label)}</i>:`} ${shown(answer)}</li>`,
    )}</ul>`;
  }
  const { right, kind, near, because, slips } = question;
  return html`${words}<ul class="answers"><li><b>Right: ${shown([of(right, kind)])}</b>, or within ${shown([of(near, "ratio")])} of it. ${shown(because)}</li>
    ${slips.map(({ value, misses }) => html`<li>Near <i>${shown([of(value, kind)])}</i>: ${shown(misses)}</li>`)}</ul>`;
}

/** The drawing as it stands once the prediction is made; of a path only where it differs from the sheet to fill in. */
function drawing({ shows, machine }: Told, units: UnitSystem): TemplateResult | typeof nothing {
  const figure = shows.figure(shows.control.start);
  switch (figure.draws) {
    case "path":
      if (figure.system === machine) return nothing;
      return html`<div class="drawing"><fuel-path still .system=${figure.system} .point=${pointOf(figure.system)} .units=${units}></fuel-path></div>`;
    case "curve":
      return html`<div class="drawing"><lesson-curve .figure=${figure} .units=${units}></lesson-curve></div>`;
    case "particles":
      return html`<div class="drawing"><lesson-particles .figure=${figure}></lesson-particles></div>`;
  }
}

function cautions(own: readonly Words[], units: UnitSystem): TemplateResult {
  return html`<div class="safety">${paragraphs(own, units)}${safetyWords.map((words) => html`<p>${words}</p>`)}</div>`;
}

function paragraphs(all: readonly Words[], units: UnitSystem): TemplateResult[] {
  return all.map((words) => html`<p>${wordsOf(words, units)}</p>`);
}
