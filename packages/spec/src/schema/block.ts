import type { z as Z } from "zod";
import { meantWord } from "../nearest.js";
import { shown } from "../shown.js";
import { jsonShapes } from "./shapes.js";
import { z } from "./zod.js";

/** What is said of one unknown key. */
export interface UnknownKey {
  readonly key: string;
  readonly message: string;
  /** The key of the block that was probably meant. */
  readonly meant?: string;
}

/** Unknown keys told of one block: the comparison with the known ones takes its time, and nobody reads more. */
const mostUnknown = 101;

/**
 * A block of keys and values. Keys that are not its own are faults, each with the nearest that is.
 *
 * @param words what the block describes: "a line"
 * @param example how one is written, as YAML
 * @param shape its keys
 * @param synonyms other words for the keys, to be named in a fault
 */
export function block<Shape extends Z.core.$ZodLooseShape>(
  words: string,
  example: string,
  shape: Shape,
  synonyms: Readonly<Record<string, string>> = {},
): Z.ZodObject<Shape, Z.core.$strict> {
  const keys = Object.keys(shape);
  const schema = z.strictObject(shape, {
    error: (issue) => {
      if (issue.code === "unrecognized_keys") {
        // zod reports all of them as one issue with one text: the records travel in it as JSON.
        return JSON.stringify(issue.keys.slice(0, mostUnknown).map((key) => unknownKey(key, words, keys, synonyms)));
      }
      return notABlock(issue.input, words, example);
    },
  });
  jsonShapes.add(schema, { json: { description: words } });
  return schema;
}

/** The message for a value where a block should be. */
export function notABlock(given: unknown, words: string, example: string): string {
  const fault = given === undefined || given === null ? "missing" : `${shown(given)} is not ${words}`;
  return `${fault}; write ${words} such as ${example}`;
}

function unknownKey(
  key: string,
  words: string,
  keys: readonly string[],
  synonyms: Readonly<Record<string, string>>,
): UnknownKey {
  const said = `${shown(key)} is not a key of ${words}`;
  const opened = /^([^{[]+?) *[{[]/.exec(key)?.[1];
  if (opened !== undefined) return { key, message: `${said}; write a colon after ${shown(opened)}`, meant: opened };
  // "0,9 m" between braces is a 0 and a key "9 m".
  if (/^\d+ ?[A-Za-z%\u00b5\u00b0]/.test(key) && !keys.some((one) => /^\d/.test(one))) {
    return { key, message: `${said}; write numbers with a decimal point, not a comma` };
  }
  const meant = meantWord(key, keys, synonyms);
  if (meant === undefined) return { key, message: `${said}; known are ${keys.join(", ")}` };
  return { key, message: `${said}; write ${shown(meant)}`, meant };
}
