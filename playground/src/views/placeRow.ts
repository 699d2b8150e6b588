import { css, html, nothing, type TemplateResult } from "lit";

/** A place within a view. */
export interface Place {
  /** as the address has it, behind the view's name */
  readonly id: string;
  readonly words: string;
}

/** How a row of places looks. */
export const placeRowStyles = css`
  nav { display: flex; flex-wrap: wrap; gap: 0 28px; margin: 18px 0 8px; }
  nav a { display: inline-flex; align-items: center; min-height: 44px; font-size: 1.15rem; color: var(--soft); text-decoration: none; }
  nav a:hover { color: var(--ink); text-decoration: underline; }
  nav a[aria-current] { color: var(--ink); font-weight: 700; text-decoration: underline; text-decoration-thickness: 3px; text-decoration-color: var(--fuel); text-underline-offset: 6px; }
  .machine { color: var(--soft); }
  .machine b { color: var(--ink); }
`;

/** The row that leads to a view's places. */
export function placeRow(name: string, view: string, places: readonly Place[], now: string): TemplateResult {
  return html`<nav class="no-print" aria-label=${name}>${places.map(
    ({ id, words }) => html`<a href=${`#${view}/${id}`} aria-current=${id === now ? "page" : nothing}>${words}</a>`,
  )}</nav>`;
}

/** Which machine the view is about. */
export function machineLine(name: string): TemplateResult {
  return html`For <b>${name}</b>, as it is on <a href="#sheet">the sheet</a>.`;
}
