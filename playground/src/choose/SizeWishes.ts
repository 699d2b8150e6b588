import type { SizeOptions } from "@thirstline/study";

/** What a search is to keep to, as it is typed; null and empty for what the file and the search say themselves. */
export interface SizeWishes {
  readonly side: "suction" | "delivery" | null;
  readonly parallel: number;
  readonly stages: number;
  /** m */
  readonly bores: readonly number[];
  readonly code: string | null;
  /** s */
  readonly interval: number | null;
  /** K */
  readonly coldest: number | null;
  readonly warmest: number | null;
  readonly labour: number | null;
  readonly stoppage: number | null;
}

export const noWishes: SizeWishes = {
  side: null,
  parallel: 4,
  stages: 2,
  bores: [],
  code: null,
  interval: null,
  coldest: null,
  warmest: null,
  labour: null,
  stoppage: null,
};

/** How many of each ranking are listed. */
const KEPT = 40;

/**
 * The options of a search.
 *
 * @param own temperatures that the system is run at, K, coldest first: an end that is not wished for otherwise is theirs
 */
export function optionsOf(wishes: SizeWishes, own: readonly number[]): SizeOptions {
  const { side, parallel, stages, bores, code, interval, coldest, warmest, labour } = wishes;
  const ends = [coldest ?? own[0], warmest ?? own.at(-1)].filter((one) => one !== undefined);
  return {
    parallel,
    stages,
    bores,
    keep: KEPT,
    ...(side === null ? {} : { side }),
    ...(coldest === null && warmest === null ? {} : { temperatures: ends }),
    ...(code === null ? {} : { code }),
    ...(interval === null ? {} : { interval }),
    ...(labour === null ? {} : { labourRate: labour }),
  };
}
