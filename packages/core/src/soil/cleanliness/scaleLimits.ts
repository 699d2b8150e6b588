/**
 * The most particles per mL that each scale number stands for, 0 to 28; each begins above the limit of the one before,
 * number 0 at 0.00. Roughly doubles from step to step; the standard rounds.
 *
 * ISO 4406:2021, table 1: numbers 6 to 24 seen in a public reprint, the others from memory.
 */
export const scaleLimits: readonly number[] = [
  0.01, 0.02, 0.04, 0.08, 0.16, 0.32, 0.64, 1.3, 2.5, 5, 10, 20, 40, 80, 160, 320, 640, 1300, 2500, 5000, 10_000,
  20_000, 40_000, 80_000, 160_000, 320_000, 640_000, 1_300_000, 2_500_000,
];
