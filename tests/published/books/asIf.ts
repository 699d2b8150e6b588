import { colebrook, fuelState, line, solve } from "@thirstline/core";

// Pieces that several worked examples share. Books give velocities and heads where the library has flows and pressures.

export const areaOf = (bore: number): number => (Math.PI / 4) * bore ** 2;

export interface Pipe {
  readonly bore: number;
  readonly length: number;
  readonly roughness: number;
  readonly density: number;
  readonly dynamicViscosity: number;
}

/** A pipe as the library works it, with the figures that books print. */
export function pipeAt(pipe: Pipe, flow: number) {
  const { bore, length, roughness, density, dynamicViscosity } = pipe;
  const fuel = fuelState({ density, kinematicViscosity: dynamicViscosity / density });
  const solved = solve(line({ length, bore, roughness }), fuel);
  const velocity = flow / areaOf(bore);
  const reynolds = (velocity * bore) / fuel.kinematicViscosity;
  const drop = solved.drop(flow);
  // Darcy's factor read back from the drop, so that it is the one the drop was made with.
  const friction = drop / ((length / bore) * (density / 2) * velocity ** 2);
  return { fuel, velocity, reynolds, drop, friction, flowAt: (given: number) => solved.flow(given) };
}

/** Where a rising function passes a value, by halving. */
export function where(rising: (x: number) => number, value: number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (rising(middle) < value) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Darcy's factor of fully rough flow. */
export const fullyRough = (relativeRoughness: number): number => colebrook(1e12, relativeRoughness);

/** A figure as a book would print it and go on from. */
export const printed = (value: number, decimals: number): number => Number(value.toFixed(decimals));
