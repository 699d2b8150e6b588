/** Bins a decade of size, at least. */
const BINS_A_DECADE = 40;

/**
 * Sizes, um, that must be edges: those at which codes, test dusts and betas are stated come out exactly, without
 * sharing out a bin. The first lies just below where the lightest end of every test dust reaches nothing.
 */
const STATED = [0.7, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 14, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 120, 150];

/**
 * Edges of the size bins that every distribution uses, m, rising from 0.7 to 150 um. Bin i lies from edge i to i + 1.
 */
export const sizeEdges: Readonly<Float64Array> = Float64Array.from(edges());

/** Number of bins. */
export const binCount = sizeEdges.length - 1;

/** The edge at or below a size inside the bins. */
export function binOf(size: number): number {
  let low = 0;
  let high = binCount;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((sizeEdges[middle] ?? 0) <= size) low = middle;
    else high = middle;
  }
  return low;
}

function* edges(): Generator<number> {
  for (const [at, start] of STATED.entries()) {
    const end = STATED[at + 1];
    // Divided, not multiplied, by a power of ten: so 6 um is the very number 6e-6.
    yield start / 1e6;
    if (end === undefined) return;
    const steps = Math.ceil(BINS_A_DECADE * Math.log10(end / start));
    for (let step = 1; step < steps; step++) yield (start * (end / start) ** (step / steps)) / 1e6;
  }
}
