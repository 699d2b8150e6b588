import { InputError } from "../InputError.js";

/** Product groups of the petroleum volume tables; "transition" lies between petrol and jet fuel. */
export type ProductGroup = "fuel oil" | "jet fuel" | "transition" | "petrol" | "crude";

const groups: readonly ProductGroup[] = ["fuel oil", "jet fuel", "transition", "petrol", "crude"];

/** Refuses a group the tables do not have. */
export function requireProductGroup(caller: string, group: ProductGroup): void {
  if (!groups.includes(group)) throw new InputError(caller, "group", `one of ${groups.join(", ")}`, group);
}
