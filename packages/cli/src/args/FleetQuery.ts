/** What a fleet was asked besides a query. */
export interface FleetQuery {
  /** today, as "2026-11-25" */
  readonly on: string;
  /** days looked ahead */
  readonly within: number;
  /** file for a calendar; null for none */
  readonly ics: string | null;
  /** entries to put into the log, as they were said */
  readonly log: readonly string[];
  /** how often lives are drawn; not at all unless it was asked for */
  readonly draws: number;
}
