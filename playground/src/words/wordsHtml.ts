import type { Words } from "@thirstline/study";
import { html, type TemplateResult } from "lit";

/** A sentence with its figures set apart. */
export function wordsHtml(words: Words): TemplateResult {
  return html`${words.map((piece) => (typeof piece === "string" ? piece : html`<b class="figure">${piece.text}</b>`))}`;
}
