import { css } from "lit";
import { verdictStyles } from "../look/verdictStyles.js";

/** What the parts of the choosing view have in common. */
export const chooseStyles = css`
  ${verdictStyles}
  :host { display: block; min-width: 0; }
  .sentence { font-size: clamp(1.35rem, 0.9rem + 1.5vw, 1.95rem); line-height: 1.28; font-weight: 420; margin: 10px 0 18px; max-width: 36em; text-wrap: pretty; }
  .two { display: grid; gap: 28px 48px; align-items: start; grid-template-columns: minmax(0, 1fr); }
  /* Beside a working there is no room for two: what it is of comes first. */
  @media screen and (min-width: 1000px) { .two { grid-template-columns: var(--two, minmax(20rem, 25rem) minmax(0, 1fr)); } .two > :last-child { order: var(--answer, 0); } }
  .boxes { display: grid; gap: 12px 16px; grid-template-columns: repeat(auto-fit, minmax(min(9.5rem, 100%), 1fr)); align-items: end; }
  .boxes label { display: block; font-size: 0.86rem; color: var(--soft); }
  input[type="text"], input[type="search"], .boxes select { font: inherit; font-size: 1rem; color: var(--ink); background: var(--raised); border: 1px solid var(--edge);
    border-radius: 4px; padding: 0 10px; height: 44px; width: 100%; box-sizing: border-box; font-variant-numeric: tabular-nums; }
  input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
  fieldset + fieldset, fieldset + .boxes, .boxes + fieldset, .gap { margin-top: 20px; }
  legend { font-size: 0.95rem; font-weight: 650; color: var(--ink); margin-bottom: 4px; }
  table { border-collapse: collapse; width: 100%; font-size: 0.95rem; }
  th { text-align: left; font-weight: 650; }
  td, th { padding: 7px 12px 7px 0; border-bottom: 1px solid var(--rule); vertical-align: baseline; }
  tbody th { font-weight: 400; color: var(--soft); }
  .number { text-align: right; white-space: nowrap; }
  .scroll { overflow-x: auto; max-width: 100%; }
  .scroll:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; }
  .row { display: flex; flex-wrap: wrap; gap: 8px 12px; align-items: center; }
  .main { background: var(--ink); color: var(--paper); border-color: var(--ink); font-weight: 650; }
  .main:hover:not(:disabled) { border-color: var(--fuel-bright); box-shadow: 0 0 0 2px var(--fuel-bright); }
  .main:disabled { background: none; }
  .sentence .figure, li .figure { white-space: nowrap; }
  td button.figure.why, th button.figure.why { font-weight: inherit; padding: 5px 0; margin: -5px 0; }
  .quiet button.figure.why { font-weight: inherit; }
  .fault { color: var(--limit); font-weight: 600; }
  .unit { color: var(--soft); font-weight: 400; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  @media print {
    .no-print, button:not(.why, .head) { display: none !important; }
    .two { grid-template-columns: minmax(0, 1fr); gap: 12px; }
    .scroll { overflow: visible; }
    td, th { padding: 2px 8px 2px 0; }
  }
`;
