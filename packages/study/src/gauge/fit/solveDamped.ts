import { Matrix, QrDecomposition } from "ml-matrix";

/**
 * The move that would take linear misses to their least, held back by a damping; by QR, which squares no condition number.
 *
 * @param slopes a row a miss
 * @param damping each parameter's own move costs so much over its column's length; 0 is none
 * @returns null where the columns do not differ, so that no move is least
 */
export function solveDamped(slopes: readonly Float64Array[], misses: Float64Array, damping: number): number[] | null {
  const count = slopes[0]?.length ?? 0;
  const lengths = Array.from({ length: count }, (_, at) => {
    const length = Math.sqrt(slopes.reduce((sum, row) => sum + (row[at] as number) ** 2, 0));
    return length > 0 ? length : 1;
  });
  const rows = slopes.map((row) => lengths.map((length, at) => (row[at] as number) / length));
  if (damping > 0) {
    const held = Math.sqrt(damping);
    for (let at = 0; at < count; at++) rows.push(lengths.map((_, other) => (other === at ? held : 0)));
  }
  const right = new Matrix(rows.map((_, at) => [at < misses.length ? -(misses[at] as number) : 0]));
  const qr = new QrDecomposition(new Matrix(rows));
  if (!qr.isFullRank()) return null;
  const moved = qr.solve(right).to1DArray();
  const found = moved.map((value, at) => value / (lengths[at] as number));
  return found.every(Number.isFinite) ? found : null;
}
