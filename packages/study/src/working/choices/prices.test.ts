import type { CatalogueElement } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { hourlyRate, priceOf, stoppageCost, workOf } from "./prices.js";

const element = { name: "element P10", price: 40, labour: 900 } as unknown as CatalogueElement;

test("what an element and its work cost is the catalogue's to say, and what an hour and a stoppage cost the asker's", () => {
  const steps = [priceOf(element), workOf(element), hourlyRate({ labourRate: 60 }), stoppageCost({ stoppage: 2000 })];
  expect(stepLines(steps.flatMap((step) => step ?? []))).toEqual([
    'price of element P10 (SI, catalogue currency) | source the element catalogue, "element P10" | 40',
    'work of changing element P10 (running time, s) | source the element catalogue, "element P10" | 900',
    "cost of an hour of work (SI, catalogue currency) | asked labour | 60",
    "cost of one stoppage (SI, catalogue currency) | asked stoppage | 2000",
  ]);
});

test("what nobody says has no step, and is not taken for nothing", () => {
  const bare = { name: "element P10" } as unknown as CatalogueElement;
  expect([priceOf(bare), workOf(bare), hourlyRate({}), stoppageCost({})]).toEqual([null, null, null, null]);
  expect(stoppageCost({ stoppage: 0 })?.value).toBe(0);
});
