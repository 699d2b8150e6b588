import type { CatalogueElement } from "@thirstline/spec/system";
import type { CostGiven } from "../../choose/yearlyCost.js";
import type { Step } from "../Step.js";
import { asked, fromSource } from "../worked.js";

const MONEY = { unit: "catalogue currency" } as const;

/** What one element costs; null where no price is stated. */
export function priceOf({ name, price }: CatalogueElement): Step | null {
  if (price === undefined) return null;
  return fromSource(`the element catalogue, "${name}"`, { name: `price of ${name}`, value: price, ...MONEY });
}

/** The work of changing one; null where none is stated. */
export function workOf({ name, labour }: CatalogueElement): Step | null {
  if (labour === undefined) return null;
  const plain = { name: `work of changing ${name}`, value: labour, unit: "s", kind: "running time" } as const;
  return fromSource(`the element catalogue, "${name}"`, plain);
}

/** What an hour of work costs; null where it was not said. */
export function hourlyRate({ labourRate }: CostGiven): Step | null {
  if (labourRate === undefined) return null;
  return asked("labour", { name: "cost of an hour of work", value: labourRate, ...MONEY });
}

/** What a stoppage costs; null where it was not said. */
export function stoppageCost({ stoppage }: CostGiven): Step | null {
  return stoppage === undefined ? null : asked("stoppage", { name: "cost of one stoppage", value: stoppage, ...MONEY });
}

/** One hour. */
export const hour: Step = fromSource("exact by definition", {
  name: "one hour",
  value: 3600,
  unit: "s",
  kind: "running time",
});
