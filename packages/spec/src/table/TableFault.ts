/** Something wrong with a table, at an offset into its text. */
export interface TableFault {
  readonly at: number;
  /** head of the column it concerns, "" for none */
  readonly path: string;
  readonly code: string;
  readonly received: string | null;
  readonly message: string;
}
