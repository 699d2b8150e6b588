import { css } from "lit";

/** How the working of a step is set. */
export const stepStyles = css`
  :host { display: block; font-size: 0.95rem; line-height: 1.45; }
  h3 { font-size: 1.15rem; line-height: 1.3; font-weight: 420; margin: 0 0 6px; overflow-wrap: anywhere; }
  h3:focus { outline: none; }
  h3:focus-visible { outline: 3px solid var(--cold); outline-offset: 3px; }
  h3 .figure { white-space: nowrap; }
  h4 { font-size: 0.95rem; font-weight: 650; margin: 12px 0 2px; }
  sup { font-size: 0.72em; line-height: 0; }
  small { font-size: 0.86rem; color: var(--soft); font-weight: 400; }
  .trail { list-style: none; display: flex; flex-wrap: wrap; margin: 0 0 6px; padding: 0; font-size: 0.86rem; color: var(--soft); }
  .trail li { display: flex; align-items: center; max-width: 100%; }
  .trail li + li::before { content: "›"; margin: 0 6px; }
  .trail button { all: unset; cursor: pointer; color: var(--ink); text-decoration: underline; text-decoration-color: var(--edge); text-underline-offset: 3px;
    min-height: 32px; display: inline-flex; align-items: center; }
  .trail button:focus-visible { outline: 3px solid var(--cold); }
  .maths { margin: 2px 0; }
  .came { font-weight: 650; }
  .terms { overflow-wrap: anywhere; margin: 6px 0; padding-left: 1.6em; text-indent: -1.6em; }
  .rows { border-collapse: collapse; width: 100%; margin: 8px 0 4px; }
  .rows td { border-top: 1px solid var(--rule); padding: 6px 12px 6px 0; vertical-align: baseline; text-align: left; overflow-wrap: anywhere; }
  .rows tr:last-child td { border-bottom: 1px solid var(--rule); }
  .rows .letter { white-space: nowrap; width: 1%; min-width: 2.2em; }
  .rows .value { text-align: right; padding-right: 0; white-space: nowrap; font-weight: 650; width: 1%; }
  .rows .value.long { white-space: normal; min-width: 7em; }
  .rows small { display: block; line-height: 1.3; }
  .rows .placed:hover td { background: var(--wash); }
  .rows .placed:focus-within td { background: var(--wash); }
  .rows .value button { padding: 8px 0 8px 8px; margin: -8px 0; }
  .checks { margin: 0; padding: 0; list-style: none; }
  .checks li { margin-top: 10px; }
  .relation { margin: -2px 0; font-weight: 650; font-size: 1.15rem; line-height: 1; text-align: right; }
  .varies { margin: 0; padding-left: 1.2em; }
  .notes { margin: 14px 0 8px; font-size: 0.86rem; }
  .notes div { display: grid; grid-template-columns: 5.4em minmax(0, 1fr); gap: 0 10px; padding: 2px 0; }
  .notes dt { color: var(--soft); }
  .notes dd { margin: 0; overflow-wrap: anywhere; }
  .notes ul { margin: 0; padding: 0; list-style: none; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
`;
