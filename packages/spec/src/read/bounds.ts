/**
 * What a file may hold at most. A real machine needs a tenth of each; beyond, a file is a mistake or an attack, and
 * reading it must stay quick.
 */
export const bounds = {
  /** bytes of UTF-8 */
  bytes: 32 * 1024,
  /** words, signs and spaces of YAML */
  pieces: 12_000,
  /** blocks and lists inside one another */
  depth: 40,
  /** values, aliases counted as often as they are used */
  values: 10_000,
  /** figures with a spread; copies of one count once */
  spreads: 64,
  /** faults told */
  faults: 100,
} as const;
