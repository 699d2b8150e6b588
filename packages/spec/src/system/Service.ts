/** When elements are changed. */
export interface SystemService {
  /** usual running time between changes, s */
  readonly interval: number;
  /** longest running time between changes, s */
  readonly atMost?: number;
  /** usual distance between changes, m; whichever comes first */
  readonly distance?: number;
  /** who says so */
  readonly source?: string;
}
