/** What a table may hold at most. */
export interface TableBounds {
  /** bytes of UTF-8 */
  readonly bytes: number;
  /** rows under the heads */
  readonly rows: number;
  readonly columns: number;
  /** faults told */
  readonly faults: number;
  /** what is wrong with a table that has more rows, such as "split the catalogue" */
  readonly tooMany: string;
}
