import { html, type TemplateResult } from "lit";
import { ChooseEvent } from "../model/events.js";
import { type Chosen, keyOf } from "../model/Place.js";
import { gapsOf } from "./gapsOf.js";
import type { Layout } from "./layout.js";
import type { Sketch } from "./sketch.js";

/**
 * Small buttons on the pipe between parts, each to add one there; each asks the sheet to show its gap, or none where it is
 * shown already.
 */
export function drawGaps({ laid, upright }: Layout, { path }: Sketch, chosen: Chosen | null): TemplateResult[] {
  return gapsOf(laid).map(({ place, along, beside, words }) => {
    const gap: Chosen = { kind: "gap", place };
    const on = chosen !== null && keyOf(chosen) === keyOf(gap);
    // Down the page the path is drawn turned by a right angle.
    const [x, y] = upright ? [path.x - beside, path.y + along] : [path.x + along, path.y + beside];
    const press = ({ currentTarget }: Event) => currentTarget?.dispatchEvent(new ChooseEvent(on ? null : gap));
    return html`<button type="button" class="gap no-print" .style=${`left:${x}px;top:${y}px`} aria-label=${`Add a part ${words}`}
      title="Add a part here" aria-pressed=${on ? "true" : "false"} @click=${press}></button>`;
  });
}
