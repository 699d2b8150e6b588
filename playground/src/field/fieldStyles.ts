import { css } from "lit";

/** What the places of this view have in common, besides the choosing view's own. */
export const fieldStyles = css`
  .block { margin-top: 32px; min-width: 0; }
  .lead { color: var(--soft); max-width: 62ch; margin-bottom: 12px; }
  .lead b { color: var(--ink); }
  .sentence .figure { font-weight: 720; white-space: nowrap; }
  .trouble { border-left: 4px double var(--limit); padding: 2px 0 2px 12px; margin: 12px 0; max-width: 62em; }
  .file { display: inline-flex; align-items: center; box-sizing: border-box; position: relative; }
  .file input { position: absolute; inset: 0; opacity: 0; width: 100%; height: 100%; cursor: pointer; font-size: 0; padding: 0; }
  .file:focus-within { outline: 3px solid var(--cold); outline-offset: 1px; }
  .boxes [role="alert"], .row-fault { color: var(--limit); font-size: 0.86rem; line-height: 1.35; margin: 4px 0 0; }
  input[type="date"] { font: inherit; font-size: 1rem; color: var(--ink); background: var(--raised); border: 1px solid var(--edge); border-radius: 4px;
    padding: 0 10px; height: 44px; width: 100%; min-width: 0; box-sizing: border-box; }
  input[aria-invalid="true"] { border-color: var(--limit) !important; border-width: 2px !important; }
  .tick, .boxes label.tick { display: inline-flex; gap: 10px; align-items: center; min-height: 44px; cursor: pointer; font-size: 0.95rem; color: var(--ink); }
  .tick input { accent-color: var(--fuel); width: 18px; height: 18px; margin: 0; flex: none; }
  ul.plain { list-style: none; margin: 0; padding: 0; }
`;
