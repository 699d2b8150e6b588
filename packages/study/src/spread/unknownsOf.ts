import { type System, withDraw } from "@thirstline/spec/system";
import { filtersOf } from "../life/filtersOf.js";
import { assumedMakeOf, type Guess, oneBetaOf } from "../life/Guess.js";
import { MOST_DIMENSIONS } from "./quasiRandom.js";

/** All that is uncertain of a system: the spreads of its file, and what is only estimated of its elements. */
export interface Unknowns {
  /** how many numbers a draw takes */
  readonly count: number;
  /** the system and the estimates as they may be, by so many numbers from 0 to 1 */
  readonly drawn: (at: readonly number[]) => { readonly system: System; readonly guess: Guess };
}

/**
 * What is uncertain of a system. Spreads of one group share their number, since they are one unknown; so do handbook
 * capacities of one make, and captures known by the same one beta.
 */
export function unknownsOf(system: System): Unknowns {
  const spreads = system.spreads ?? [];
  const groups = [...new Set(spreads.map((spread, at) => spread.group ?? at))];
  const filters = filtersOf(system).filter(({ blocked }) => !blocked);
  const makes = distinct(filters.map(assumedMakeOf));
  const betas = distinct(filters.map(oneBetaOf));
  // Few files come near; what is beyond stands at its likely figure.
  const count = Math.min(MOST_DIMENSIONS, groups.length + makes.length + betas.length);
  return {
    count,
    drawn: (at) => {
      const of = (place: number) => at[place] ?? 0.5;
      return {
        system: withDraw(
          system,
          spreads.map((spread, own) => of(groups.indexOf(spread.group ?? own))),
        ),
        guess: {
          capacity: (make) => of(groups.length + makes.indexOf(make)),
          capture: (beta) => of(groups.length + makes.length + betas.indexOf(beta)),
        },
      };
    },
  };
}

function distinct<T>(values: readonly (T | null)[]): T[] {
  return [...new Set(values.filter((value) => value !== null))];
}
