import { html, type TemplateResult } from "lit";
import type { Shown } from "./View.js";

const views = new Map<string, HTMLElement>();

/** An element that is made once and put away with what was chosen in it while another view is shown. */
export function keptView(name: string, { sheet, units, place }: Shown): TemplateResult {
  const view = views.get(name) ?? document.createElement(name);
  views.set(name, view);
  return html`${Object.assign(view, { sheet, units, place })}`;
}
