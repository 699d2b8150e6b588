import { html, nothing, type TemplateResult } from "lit";
import type { Dragged } from "./Dragged.js";

/** What is shown of a drag: every place the part may go, the one it would, and its name under the pointer. */
export function drawDrag(dragged: Dragged | null, upright: boolean): TemplateResult | typeof nothing {
  if (dragged === null) return nothing;
  const { spots, over, name, x, y } = dragged;
  const way = upright ? "flat" : "tall";
  return html`${spots.map(
    (spot) =>
      html`<div class=${`spot ${way}${spot === over ? " over" : ""}`} .style=${`left:${spot.x}px;top:${spot.y}px`}></div>`,
  )}
    <div class="ghost" .style=${`left:${x}px;top:${y}px`} role="status">${name}${over === null ? "" : html`<small>${over.slot.words}</small>`}</div>`;
}
