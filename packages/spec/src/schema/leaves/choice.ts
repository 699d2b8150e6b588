import { nearest } from "../../nearest.js";
import { shown } from "../../shown.js";
import { type Leaf, leaf, type Reading } from "../leaf.js";
import { fault } from "./fault.js";

/** One of a few words; `or` names what else is taken there. */
export function choice<const Word extends string>(words: string, among: readonly Word[], or = ""): Leaf<Word> {
  const list = `${among.join(", ")}${or}`;
  const json = { enum: [...among], description: words };
  // No word stands in for a bad one: a check that asks for any of them must find none.
  return leaf(`${words}: one of ${list}`, json, undefined as never as Word, (given): Reading<Word> => {
    const found = among.find((word) => word === given);
    if (found !== undefined) return { value: found };
    const near = typeof given === "string" ? nearest(given, among) : undefined;
    const hint = near === undefined ? `write one of ${list}` : `write "${near}" (one of ${list})`;
    return fault("unknown word", `${shown(given)} is not ${words} known here; ${hint}`);
  });
}
