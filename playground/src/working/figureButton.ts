import type { Leaf } from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";
import { WhyEvent } from "./WhyEvent.js";

/** A figure that opens its working, as it stands in a sentence or a table. */
export function figureButton(text: string, leaf: Leaf): TemplateResult {
  const onClick = (event: Event) => event.currentTarget?.dispatchEvent(new WhyEvent(leaf));
  return html`<button type="button" class="figure why" title="How this was reached" @click=${onClick}>${text}</button>`;
}

/** The same for a figure of the system as it is asked for at its own temperature and demand. */
export function ownFigure(text: string, figure: string): TemplateResult {
  return figureButton(text, { figure, asked: {} });
}
