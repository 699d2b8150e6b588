import { css } from "lit";

/** How the pages of formulas are set, on the screen and on paper. */
export const formulasStyles = css`
  :host { display: block; }
  h2 { font-size: clamp(1.45rem, 1rem + 1.9vw, 2.1rem); line-height: 1.2; font-weight: 650; margin: 26px 0 6px; }
  h2:focus, h3:focus, h4:focus { outline: none; }
  h3:focus-visible, h4:focus-visible { outline: 3px solid var(--cold); outline-offset: 3px; }
  .lead { max-width: 46em; }
  search { display: flex; flex-wrap: wrap; gap: 4px 16px; align-items: center; margin: 18px 0; }
  search label { display: flex; flex-wrap: wrap; gap: 4px 12px; align-items: center; font-weight: 650; max-width: 100%; }
  input { font: inherit; font-weight: 400; color: var(--ink); background: var(--raised); border: 1px solid var(--edge); border-radius: 4px; min-height: 44px; padding: 0 12px;
    width: 20rem; max-width: 100%; box-sizing: border-box; }
  input::placeholder { color: var(--soft); opacity: 1; }
  input:focus-visible { outline: 3px solid var(--cold); outline-offset: 1px; }
  .two { display: grid; grid-template-columns: minmax(0, 1fr); gap: 24px 48px; }
  nav ol { list-style: none; margin: 0; padding: 0; columns: 13rem; font-size: 0.95rem; }
  nav li { break-inside: avoid; display: flex; gap: 8px; align-items: center; line-height: 1.3; }
  nav a { display: inline-flex; align-items: center; min-height: 32px; }
  @media (pointer: coarse) { nav a { min-height: 44px; } }
  @media screen and (min-width: 1000px) {
    .two { grid-template-columns: 15rem minmax(0, 1fr); }
    nav { position: sticky; top: 12px; align-self: start; max-height: calc(100vh - 24px); overflow-y: auto; }
    nav ol { columns: auto; }
  }
  .all { min-width: 0; max-width: 58rem; }
  h3 { font-size: 1.15rem; line-height: 1.3; font-weight: 700; border-bottom: 2px solid var(--ink); padding: 0 0 4px; margin: 0; scroll-margin-top: 12px; }
  section + section { margin-top: 40px; }
  article { padding: 16px 0 18px; border-bottom: 1px solid var(--rule); content-visibility: auto; contain-intrinsic-size: auto 360px; scroll-margin-top: 12px; }
  article.here { border-left: 5px solid var(--fuel); padding-left: 14px; margin-left: -14px; }
  h4 { font-size: 1rem; font-weight: 650; margin: 0; }
  .link { text-decoration: none; color: var(--soft); font-weight: 400; padding: 4px 8px; }
  .maths { font-size: 1.1rem; padding: 10px 2px; }
  table { border-collapse: collapse; font-size: 0.95rem; margin: 4px 0 10px; width: 100%; max-width: 44rem; }
  td { padding: 2px 14px 2px 0; vertical-align: baseline; }
  .letter { width: 3.4em; white-space: nowrap; }
  .unit { text-align: right; color: var(--soft); white-space: nowrap; padding-right: 0; }
  dl { margin: 0; font-size: 0.86rem; }
  dl div { display: grid; grid-template-columns: 5.4em minmax(0, 1fr); gap: 0 10px; padding: 1px 0; }
  dt { color: var(--soft); }
  dd { margin: 0; overflow-wrap: anywhere; max-width: 48em; }
  ul { margin: 0; padding: 0; list-style: none; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  @media print {
    .no-print { display: none !important; }
    article { content-visibility: visible; break-inside: avoid; padding: 8px 0; }
    article.here { border-left: 0; padding-left: 0; margin-left: 0; }
    h2 { margin: 0 0 4px; }
    h3 { break-after: avoid; }
    .lead { max-width: none; margin-bottom: 14px; }
    section { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 0 9mm; }
    h3, article.wide { grid-column: 1 / -1; }
    section + section { margin-top: 18px; }
    .maths { overflow: visible; padding: 4px 0; font-size: 1rem; }
    table, dd { max-width: none; }
    .all { max-width: none; }
  }
`;
