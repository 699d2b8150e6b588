import { css } from "lit";

/** How the page is laid out around its views. */
export const pageStyles = css`
  :host { display: block; max-width: 1480px; margin: 0 auto; padding: 20px clamp(16px, 3.5vw, 56px) 64px; box-sizing: border-box; }
  @media screen and (min-width: 1100px) { :host([beside]) { --panel-width: clamp(27rem, 32vw, 34rem); --two: none; --answer: -1; max-width: none; padding-right: calc(var(--panel-width) + 28px); } }
  @media screen and (max-width: 1099px) { :host([beside]) { padding-bottom: 62vh; } }
  header { display: flex; flex-wrap: wrap; gap: 8px 20px; align-items: center; border-bottom: 2px solid var(--ink); padding-bottom: 12px; }
  h1 { font-size: 1.15rem; margin: 0; font-weight: 750; letter-spacing: 0.01em; }
  header > label { min-width: 0; max-width: 100%; }
  header p { color: var(--soft); font-size: 0.95rem; flex: 1 1 16rem; }
  nav { flex: 1 0 100%; display: flex; flex-wrap: wrap; gap: 0 4px; margin: 0 -10px -12px; }
  nav a { display: inline-flex; align-items: center; min-height: 44px; padding: 0 10px; text-decoration: none; font-size: 0.95rem;
    border-bottom: 4px solid transparent; margin-bottom: -2px; box-sizing: border-box; }
  nav a:hover { border-bottom-color: var(--edge); }
  nav a[aria-current] { font-weight: 700; border-bottom-color: var(--fuel); }
  .body { display: flex; flex-direction: column; }
  main { min-width: 0; }
  .desk { display: flex; flex-wrap: wrap; gap: 8px; align-items: flex-start; margin-top: 12px; min-height: 44px; }
  .desk[hidden] { display: none; }
  .desk file-desk { flex: 1 1 24rem; min-width: 0; }
  .notice { display: flex; flex-wrap: wrap; gap: 8px 12px; align-items: center; margin-top: 12px; font-size: 0.95rem; background: var(--wash);
    padding: 6px 12px; border-radius: 4px; }
  footer { margin-top: 48px; border-top: 2px solid var(--ink); padding-top: 12px; font-size: 0.95rem; color: var(--soft); display: grid; gap: 6px; }
  footer p { max-width: 80ch; }
  .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .on-paper { display: none; }
  @media screen and (max-width: 760px) {
    .desk { order: 1; margin-top: 28px; }
  }
  @media print {
    :host { padding: 0; max-width: none; }
    .no-print, header > p { display: none !important; }
    .on-paper { display: block; font-size: 0.64rem; line-height: 1.2; overflow-wrap: anywhere; margin-top: 8px; }
    header { padding-bottom: 2px; }
    footer { margin-top: 8px; padding-top: 4px; font-size: 0.8rem; gap: 0; }
    footer p { max-width: none; }
  }
`;
