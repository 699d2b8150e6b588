import { css } from "lit";

/** A plot inside its frame, on the screen and on paper. */
export const plotFrameStyles = css`
  :host { display: block; }
  #plot { min-height: 380px; min-width: 0; }
  #plot:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; border-radius: 4px; }
  p { margin: 4px 0 12px; font-size: 0.95rem; }
  .figure { font-weight: 650; white-space: nowrap; }
  @media print {
    #plot { min-height: 0; }
    .uplot, .u-wrap { width: auto !important; height: auto !important; }
    .uplot canvas { width: auto !important; height: 180px !important; max-width: 100%; }
    .u-over, .u-under { display: none; }
    p { margin: 0 0 4px; }
  }
`;
