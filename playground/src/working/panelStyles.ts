import { css } from "lit";

/** From this width on the panel stands beside the sheet, which makes room for it; else it lies along the bottom. */
export const panelStyles = css`
  dialog { position: fixed; inset: auto 0 0 0; width: auto; max-width: none; height: auto; max-height: 58vh; max-height: 58dvh; margin: 0; padding: 0; border: 0;
    border-top: 2px solid var(--ink); background: var(--raised); color: var(--ink); z-index: 5; display: flex; flex-direction: column; box-sizing: border-box; }
  .head { display: flex; gap: 8px 12px; align-items: center; padding: 6px 10px 6px 16px; border-bottom: 1px solid var(--rule); }
  h2 { margin: 0; flex: 1 1 auto; font-size: 0.95rem; }
  .button { display: inline-flex; align-items: center; text-decoration: none; }
  .inside { overflow-y: auto; padding: 12px 16px 20px; min-height: 7rem; overscroll-behavior: contain; }
  .inside:focus-visible { outline: 3px solid var(--cold); outline-offset: -3px; }
  .about { margin: 0 0 8px; padding-left: 10px; border-left: 3px solid var(--fuel); font-size: 0.95rem; line-height: 1.35; overflow-wrap: anywhere; }
  .proof { border-top: 1px solid var(--rule); margin-top: 12px; padding-top: 8px; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  @media (min-width: 1100px) {
    dialog { inset: 0 0 0 auto; width: var(--panel-width, 29rem); max-height: none; height: 100%; border-top: 0; border-left: 2px solid var(--ink); }
    .head { padding: 12px 12px 8px 20px; }
    .inside { padding: 14px 20px 28px; flex: 1; }
  }
  @media print { dialog { display: none; } }
`;
