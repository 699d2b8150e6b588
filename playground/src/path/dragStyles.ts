import { css } from "lit";

/** How a part that is dragged, and the places it may go, are drawn. */
export const dragStyles = css`
  .grip { fill: none; pointer-events: all; cursor: grab; }
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
