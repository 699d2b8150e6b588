/** What a log may hold at most. */
export const logBounds = {
  /** bytes of UTF-8 */
  bytes: 64 * 1024 * 1024,
  rows: 500_000,
  columns: 20,
  /** faults told */
  faults: 100,
  tooMany: "more than 500000 rows; put the oldest years into a file of their own",
} as const;

/** What a list of machines, or of parts on the shelf, may hold at most. */
export const yardBounds = {
  /** bytes of UTF-8 */
  bytes: 8 * 1024 * 1024,
  rows: 20_000,
  columns: 20,
  /** faults told */
  faults: 100,
  tooMany: "more than 20000 rows; split the folder",
} as const;
