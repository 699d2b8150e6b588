/**
 * Hooper's two-K constants of fittings: K = K1/Re + Kinf (1 + 1/bore in inches).
 * W. B. Hooper, Chem. Eng. 88 (24 Aug 1981) 96-100; from memory.
 */
export const twoKConstants = {
  "elbow 90 screwed": { k1: 800, kInfinity: 0.4 },
  "elbow 90 flanged": { k1: 800, kInfinity: 0.25 },
  "tee run screwed": { k1: 200, kInfinity: 0.1 },
  "tee as elbow screwed": { k1: 500, kInfinity: 0.7 },
  "ball or gate full bore": { k1: 300, kInfinity: 0.1 },
  globe: { k1: 1500, kInfinity: 4 },
  "swing check": { k1: 1500, kInfinity: 1.5 },
  entrance: { k1: 160, kInfinity: 0.5 },
  exit: { k1: 0, kInfinity: 1 },
} as const satisfies Record<string, { readonly k1: number; readonly kInfinity: number }>;

/** A fitting the two-K table knows. */
export type TwoKKind = keyof typeof twoKConstants;
