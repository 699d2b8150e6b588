/** What `waterSolubility` asks of a fuel. */
export interface Hydrocarbons {
  /** mass ratio of hydrogen to carbon */
  readonly hydrogenToCarbon: number;
  /** kg/mol */
  readonly molarMass: number;
}

/** Atomic masses of hydrogen over carbon: turns an atom ratio to a mass ratio. */
const HYDROGEN = 1.008 / 12.011;

/**
 * Typical fuels where their make-up is not known: (CH1.87)n of 110 g/mol, (CH1.8)n of 170 and (CH1.7)n of 200.
 * J. B. Heywood, Internal Combustion Engine Fundamentals (1988), table D.4 (from memory).
 */
export const typicalHydrocarbons = {
  petrol: { hydrogenToCarbon: 1.87 * HYDROGEN, molarMass: 0.11 },
  "light diesel": { hydrogenToCarbon: 1.8 * HYDROGEN, molarMass: 0.17 },
  "heavy diesel": { hydrogenToCarbon: 1.7 * HYDROGEN, molarMass: 0.2 },
} as const satisfies Readonly<Record<string, Hydrocarbons>>;
