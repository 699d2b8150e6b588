import type { z as Z } from "zod";
import { meantWord } from "../nearest.js";
import { shown } from "../shown.js";
import { notABlock } from "./block.js";
import { z } from "./zod.js";

/**
 * A block of one of several kinds, told apart by its key `kind`; each kind has keys of its own.
 *
 * @param words what it describes: "a pump"
 * @param example how one is written, as YAML
 * @param options a block for each kind, with `kind: z.literal(…)`
 * @param synonyms other words for the kinds, to be named in a fault
 */
export function ofKind<Options extends readonly [Z.core.$ZodTypeDiscriminable, ...Z.core.$ZodTypeDiscriminable[]]>(
  words: string,
  example: string,
  options: Options,
  synonyms: Readonly<Record<string, string>> = {},
): Z.ZodDiscriminatedUnion<Options, "kind"> {
  return z.discriminatedUnion("kind", options, {
    error: (issue) => {
      if (issue.code !== "invalid_union") return notABlock(issue.input, words, example);
      const known = (issue as { readonly options?: readonly string[] }).options ?? [];
      const given = (issue.input as { readonly kind?: unknown }).kind;
      const list = `one of ${known.join(", ")}`;
      if (given === undefined || given === null)
        return `missing; write the kind of ${words.replace(/^an? /, "")}: ${list}`;
      const near = typeof given === "string" ? meantWord(given, known, synonyms) : undefined;
      const hint = near === undefined ? `write ${list}` : `write "${near}" (${list})`;
      return `${shown(given)} is not a kind of ${words.replace(/^an? /, "")}; ${hint}`;
    },
  });
}
