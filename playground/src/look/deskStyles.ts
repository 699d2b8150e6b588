import { css } from "lit";

/** How the buttons that open, save and share stand, and what they say. */
export const deskStyles = css`
  :host { display: block; }
  .buttons { display: flex; flex-wrap: wrap; gap: 8px; }
  .button { display: inline-flex; align-items: center; box-sizing: border-box; position: relative; }
  .button input { position: absolute; inset: 0; opacity: 0; width: 100%; cursor: pointer; font-size: 0; }
  .button:focus-within { outline: 3px solid var(--cold); outline-offset: 1px; }
  .said { margin-top: 8px; max-width: 70ch; }
  .link { font: 0.86rem var(--mono); width: 100%; max-width: 46rem; min-height: 44px; box-sizing: border-box; border: 1px solid var(--edge);
    border-radius: 4px; background: var(--raised); color: var(--ink); padding: 0 10px; margin-top: 8px; }
  .drop { position: fixed; inset: 12px; z-index: 9; border: 4px dashed var(--fuel); border-radius: 12px; background: var(--paper); opacity: 0.94;
    display: grid; place-items: center; font-size: 1.6rem; pointer-events: none; }
  @media print { .buttons, .said, .drop { display: none; } }
`;
