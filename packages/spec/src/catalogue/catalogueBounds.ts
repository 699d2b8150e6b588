/** What a catalogue may hold at most. */
export const catalogueBounds = {
  /** bytes of UTF-8; of a catalogue in YAML as many as of a system file */
  bytes: 8 * 1024 * 1024,
  /** elements */
  rows: 20_000,
  /** columns of a table */
  columns: 100,
  /** faults told */
  faults: 100,
  tooMany: "more than 20000 elements; split the catalogue",
} as const;
