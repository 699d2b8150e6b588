import { css } from "lit";

/** How the map is drawn. */
export const mapStyles = css`
  :host { display: block; }
  svg { display: block; width: 100%; cursor: crosshair; touch-action: pan-y; }
  svg:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; border-radius: 4px; }
  text { font: 13px var(--face); fill: var(--soft); font-variant-numeric: tabular-nums; }
  .said { font-weight: 650; fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 5; stroke-linejoin: round; }
  .starves { fill: var(--limit); opacity: 0.26; }
  .hatch { stroke: var(--limit); stroke-width: 1.5; opacity: 0.7; }
  .perhaps { fill: var(--limit); opacity: 0.12; }
  .tight { fill: var(--wash); }
  .holds { fill: var(--raised); }
  .drop { fill: var(--cold); }
  .edge { fill: none; stroke: var(--limit); stroke-width: 2.5; }
  .clean { fill: none; stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 8 5; }
  .cold { stroke: var(--cold); stroke-width: 1.5; stroke-dasharray: 2 4; }
  .cold-text { fill: var(--cold); }
  .cross { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 3 3; }
  .duty { fill: var(--fuel-bright); stroke: var(--ink); stroke-width: 2; }
  .axis { stroke: var(--edge); }
  .quiet { font-size: 0.86rem; color: var(--soft); margin: 0 0 6px; }
`;
