import {
  type BankProfile,
  type Circuit,
  FREE_FALL,
  type FuelState,
  netRise,
  type ProfileEntry,
} from "@thirstline/core";

/** One unit in the last place of 1. */
export const ULP = 2 ** -52;

/** Static head over a circuit, Pa. */
export function headOf(circuit: Circuit, fuel: FuelState): number {
  return fuel.density * FREE_FALL * netRise(circuit);
}

/** How far two figures lie apart, of the larger; 0 when they are the same, infinite ones among them. */
export function apart(one: number, other: number): number {
  return one === other ? 0 : Math.abs(one - other) / Math.max(Math.abs(one), Math.abs(other));
}

/** The drops of parts in a row: their sum, and the size its rounding is measured by. Infinite where nothing passes. */
export function sumOfDrops(entries: readonly ProfileEntry[]): { readonly sum: number; readonly size: number } {
  const drops = entries.map(({ drop }) => drop ?? Infinity);
  const add = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);
  return { sum: add(drops), size: add(drops.map(Math.abs)) };
}

/** Every bank in a profile, the outermost first. */
export function banksIn(entries: readonly ProfileEntry[]): BankProfile[] {
  return entries.flatMap((entry) => (entry.kind === "bank" ? [entry, ...entry.branches.flatMap(banksIn)] : []));
}

/** Flow into each branch of a bank, m3/s. */
export function flowsInto(bank: BankProfile): number[] {
  return bank.branches.map(([first]) => first?.flow ?? 0);
}
