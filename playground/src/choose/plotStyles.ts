import { css } from "lit";

/** How the small drawings of this view look. */
export const plotStyles = css`
  svg { display: block; width: 100%; height: auto; overflow: visible; }
  svg text { font-size: 14px; fill: var(--soft); font-variant-numeric: tabular-nums; }
  .axis { stroke: var(--rule); stroke-width: 1; }
  .base { stroke: var(--ink); stroke-width: 1.5; }
  .limit { stroke: var(--limit); stroke-width: 1.5; }
  svg .limit-name { fill: var(--limit); }
  .now { fill: none; stroke: var(--ink); stroke-width: 1.75; stroke-dasharray: 7 4; }
  .then { fill: none; stroke: var(--ink); stroke-width: 3; }
  .here { stroke: var(--fuel); stroke-width: 2; }
  svg .here-name { fill: var(--ink); }
  svg .line-name { fill: var(--ink); font-weight: 650; }
`;
