/** Share of a time over which a decaying thing still counts: (1 - e^-y)/y, 1 at 0. */
export function decayed(y: number): number {
  return y === 0 ? 1 : -Math.expm1(-y) / y;
}

/** (y - (1 - e^-y))/y^2, 1/2 at 0: what has built up while something fills as it decays. */
export function filled(y: number): number {
  if (y > 0.3) return (1 - decayed(y)) / y;
  // Near 0 the difference loses its figures; the series 1/2! - y/3! + y^2/4! - ... does not, and its 13th term is below
  // 1e-17.
  let term = 1 / 2;
  let sum = 0;
  for (let n = 3; n < 16; n++) {
    sum += term;
    term *= -y / n;
  }
  return sum;
}
