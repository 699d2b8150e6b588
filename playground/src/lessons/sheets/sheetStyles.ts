import { css } from "lit";

/** How a lesson's two sheets are set on A4 or letter paper, whichever is in the printer. */
export const sheetStyles = css`
  .leaf { break-after: page; font-size: 15px; line-height: 1.38; color: #000; }
  .leaf:last-child { break-after: auto; }
  .leaf * { box-sizing: border-box; }
  .head { display: flex; justify-content: space-between; gap: 24px; align-items: baseline; border-bottom: 2px solid #000; padding-bottom: 5px; }
  .head h2 { font-size: 22px; line-height: 1.2; margin: 0; font-weight: 700; }
  .head p { margin: 0; font-size: 13px; white-space: nowrap; }
  .who { display: flex; gap: 24px; margin: 14px 0 4px; }
  .who span { flex: 1; border-bottom: 1px solid #000; padding-bottom: 2px; font-size: 13px; }
  .who span:last-child { flex: 0 0 12em; }
  .leaf h3 { font-size: 16px; margin: 13px 0 3px; font-weight: 700; }
  .leaf p { margin: 0 0 5px; }
  .asked { font-weight: 600; }
  .lines { list-style: none; margin: 4px 0 0; padding: 0; }
  .lines li { border-bottom: 1px solid #777; height: 27px; }
  .picks { list-style: none; margin: 4px 0 0; padding: 0; }
  .picks li { display: grid; grid-template-columns: 15px minmax(0, 1fr); gap: 9px; margin-bottom: 5px; align-items: start; }
  .picks i { width: 14px; height: 14px; border: 1.5px solid #000; margin-top: 3px; }
  .drawing { margin: 8px 0 2px; }
  .safety { border: 1.5px solid #000; padding: 4px 10px; font-size: 13px; margin-top: 9px; }
  .safety p { margin: 1px 0; }
  .answers { margin: 2px 0 0; padding: 0; list-style: none; }
  .answers li { margin-bottom: 4px; }
  .answers b { font-weight: 700; }
  .compact { font-size: 13.5px; line-height: 1.34; }
  .working { border-left: 4px solid #777; padding-left: 12px; margin: 5px 0; }
  .sources { font-size: 11.5px; color: #333; margin-top: 6px !important; }
  .figure { white-space: nowrap; font-weight: 600; }
`;
