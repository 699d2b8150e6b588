import { life as followLife, fuelState, SupplyModel } from "@thirstline/core";
import { build, type CatalogueElement, type System } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { supplyOf } from "../../check/supplyOf.js";
import { factsOf } from "../../life/factsOf.js";
import { likely } from "../../life/Guess.js";
import { lawOf } from "../../life/lawOf.js";
import { captureBy } from "../captureBetween.js";
import type { SizeFailure } from "./SizeAnswer.js";
import type { StagePart } from "./StagePart.js";
import { arranged, type Stack } from "./stack.js";

/** Whether a system lasts an interval, by the whole life. */
export function lasts(system: System, interval: number): boolean {
  const facts = factsOf(system);
  return "given" in facts && followLife({ ...facts.given, horizon: interval }).end === null;
}

/** What is not known of an element, without which nothing can be promised of it. */
export function ownFault({ filter }: CatalogueElement, part: StagePart): SizeFailure | null {
  if (!captureBy(filter)) return "catch not known";
  return lawOf(filter, part.filter, likely, []) === null ? "capacity not known" : null;
}

/** Most flow through the stack over the temperatures, m3/s. */
export function mostFlows(stack: Stack, bore: number | null, temperatures: readonly number[]): number {
  const built = build(arranged(stack, { stages: [], bore }));
  const flows = temperatures.map((temperature) => {
    const fuel = fuelState(built.fuel, { temperature });
    const { total } = demandAt(built, fuel, null);
    if (stack.side === "delivery") return total;
    return new SupplyModel(supplyOf(built), { fuel, passage: "smooth", end: "middle" }).suctionFlow(total);
  });
  return Math.max(...flows);
}
