import { requireBetween, requireMoreThan } from "../../require.js";

/**
 * What a particle size was measured by: "um(c)" as ISO 11171:1999 calibrates, "um(b)" as its 2016 edition does, and the
 * older longest dimension of ISO 4402.
 */
export type SizeScale = "um(c)" | "um(b)" | "ISO 4402";

/** ISO 11171:2016: d(c) = 0.898 d(b) (from memory). */
const C_PER_B = 0.898;

// ISO 11171:1999, the same particles on both scales, m (from memory).
const OLD = [1e-6, 2e-6, 3e-6, 5e-6, 7e-6, 10e-6, 15e-6, 20e-6, 25e-6, 30e-6] as const;
const NEW = [4.2e-6, 4.6e-6, 5.1e-6, 6.4e-6, 7.7e-6, 9.8e-6, 13.6e-6, 17.5e-6, 21.2e-6, 24.9e-6] as const;

/**
 * The same particle's size on another scale. 10 um of an old data sheet is 9.8 um(c); 1 um of it is 4.2 um(c), so an
 * old fine rating looks finer than it is.
 *
 * Old sizes hold from 1 to 30 um (4.2 to 24.9 um(c)), straight between ten published points.
 *
 * @param size m
 * @throws InputError for a size not above 0, or outside the points where the old scale takes part
 * @see ISO 11171:1999 and ISO 11171:2016 (from memory)
 * @example
 * convertSize(10e-6, "ISO 4402", "um(c)") // 9.8e-6
 */
export function convertSize(size: number, from: SizeScale, to: SizeScale): number {
  requireMoreThan("convertSize", "size", size, 0, "m");
  if (from === to) return size;
  return fromC(toC(size, from), to);
}

function toC(size: number, from: SizeScale): number {
  if (from === "um(c)") return size;
  return from === "um(b)" ? size * C_PER_B : onTable("size", size, OLD, NEW);
}

function fromC(size: number, to: SizeScale): number {
  if (to === "um(c)") return size;
  return to === "um(b)" ? size / C_PER_B : onTable("size in um(c)", size, NEW, OLD);
}

function onTable(path: string, size: number, from: readonly number[], to: readonly number[]): number {
  requireBetween("convertSize", path, size, { from: from[0] ?? 0, to: from[from.length - 1] ?? 0 }, "m");
  const above = from.findIndex((point, at) => at > 0 && point >= size);
  const [x0, x1] = [from[above - 1] ?? 0, from[above] ?? 0];
  const [y0, y1] = [to[above - 1] ?? 0, to[above] ?? 0];
  return y0 + ((y1 - y0) * (size - x0)) / (x1 - x0);
}
