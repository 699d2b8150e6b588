import { shown } from "../../shown.js";
import { type Leaf, leaf } from "../leaf.js";
import { fault } from "./fault.js";

/** Free text on one line. */
export function text(words: string, example: string): Leaf<string> {
  const json = { type: "string", minLength: 1, maxLength: 100, description: words };
  return leaf<string>(`${words} such as ${example}`, json, "", (given) => {
    if (typeof given === "number") return { value: String(given) }; // a part called 7 is called "7"
    if (typeof given !== "string") {
      return fault("not a text", `${shown(given)} is not a text; write ${words} such as ${example}`);
    }
    if (given.trim() === "") return fault("missing", `empty; write ${words} such as ${example}`);
    if (given.length > 100) return fault("too long", `${shown(given)} has more than 100 characters; shorten it`);
    return { value: given };
  });
}
