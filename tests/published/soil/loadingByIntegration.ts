import type { LoadingLaw } from "@thirstline/core";
import { integrate, type Rates } from "./integrate.js";

// The mechanisms themselves, stepped through; no closed form takes part. Three things change while v is filtered per
// area: the share of open pores, the cake on the open ones, and the resistance inside them. Through open pores the flow
// is denser by 1/open, so cake and narrowing grow faster there.
//   complete:     d open/dv = -complete
//   intermediate: d open/dv = -intermediate * open
//   cake:         d cake/dv = cake constant / open
//   standard:     d pore/dv = standard * pore^1.5 / open          (Hermia's n = 1.5)
// ratio = (cake + pore) / open.

interface State {
  readonly ratio: number;
  readonly changes: readonly [number, number, number];
}

function stateOf(law: LoadingLaw, open: number, cake: number, pore: number): State {
  return {
    ratio: (cake + pore) / open,
    changes: [
      -law.complete - law.intermediate * open,
      law.cake / open,
      law.standard === 0 ? 0 : (law.standard * pore ** 1.5) / open,
    ],
  };
}

const CLEAN = [1, 0, 1] as const;

/** The resistance ratio after a load, at constant flow. */
export function ratioByIntegration(law: LoadingLaw, load: number): number {
  const rates: Rates = (_, [open = 0, cake = 0, pore = 0]) => [...stateOf(law, open, cake, pore).changes];
  const [open = 0, cake = 0, pore = 0] = integrate(rates, CLEAN, load);
  return stateOf(law, open, cake, pore).ratio;
}

/** What has been filtered per area after a time, at constant pressure: the flow falls as the ratio rises. */
export function filtrateByIntegration(law: LoadingLaw, initialVelocity: number, time: number): number {
  const rates: Rates = (_, [open = 0, cake = 0, pore = 0]) => {
    const { ratio, changes } = stateOf(law, open, cake, pore);
    const velocity = initialVelocity / ratio;
    return [...changes.map((change) => change * velocity), velocity];
  };
  return integrate(rates, [...CLEAN, 0], time)[3] ?? Number.NaN;
}
