import { shown } from "../../shown.js";
import { type Leaf, leaf } from "../leaf.js";
import { fault } from "./fault.js";

/** Yes or no. */
export function flag(words: string): Leaf<boolean> {
  return leaf<boolean>("true or false", { type: "boolean", description: words }, false, (given) =>
    typeof given === "boolean"
      ? { value: given }
      : fault("not true or false", `${shown(given)} is not true or false; write one of the two`),
  );
}
