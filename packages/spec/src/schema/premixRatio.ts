import { shown } from "../shown.js";
import { type Leaf, leaf } from "./leaf.js";

/** Parts of petrol to one of oil: 50, or "50:1" as cans have it. */
export function premixRatio(): Leaf<number> {
  const right = "write the parts of petrol to one of oil, 4 to 200, such as 50:1";
  const json = {
    anyOf: [
      { type: "number", minimum: 4, maximum: 200 },
      { type: "string", pattern: "^[0-9.]+:1$" },
    ],
    description: "parts of petrol to one of oil, such as 50:1",
  };
  return leaf("the parts of petrol to one of oil, such as 50:1", json, Number.NaN, (value) => {
    const pair = typeof value === "string" ? /^(\d{1,3}(?:\.\d{1,3})?) ?: ?1$/.exec(value) : null;
    const parts = pair === null ? value : Number(pair[1]);
    if (typeof parts === "number" && parts >= 4 && parts <= 200) return { value: parts };
    return { fault: { code: "out of range", message: `${shown(value)} is no premix ratio; ${right}` } };
  });
}
