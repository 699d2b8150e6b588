import { css } from "lit";
import { verdictStyles } from "./verdictStyles.js";

/** Buttons, lists to choose from and the like, the same in every element. */
export const controlStyles = css`
  button, select, .button { font: inherit; font-size: 0.95rem; color: var(--ink); background: var(--raised); border: 1px solid var(--edge);
    border-radius: 4px; min-height: 44px; padding: 0 14px; cursor: pointer; max-width: 100%; }
  button:hover:not(:disabled), select:hover { border-color: var(--ink); }
  button:disabled { color: var(--soft); border-style: dashed; cursor: default; }
  button:focus-visible, select:focus-visible, summary:focus-visible, a:focus-visible, [tabindex]:focus-visible {
    outline: 3px solid var(--cold); outline-offset: 1px; }
  a { color: inherit; text-underline-offset: 3px; }
  h2 { font-size: 1.15rem; line-height: 1.3; margin: 0 0 8px; font-weight: 700; }
  h3 { font-size: 0.95rem; margin: 0; font-weight: 650; }
  p { margin: 0; }
  .quiet { color: var(--soft); font-size: 0.86rem; }
  fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
  legend { padding: 0; font-size: 0.86rem; color: var(--soft); }
  .choice { display: inline-flex; border: 1px solid var(--edge); border-radius: 4px; overflow: hidden; background: var(--raised); flex-wrap: wrap; }
  .choice label { position: relative; cursor: pointer; font-size: 0.95rem; }
  .choice input { position: absolute; inset: 0; opacity: 0; margin: 0; cursor: pointer; }
  .choice span { display: flex; align-items: center; min-height: 42px; padding: 0 12px; }
  .choice label + label span { border-left: 1px solid var(--edge); }
  .choice input:checked + span { background: var(--ink); color: var(--paper); }
  .choice input:focus-visible + span { outline: 3px solid var(--cold); outline-offset: -3px; }
  details > summary { cursor: pointer; min-height: 44px; display: flex; align-items: center; font-weight: 650; gap: 8px; }
  summary::-webkit-details-marker { display: none; }
  details > summary::before { content: ""; border: 6px solid transparent; border-left: 9px solid var(--soft); border-right: 0; }
  details[open] > summary::before { transform: rotate(90deg); }
  @media (forced-colors: active) { .choice input:checked + span { background: Highlight; color: HighlightText; forced-color-adjust: none; } }
`;

/** How the sheet is laid out. */
export const sheetStyles = css`
  :host { display: block; }
  .sentence { font-size: clamp(1.35rem, 0.9rem + 1.75vw, 2.15rem); line-height: 1.28; font-weight: 420; margin: 26px 0 18px; max-width: 44em; text-wrap: pretty; }
  .sentence .figure { font-weight: 720; white-space: nowrap; }
  .assumed { border-left: 4px double var(--ink); padding: 2px 0 2px 12px; margin: -8px 0 18px; max-width: 62em; }
  ${verdictStyles}
  .verdict { margin: 20px 0 -20px; align-self: start; }
  .sheet { display: flex; flex-direction: column; }
  .sheet > * { flex: none; }
  /* What changes is painted, not what stands around it. */
  fuel-path, place-controls, .block { isolation: isolate; }
  @media screen and (max-width: 760px) {
    fuel-path, path-saves, part-editor, .refusal { order: 1; }
    place-controls { order: 2; margin-top: 28px; }
    .after { order: 3; }
    .sentence { position: sticky; top: 0; z-index: 2; background: var(--paper); border-bottom: 1px solid var(--rule);
      margin: 20px -16px 12px; padding: 8px 16px 12px; font-size: 1.22rem; max-height: 45vh; overflow: auto; }
  }
  path-saves { display: block; min-height: 44px; }
  .block { margin-top: 36px; min-width: 0; }
  .refusal { color: var(--limit); font-weight: 600; margin-top: 12px; }
  .halves { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr)); gap: 36px 48px; align-items: start; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  @media print {
    .no-print, cold-map, particle-chart, answer-figures { display: none !important; }
    .sentence { font-size: 1.6rem; margin: 8px 0 6px; max-width: none; }
    .block { margin-top: 6px; }
    .parts > summary { display: none; }
    .verdict { margin: 8px 0 -6px; }
  }
`;
