/** The flow at which linear q + quadratic q^2 meets a target, all of them 0 or more. */
export function rootOfQuadratic(linear: number, quadratic: number, target: number): number {
  return (2 * target) / (linear + Math.sqrt(linear * linear + 4 * quadratic * target));
}

/**
 * The flow at which a q + b q^2, fitted to a drop and its slope at one flow, meets a target. Where the law bends more
 * than that form can, the tangent is taken: the answer may then lie outside the caller's bracket, or be no number.
 */
export function fittedFlow(flow: number, drop: number, slope: number, target: number): number {
  const chord = drop / flow;
  const quadratic = (slope - chord) / flow;
  const linear = 2 * chord - slope;
  if (linear >= 0 && quadratic >= 0) return rootOfQuadratic(linear, quadratic, target);
  return flow - (drop - target) / slope;
}
