import { css } from "lit";

/** How the panel about the elements' life is laid out. */
export const lifeStyles = css`
  .said { font-size: 1.1rem; line-height: 1.45; max-width: 62em; margin: 0 0 8px; text-wrap: pretty; }
  chart-frame { margin-top: 20px; }
  .elements { border-collapse: collapse; width: 100%; font-size: 0.95rem; margin: 12px 0 4px; }
  .elements caption { text-align: left; }
  .elements th, .elements td { text-align: right; padding: 4px 0 4px 8px; border-bottom: 1px solid var(--rule); font-weight: 500; white-space: nowrap; }
  .elements thead th { color: var(--soft); font-size: 0.86rem; vertical-align: bottom; }
  .elements tbody th { text-align: left; padding-left: 0; white-space: normal; overflow-wrap: anywhere; }
  .elements td { font-weight: 650; }
  .elements tbody tr:first-child th { font-weight: 700; }
  .chance { margin: 8px 0; }
  ul { margin: 0; padding: 0 0 0 1.2em; font-size: 0.95rem; max-width: 70ch; }
  li { padding: 2px 0; }
  /* Paper has room for one curve; of the life it has the words. */
  @media print { chart-frame, details { display: none; } h2 { margin: 0; } .said { font-size: 1rem; line-height: 1.3; max-width: none; margin: 0 0 2px; } }
`;
