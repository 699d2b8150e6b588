import { css } from "lit";

/** How the path, its names and the descent are drawn. */
export const pathStyles = css`
  .sheet { position: relative; contain: layout size; }
  svg { display: block; overflow: visible; }
  .pipe { fill: none; stroke: var(--ink); stroke-width: 8.5; stroke-linejoin: round; }
  .fuel { fill: none; stroke: var(--fuel-bright); stroke-width: 5; stroke-linejoin: round; }
  .ink { fill: none; stroke: var(--ink); stroke-width: 2; stroke-linejoin: round; stroke-linecap: round; }
  .body { fill: var(--raised); stroke: var(--ink); stroke-width: 2; stroke-linejoin: round; }
  .solid, .arrow { fill: var(--ink); }
  .arrow { stroke: var(--fuel-bright); stroke-width: 2; paint-order: stroke; }
  .dashed { fill: none; stroke: var(--ink); stroke-width: 2; stroke-dasharray: 5 3.5; }
  .mesh { fill: none; stroke: var(--ink); stroke-width: 1; }
  .wrong { fill: none; stroke: var(--limit); stroke-width: 3; stroke-linecap: round; }
  .level { fill: var(--wash); }
  .surface { stroke: var(--fuel); stroke-width: 2; }
  .grip { fill: none; pointer-events: all; cursor: grab; }
  .guide { stroke: var(--rule); stroke-width: 1; stroke-dasharray: 1 5; }
  .tick { stroke: var(--edge); stroke-width: 1; }
  .tick-text, .level-text, .note { font: 13px var(--face); fill: var(--soft); font-variant-numeric: tabular-nums; }
  .level-text { paint-order: stroke; stroke: var(--paper); stroke-width: 4; stroke-linejoin: round; }
  .level-text.limit, .level-text.clean-limit, .level-text.vapour { fill: var(--limit); }
  .across { fill: none; stroke: var(--edge); stroke-width: 1; }
  .across.limit { stroke: var(--limit); stroke-width: 2.5; }
  .across.clean-limit { stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 8 5; }
  .across.vapour { stroke: var(--limit); stroke-width: 1.5; stroke-dasharray: 2 4; }
  .wash { fill: var(--wash); opacity: 0.55; }
  .starved { fill: var(--limit); opacity: 0.32; }
  .descent { fill: none; stroke: var(--ink); stroke-width: 3; stroke-linejoin: round; }
  .branch { fill: none; stroke: var(--ink); stroke-width: 1.75; stroke-linejoin: round; }
  .descent.soiled { stroke-width: 2.5; stroke-dasharray: 9 5; }
  .branch.soiled { stroke-dasharray: 6 4; }
  .end-name { font: 600 13px var(--face); fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 4; stroke-linejoin: round; }
  @media (prefers-reduced-motion: no-preference) {
    .eases :is(.descent, .branch, .wash, .starved) { transition: d 120ms ease-out; }
  }
  @media (forced-colors: active) {
    .fuel { stroke: Highlight; }
    .across.limit, .across.clean-limit, .across.vapour, .wrong { stroke: LinkText; }
    .level-text.limit, .level-text.clean-limit, .level-text.vapour { fill: LinkText; }
  }
  @media print { .name { min-height: 0 !important; padding: 0 2px; } .tick-text, .level-text, .note, .end-name { font-size: 10.5px; } }
  .names { list-style: none; margin: 0; padding: 0; }
  .names li { position: absolute; transform: translateX(-50%); display: flex; flex-direction: column; align-items: center; }
  .names.upright li { transform: none; justify-content: center; align-items: stretch; }
  .name { font: inherit; font-size: 0.86rem; line-height: 1.2; color: var(--ink); background: none; border: 0; margin: 0;
    padding: 4px 5px; border-radius: 4px; text-align: center; max-width: 100%; min-height: 44px; box-sizing: border-box;
    overflow-wrap: anywhere; }
  .upright .name { text-align: left; }
  button.name { cursor: pointer; }
  button.name span { text-decoration: underline; text-decoration-color: var(--rule); text-underline-offset: 3px; }
  button.name:hover span, button.name[aria-pressed="true"] span { text-decoration-color: var(--fuel); text-decoration-thickness: 2px; }
  button.name[aria-pressed="true"] { background: var(--wash); }
  button.name:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
  .name.inner { min-height: 32px; }
  .inside { display: grid; width: 100%; justify-items: center; }
  .upright .inside { justify-items: start; }
  .name > span { display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 3; overflow: hidden; }
  .name.inner > span { -webkit-line-clamp: 1; }
  .name i { display: block; font-style: normal; color: var(--soft); }
  .name i.big { color: var(--ink); font-weight: 650; }
  g[data-marked] .grip { stroke: var(--ink); stroke-width: 2; stroke-dasharray: 5 4; rx: 6px; }
  .name[data-marked] { background: var(--wash); outline: 2px dashed var(--ink); outline-offset: -2px; }
  .mark { color: var(--limit); font-weight: 800; }
`;
