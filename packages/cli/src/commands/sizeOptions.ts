import type { SizeOptions } from "@thirstline/study";
import type { Choosing } from "./choosing.js";

/** What `size` goes by besides a file and a catalogue, from what was asked. */
export function sizeOptions({ choice, query }: Choosing): SizeOptions {
  const { side, parallel, stages, bores, interval, code, rating, labour, rows } = choice;
  return {
    ...(side === null ? {} : { side }),
    ...(parallel === null ? {} : { parallel }),
    ...(stages === null ? {} : { stages }),
    bores,
    ...(query.temperatures.length === 0 ? {} : { temperatures: query.temperatures }),
    ...(interval === null ? {} : { interval }),
    ...(code === null ? {} : { code }),
    ...(rating === null ? {} : { rating }),
    ...(labour === null ? {} : { labourRate: labour }),
    keep: Math.max(20, rows),
  };
}
