/** Grades of mineral test dust. */
export type TestDust = "A2 fine" | "A3 medium" | "A4 coarse";

/** Sizes at which the volume of dust below is stated, um. */
export const dustSizes: readonly number[] = [1, 2, 5, 10, 20, 40, 80, 120];

/**
 * Volume of a test dust below each of `dustSizes`, %: the middle between the limits of the 1997 edition.
 * ISO 12103-1:1997 (from memory); later editions state other sizes.
 */
export const testDusts: Readonly<Record<TestDust, readonly number[]>> = {
  "A2 fine": [3, 11.5, 33.5, 52, 72, 89.5, 99.75, 100],
  "A3 medium": [1.5, 4.75, 17, 42.5, 67, 86, 99.5, 100],
  "A4 coarse": [0.8, 2.95, 9.25, 19.5, 34, 59, 88.5, 97.5],
};
