import { css } from "lit";

/** How a verdict in a word is set: whole for yes, in red for no, dashed for with care, dotted for what cannot be said. */
export const verdictStyles = css`
  .verdict { display: inline-block; font-size: 0.86rem; font-weight: 700; letter-spacing: 0.04em; padding: 2px 10px; border: 2px solid currentColor; border-radius: 4px; }
  .verdict.bad { color: var(--limit); }
  .verdict.care { border-style: dashed; }
  .verdict.unknown { border-style: dotted; }
`;
