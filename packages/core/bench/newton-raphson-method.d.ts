declare module "newton-raphson-method" {
  /** @returns the root, or false when the search ended without one */
  export default function newtonRaphson(
    f: (x: number) => number,
    guess: number,
    options?: { tolerance?: number; maxIterations?: number },
  ): number | false;
}
