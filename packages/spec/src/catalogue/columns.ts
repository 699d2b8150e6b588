import { nearest } from "../nearest.js";
import { shown } from "../shown.js";
import { splitHead } from "../table/splitHead.js";
import { quantity } from "../units/quantity.js";

/** Where a column's cells go in an element's data, as `elementBlock` reads it. */
type DataPath = readonly (string | number)[];

/** A column of a table, known by its head. */
export interface Column {
  readonly head: string;
  readonly path: DataPath;
  /** unit that the head carries, for cells that are numbers alone */
  readonly unit: string;
  /** whether its cells are numbers without a unit */
  readonly plain: boolean;
}

/** Every column but the betas', which carry their size in the head. */
const known: Readonly<Record<string, { readonly path: DataPath; readonly plain?: true }>> = {
  name: { path: ["name"] },
  style: { path: ["style"] },
  thread: { path: ["thread"] },
  "flow direction": { path: ["flow direction"] },
  drop: { path: ["flow test", 0, "drop"] },
  flow: { path: ["flow test", 0, "flow"] },
  "second drop": { path: ["flow test", 1, "drop"] },
  "second flow": { path: ["flow test", 1, "flow"] },
  viscosity: { path: ["flow test", 0, "viscosity"] },
  density: { path: ["flow test", 0, "density"] },
  area: { path: ["area"] },
  "rating size": { path: ["stated rating", "size"] },
  "rating kind": { path: ["stated rating", "kind"] },
  leak: { path: ["leak"] },
  soil: { path: ["capacity test", 0, "soil"] },
  rise: { path: ["capacity test", 0, "rise"] },
  "soil flow": { path: ["capacity test", 0, "flow"] },
  "soil viscosity": { path: ["capacity test", 0, "viscosity"] },
  "soil density": { path: ["capacity test", 0, "density"] },
  "loading law": { path: ["loading law"] },
  make: { path: ["make"] },
  "terminal drop": { path: ["terminal drop"] },
  bowl: { path: ["bowl"] },
  "water efficiency": { path: ["water", "efficiency"] },
  "water flow": { path: ["water", "at"] },
  "most flow": { path: ["most flow"] },
  volume: { path: ["volume"] },
  price: { path: ["price"], plain: true },
  labour: { path: ["labour"] },
};

/** Heads of all columns, as a fault lists them. */
export const columnHeads: readonly string[] = [...Object.keys(known), "beta at 10 um"];

const synonyms: Readonly<Record<string, string>> = {
  element: "name",
  part: "name",
  port: "thread",
  capacity: "soil",
  cost: "price",
  "max flow": "most flow",
  "maximum flow": "most flow",
  labor: "labour",
  type: "style",
};

/**
 * The column a head names: a key, and after it, in brackets, the unit of cells that are numbers alone, as in "drop (kPa)";
 * "beta at 10 um" is the column of beta ratios at a size.
 *
 * @param betas how many columns of betas came before
 */
export function columnOf(text: string, betas: number): Column | { readonly message: string } {
  const { name, written, unit } = splitHead(text);
  const size = /^beta(?: at)? (.+)$/i.exec(written)?.[1];
  if (size !== undefined) {
    const read = quantity(size, "betaSize");
    if ("fault" in read) return { message: read.fault.message };
    return { head: name, path: ["betas", betas, "beta"], unit: size, plain: true };
  }
  if (Object.hasOwn(known, name)) {
    const { path, plain = false } = known[name] as (typeof known)[string];
    return { head: name, path, unit, plain };
  }
  if (name === "") return { message: 'a column without a name; name it, such as "drop"' };
  const meant = Object.hasOwn(synonyms, name) ? synonyms[name] : nearest(name, Object.keys(known));
  const hint = meant === undefined ? `known are ${columnHeads.join(", ")}` : `write ${shown(meant)}`;
  return { message: `${shown(text.trim())} is not a column of a catalogue; ${hint}` };
}
