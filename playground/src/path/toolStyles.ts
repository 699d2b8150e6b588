import { css } from "lit";

/** How the places a part may be added at, a part that is dragged and the places it may go are drawn. */
export const toolStyles = css`
  .gap { position: absolute; transform: translate(-50%, -50%); width: 24px; height: 24px; padding: 0; border: 0; background: none; cursor: pointer; border-radius: 50%; }
  .gap::before { content: ""; position: absolute; inset: 0; margin: auto; width: 14px; height: 14px; box-sizing: border-box; border-radius: 50%; background: var(--raised); border: 1.5px solid var(--edge); transition: 100ms; transition-property: width, height; }
  .gap::after { content: ""; position: absolute; inset: 0; margin: auto; width: 8px; height: 8px; background: linear-gradient(var(--soft), var(--soft)) center / 8px 1.5px no-repeat, linear-gradient(var(--soft), var(--soft)) center / 1.5px 8px no-repeat; }
  .gap:hover::before, .gap:focus-visible::before, .gap[aria-pressed="true"]::before { width: 24px; height: 24px; border-color: var(--ink); background: var(--wash); }
  @media (forced-colors: active) { .gap::after { background-image: linear-gradient(ButtonText, ButtonText), linear-gradient(ButtonText, ButtonText); forced-color-adjust: none; } }
  .gap:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; }
  @media (pointer: coarse) { .gap { width: 44px; height: 34px; } .gap::before { width: 18px; height: 18px; } }
  @media (prefers-reduced-motion: reduce) { .gap::before { transition: none; } }
  @media print { .gap { display: none; } }
  button.name[data-key^="part"] { -webkit-touch-callout: none; user-select: none; -webkit-user-select: none; }
  .dragging, .dragging * { cursor: grabbing !important; }
  .dragging .gap { visibility: hidden; }
  .spot { position: absolute; pointer-events: none; transform: translate(-50%, -50%); background: var(--fuel); border: 1.5px solid var(--paper); border-radius: 3px; opacity: 0.75; }
  .spot.tall { width: 5px; height: 22px; }
  .spot.flat { width: 22px; height: 5px; }
  .spot.over { opacity: 1; background: var(--ink); }
  .spot.tall.over { width: 8px; height: 60px; }
  .spot.flat.over { width: 60px; height: 8px; }
  .ghost { position: absolute; z-index: 3; pointer-events: none; transform: translate(-50%, calc(-100% - 18px)); background: var(--raised); color: var(--ink);
    border: 2px solid var(--ink); border-radius: 4px; padding: 2px 10px; font-size: 0.95rem; font-weight: 650; white-space: nowrap; }
  .ghost small { display: block; font-weight: 400; color: var(--soft); font-size: 0.86rem; }
  @media (forced-colors: active) { .spot { background: Highlight; border-color: Canvas; } .spot.over { background: CanvasText; } }
`;
