import { css } from "lit";

/** How lessons are set: a column of text, figures standing out, drawings as wide as the page. */
export const lessonStyles = css`
  :host { display: block; }
  .column { max-width: 38em; }
  .column p + p { margin-top: 10px; }
  h2.title { font-size: clamp(1.45rem, 1rem + 1.9vw, 2.1rem); line-height: 1.2; font-weight: 650; margin: 26px 0 8px; max-width: 24em; width: fit-content; text-wrap: balance; }
  h3 { font-size: 1.15rem; line-height: 1.3; font-weight: 700; margin: 0 0 8px; }
  h2:focus, h3:focus { outline: none; }
  h2:focus-visible, h3:focus-visible { outline: 3px solid var(--cold); outline-offset: 4px; }
  section { margin-top: 34px; min-width: 0; }
  .figure { font-weight: 650; white-space: nowrap; }
  .row { display: flex; flex-wrap: wrap; gap: 8px 12px; align-items: center; }
  .row .button, .row a.button { display: inline-flex; align-items: center; text-decoration: none; box-sizing: border-box; }
  .main { background: var(--ink) !important; color: var(--paper) !important; border-color: var(--ink) !important; font-weight: 650 !important; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
`;
