import type { Leaf } from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";
import type { Subject } from "./Question.js";
import { WhyEvent } from "./WhyEvent.js";

/**
 * A figure that opens its working, as it stands in a sentence or a table.
 *
 * @param subject what it is of, where that is not the system on the sheet
 */
export function figureButton(text: string, leaf: Leaf, subject: Subject | null = null): TemplateResult {
  const onClick = (event: Event) => event.currentTarget?.dispatchEvent(new WhyEvent(leaf, subject));
  return html`<button type="button" class="figure why" title="How this was reached" @click=${onClick}>${text}</button>`;
}

/** The same for a figure of a system as it is asked for at its own temperature and demand. */
export function ownFigure(text: string, figure: string, subject: Subject | null = null): TemplateResult {
  return figureButton(text, { figure, asked: {} }, subject);
}

/** A cell of a table, live where there is a figure in it: not where it is empty or says in words that there is none. */
export function figureCell(text: string, leaf: Leaf, subject: Subject | null = null): string | TemplateResult {
  return /\d/.test(text) ? figureButton(text, leaf, subject) : text;
}
