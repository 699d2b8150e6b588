import { also } from "../schema/also.js";
import { block } from "../schema/block.js";
import { given } from "../schema/given.js";
import { measured, plain, text } from "../schema/leaves/index.js";
import { checkFilter } from "../schema/parts/checkFilter.js";
import { toFilter } from "../schema/parts/filter.js";
import { type FilterData, filterKeys } from "../schema/parts/filterKeys.js";
import type { z } from "../schema/zod.js";
import type { CatalogueElement } from "./CatalogueElement.js";

// How a filter is fitted and how soiled it is are facts of a machine, not of an element on a shelf.
const { blocked: _blocked, reversed: _reversed, restriction: _restriction, ...filterShape } = filterKeys.shape;

/** An element's keys: those of a filter that are true of it on the shelf, and what buying and fitting it takes. */
const elementKeys = block(
  "an element",
  "{ name: element P10, flow test: [{ drop: 2 kPa, flow: 200 L/h, viscosity: 2.5 mPa s }] }",
  {
    ...filterShape,
    name: text("a name", "element P10"),
    "most flow": measured("flow", "a most flow").optional(),
    volume: measured("volume").optional(),
    price: plain({ words: "a price without its currency", least: 0, most: 1e7, example: 24.5 }).optional(),
    labour: measured("labour").optional(),
  },
);

/** An element, as a catalogue has it. */
export const elementBlock = also(elementKeys, (data, report) => checkFilter(data as Partial<FilterData>, report));

/** An element in SI, its spreads still to come. */
export function toElement(data: z.output<typeof elementBlock>): Omit<CatalogueElement, "spreads"> {
  const { name, "most flow": mostFlow, volume, price, labour } = data;
  const filter = toFilter(data as FilterData, name);
  return given({ name, filter, mostFlow, volume, price, labour });
}
