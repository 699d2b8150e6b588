import type { Formula } from "../Formula.js";

/** What a file of formulas states: formulas, and families of one form for two kinds of figures. */
export type Stated = Readonly<Record<string, Formula | Readonly<Record<string, Formula>>>>;

/**
 * The formulas of some files, by name. A module lists what it exports in one order when it is loaded as it is and in
 * another from a bundle, so the order must come from the formulas themselves.
 */
export function inOrder(...files: readonly Stated[]): Formula[] {
  const all = files.flatMap((file) =>
    Object.values(file).flatMap((one): Formula[] => (isFormula(one) ? [one] : Object.values(one))),
  );
  return all.sort((one, other) => (key(one) < key(other) ? -1 : 1));
}

function isFormula(one: Stated[string]): one is Formula {
  return typeof one.id === "string";
}

/** Names of families may be alike; no two formulas share an id. */
function key({ name, id }: Formula): string {
  return `${name} ${id}`;
}
