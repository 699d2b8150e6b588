import type { z as Z } from "zod";
import { shown } from "../shown.js";
import { z } from "./zod.js";

/**
 * A list of things.
 *
 * @param words what it lists: "a list of parts"
 * @param example how one is written, as YAML
 * @param item the schema of one
 * @param count least and most, and of what
 */
export function list<Item extends Z.ZodType>(
  words: string,
  example: string,
  item: Item,
  count: { readonly least: number; readonly most: number; readonly of: string },
): Z.ZodArray<Item> {
  const { least, most, of } = count;
  const such = `write ${words}${example.startsWith("each") ? ", " : " such as "}${example}`;
  return z
    .array(item, {
      error: ({ input }) =>
        `${input === undefined || input === null ? "missing" : `${shown(input)} is not ${words}`}; ${such}`,
    })
    .min(least, { error: ({ input }) => `${length(input, of)} in the list; write ${several(least, of)} or more` })
    .max(most, { error: ({ input }) => `${length(input, of)} in the list; at most ${several(most, of)} are taken` });
}

function length(input: unknown, of: string): string {
  const count = Array.isArray(input) ? input.length : 0;
  return count === 0 ? "nothing" : several(count, of);
}

function several(count: number, of: string): string {
  if (count === 1) return `1 ${of}`;
  return `${count} ${of}${of.endsWith("ch") ? "es" : "s"}`;
}
