import { css } from "lit";

/** A live figure looks like the figure it is, with dots under it. */
export const whyStyles = css`
  button.why { all: unset; display: inline; font-weight: inherit; cursor: pointer; border-radius: 2px; text-decoration: underline dotted;
    text-decoration-color: var(--edge); text-decoration-thickness: max(2px, 0.07em); text-underline-offset: 0.16em; -webkit-tap-highlight-color: transparent; }
  button.figure.why { font-weight: 650; }
  button.why:hover { text-decoration-color: var(--fuel); text-decoration-style: solid; }
  button.why:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; }
  @media print { button.why { text-decoration: none; } }
`;
