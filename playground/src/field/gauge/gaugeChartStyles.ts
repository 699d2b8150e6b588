import { css } from "lit";

/** How a gauge's chart looks: ink, a wash of it for the band, vermilion for the limit. */
export const gaugeChartStyles = css`
  :host { display: block; min-width: 0; }
  h2 { margin: 0 0 8px; }
  .choices { display: flex; flex-wrap: wrap; gap: 8px 12px; margin-bottom: 12px; }
  svg { display: block; width: 100%; height: auto; overflow: visible; }
  svg text { font-size: 14px; fill: var(--soft); font-variant-numeric: tabular-nums; paint-order: stroke; stroke: var(--paper); stroke-width: 4px; stroke-linejoin: round; }
  .axis { stroke: var(--rule); stroke-width: 1; }
  .base { stroke: var(--ink); stroke-width: 1.5; }
  .band { fill: var(--ink); fill-opacity: 0.13; }
  .course { fill: none; stroke: var(--ink); stroke-width: 2.5; stroke-linejoin: round; }
  .ahead { stroke-dasharray: 8 5; }
  .limit { stroke: var(--limit); stroke-width: 2.5; }
  svg .limit-name { fill: var(--limit); font-weight: 650; }
  .met { stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 3 4; }
  .spread { stroke: var(--limit); stroke-width: 8; stroke-opacity: 0.35; }
  .point { fill: var(--fuel); stroke: var(--paper); stroke-width: 1.5; }
  .earlier { fill: var(--paper); stroke: var(--fuel); stroke-width: 1.75; }
  .ring { fill: none; stroke: var(--limit); stroke-width: 2; }
  .fitted { stroke: var(--ink); stroke-width: 2; }
  svg .name { fill: var(--ink); font-weight: 650; }
  .rows { max-height: 18rem; overflow: auto; font-size: 0.95rem; }
  .rows ul { list-style: none; padding: 0; margin: 0; }
  .rows li { padding: 3px 0; border-bottom: 1px solid var(--rule); }
  .rows:focus-visible { outline: 3px solid var(--cold); }
  @media print { .no-print { display: none; } svg { max-height: 260px; } }
`;
