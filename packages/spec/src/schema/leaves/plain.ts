import { shown } from "../../shown.js";
import { type Leaf, leaf } from "../leaf.js";
import { fault } from "./fault.js";

/** A plain number within bounds; NaN when it could not be read. */
export function plain(given: {
  readonly words: string;
  readonly least: number;
  readonly most: number;
  readonly example: number;
  readonly whole?: boolean;
}): Leaf<number> {
  const { words, least, most, example, whole = false } = given;
  const json = { type: whole ? "integer" : "number", minimum: least, maximum: most, description: words };
  const wanted = `${words}, ${least} to ${most}, such as ${example}`;
  const right = `write ${wanted}`;
  return leaf(wanted, json, Number.NaN, (value) => {
    if (typeof value !== "number" || Number.isNaN(value)) {
      return fault("not a number", `${shown(value)} is not a plain number; ${right}`);
    }
    if (!(value >= least && value <= most)) return fault("out of range", `${shown(value)} is out of range; ${right}`);
    if (whole && !Number.isInteger(value)) return fault("not whole", `${shown(value)} is not a whole number; ${right}`);
    return { value };
  });
}
