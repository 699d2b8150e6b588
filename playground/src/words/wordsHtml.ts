import type { Figure, Words } from "@thirstline/study";
import { html, type TemplateResult } from "lit";

/** How a live figure is shown; null for one that opens nothing. */
export type FigureShown = (piece: Figure) => TemplateResult | null;

/** A sentence with its figures set apart; those that `shown` knows open their working. */
export function wordsHtml(words: Words, shown: FigureShown = () => null): TemplateResult {
  return html`${words.map((piece) =>
    typeof piece === "string" ? piece : (shown(piece) ?? html`<b class="figure">${piece.text}</b>`),
  )}`;
}
