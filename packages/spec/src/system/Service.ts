/** When elements are changed. */
export interface SystemService {
  /** usual running time between changes, s */
  readonly interval: number;
  /** longest running time between changes, s */
  readonly atMost?: number;
  /** usual distance between changes, m; whichever comes first */
  readonly distance?: number;
  /** usual calendar time between changes, s, a year being 365.25 days and a month a twelfth of it */
  readonly calendar?: number;
  /** the last change: its day, as "2026-01-15"; what the hour meter, s, and the distance meter, m, showed */
  readonly last?: { readonly date?: string; readonly hours?: number; readonly distance?: number };
  /** what a full stroke of the hand primer sweeps, m3 */
  readonly primer?: number;
  /** who says so */
  readonly source?: string;
}
