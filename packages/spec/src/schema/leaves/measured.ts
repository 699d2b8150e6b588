import { shown } from "../../shown.js";
import { type Kind, type KindName, kinds } from "../../units/kinds.js";
import { quantity } from "../../units/quantity.js";
import { spreadQuantity } from "../../units/spreadQuantity.js";
import { type Leaf, leaf } from "../leaf.js";
import { asWritten } from "./asWritten.js";
import { fault } from "./fault.js";

/** A quantity of a kind, in SI, or the middle of its spread; NaN when it could not be read. A name tells what it is here, when its kind does not. */
export function measured(kind: KindName, name?: string): Leaf<number> {
  const { words: general, example, si }: Kind = kinds[kind];
  const words = name ?? general;
  const json = {
    type: "string",
    description: `${words} with its unit, such as "${example}"`,
    examples: [example],
    unit: si,
  };
  return leaf(`${words} such as "${example}"`, json, Number.NaN, (given) =>
    typeof given === "string" || typeof given === "number"
      ? (spreadQuantity(asWritten(given), kind) ?? quantity(asWritten(given), kind))
      : fault("not a quantity", `${shown(given)} is not a quantity; write ${words} such as "${example}"`),
  );
}
