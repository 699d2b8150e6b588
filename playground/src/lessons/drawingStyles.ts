import { css } from "lit";

/** How a lesson's own drawings are inked: as the descent is. */
export const drawingStyles = css`
  :host { display: block; }
  svg { display: block; overflow: visible; }
  p { margin: 0 0 6px; font-size: 0.86rem; color: var(--soft); }
  .wash { fill: var(--wash); opacity: 0.55; }
  .line { fill: none; stroke: var(--ink); stroke-width: 3; stroke-linejoin: round; }
  .other { fill: none; stroke: var(--ink); stroke-width: 2; stroke-dasharray: 7 5; }
  .tick { stroke: var(--rule); stroke-width: 1; }
  .limit { stroke: var(--limit); stroke-width: 2.5; }
  .clean-limit { stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 8 5; }
  .point { fill: var(--fuel); stroke: var(--ink); stroke-width: 2; }
  .drop { stroke: var(--edge); stroke-width: 1; stroke-dasharray: 2 4; }
  text { font: 13px var(--face); fill: var(--soft); font-variant-numeric: tabular-nums; paint-order: stroke; stroke: var(--paper);
    stroke-width: 4; stroke-linejoin: round; }
  text.ink { fill: var(--ink); font-weight: 600; }
  text.limits { fill: var(--limit); }
`;
