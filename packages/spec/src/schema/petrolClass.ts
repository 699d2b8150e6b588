import { petrolClasses } from "@thirstline/core";
import { shown } from "../shown.js";
import { type Leaf, leaf } from "./leaf.js";

const classNames = petrolClasses.map((one) => `${one.standard} ${one.class}`);

/** A volatility class of petrol, with or without the "ASTM". */
export function petrolClass(): Leaf<string> {
  const list = classNames.join(", ");
  const json = { enum: [...classNames, ...classNames.flatMap((name) => withoutAstm(name))], description: "a class" };
  return leaf(`a petrol class: one of ${list}`, json, "", (value) => {
    const found = classNames.find(
      (name) => name === value || (value !== name && withoutAstm(name).includes(`${value}`)),
    );
    if (found !== undefined) return { value: found };
    return { fault: { code: "unknown word", message: `${shown(value)} is not a petrol class; write one of ${list}` } };
  });
}

function withoutAstm(name: string): string[] {
  return name.startsWith("ASTM ") ? [name.slice(5)] : [];
}
