// The same circuit, written out the straightforward way: each law as in a textbook, friction factors and splits by
// bisection. It is what the library's figures and times are held against, so it shares no code with it.

/** @typedef {(f: (x: number) => number, low: number, high: number) => number} Root */
/** @typedef {{ density: number, kinematicViscosity: number }} Fuel */
/** @typedef {typeof import("./circuit.mjs").shape} Shape */
/** @typedef {{ length: number, bore: number, roughness: number }} Pipe */

const G = 9.80665;

/** @type {Root} */
function bisect(f, low, high) {
  for (let round = 0; round < 200; round++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (f(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** @type {(reynolds: number, roughness: number) => number} */
function turbulentFactor(reynolds, roughness) {
  /** @param {number} root */
  const miss = (root) => root + 2 * Math.log10(roughness / 3.7 + (2.51 * root) / reynolds);
  return bisect(miss, 1, 40) ** -2;
}

/** @type {(reynolds: number, roughness: number) => number} */
function factor(reynolds, roughness) {
  if (reynolds <= 2300) return 64 / reynolds;
  if (reynolds >= 4000) return turbulentFactor(reynolds, roughness);
  // the same passage as the library's, in f Re^2, with the slope at 4000 from a difference
  /** @param {number} re */
  const g = (re) => turbulentFactor(re, roughness) * re * re;
  const slope = (g(4000 * (1 + 1e-6)) - g(4000 * (1 - 1e-6))) / (4000 * 2e-6);
  const t = (reynolds - 2300) / 1700;
  const value =
    (1 + 2 * t) * (1 - t) ** 2 * 64 * 2300 +
    t * (1 - t) ** 2 * 64 * 1700 +
    t * t * (3 - 2 * t) * g(4000) +
    t * t * (t - 1) * slope * 1700;
  return value / reynolds ** 2;
}

/** @type {(pipe: Pipe, fuel: Fuel, flow: number) => number} */
function pipe({ length, bore, roughness }, fuel, flow) {
  if (flow === 0) return 0;
  const velocity = flow / ((Math.PI / 4) * bore ** 2);
  const reynolds = (velocity * bore) / fuel.kinematicViscosity;
  return ((factor(reynolds, roughness / bore) * length) / bore) * (fuel.density / 2) * velocity ** 2;
}

/** @type {(bore: number, fuel: Fuel, flow: number) => number} */
function head(bore, fuel, flow) {
  return (fuel.density / 2) * (flow / ((Math.PI / 4) * bore ** 2)) ** 2;
}

/** @type {(drop: number, fuel: Fuel, flow: number) => number} */
function element(drop, fuel, flow) {
  return (drop * flow * fuel.kinematicViscosity * fuel.density) / ((200 / 3.6e6) * 3e-6 * 830);
}

/**
 * Drop of the bench circuit at a flow, with another inner root finder than bisection if wished.
 * @param {Shape} shape
 * @param {Fuel} fuel
 * @param {number} flow
 * @param {Root} [root]
 */
export function plainDrop(shape, fuel, flow, root = bisect) {
  /** @param {Shape["branches"][number]} one @param {number} q */
  const branch = ({ line, drop }, q) => pipe(line, fuel, q) + element(drop, fuel, q);
  /** @param {Shape["branches"][number]} one @param {number} shared */
  const through = (one, shared) => root((q) => branch(one, q) - shared, 0, flow);
  const shared = root(
    (drop) => shape.branches.reduce((sum, one) => sum + through(one, drop), 0) - flow,
    0,
    branch(/** @type {Shape["branches"][number]} */ (shape.branches[0]), flow),
  );
  const reynolds = (4 * flow) / (Math.PI * shape.elbow.bore * fuel.kinematicViscosity);
  const elbow = shape.elbow.k1 / reynolds + shape.elbow.kInfinity * (1 + 0.0254 / shape.elbow.bore);
  return (
    pipe(shape.wide, fuel, flow) +
    pipe(shape.narrow, fuel, flow) +
    elbow * head(shape.elbow.bore, fuel, flow) +
    shape.bend.k * head(shape.bend.bore, fuel, flow) +
    fuel.density * G * shape.height +
    shared +
    element(shape.fine, fuel, flow)
  );
}

/**
 * Flow at a drop, by bisection on the above.
 * @param {Shape} shape
 * @param {Fuel} fuel
 * @param {number} drop
 * @param {Root} [root]
 */
export function plainFlow(shape, fuel, drop, root = bisect) {
  return root((flow) => plainDrop(shape, fuel, flow, root) - drop, 1e-9, 1e-3);
}
