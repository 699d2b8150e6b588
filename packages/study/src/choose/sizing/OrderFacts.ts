import { dirtierThan, life as followLife, type LifeGiven, parseCode, type SoilElement } from "@thirstline/core";
import { build, type CatalogueElement, type System } from "@thirstline/spec/system";
import { cleanlinessOf } from "../../life/cleanlinessOf.js";
import { factsOf, type LifeFacts } from "../../life/factsOf.js";
import { leastPumped, mostPumped } from "./pumpedEnds.js";
import { arranged, type Stack, stageName } from "./stack.js";

/** Soil caught by the end of the interval, kg. */
export interface Caught {
  /** by each stage as a whole */
  readonly stages: readonly number[];
  /** by the other elements of the system, by name */
  readonly others: ReadonlyMap<string, number>;
}

/** What one order of elements catches, however many of each stand side by side. */
export interface OrderFacts {
  /** ISO 4406 code at the injection pump or engine */
  readonly code: string;
  /** what is caught by the end of the interval, at least and at most; null where more than sums decides it */
  readonly caught: { readonly least: Caught; readonly most: Caught } | null;
  /** every element as it is followed, by name; a stage by the name of its first */
  readonly elements: ReadonlyMap<string, SoilElement>;
}

/**
 * What an order of elements catches. Branches of equal elements share flow and soil evenly and keep doing so as they fill,
 * so what a stage catches depends neither on how many there are nor on how restricted they have become: a stage of one,
 * which never fills, is followed in its place. A pump that slips and relieves to the tank moves the less the more restricted
 * they are; then what it can move at most and at least tells what they catch at most and at least.
 *
 * @param additive whether that holds of the rest of the system too
 */
export function orderFacts(
  stack: Stack,
  elements: readonly CatalogueElement[],
  interval: number,
  additive: boolean,
): OrderFacts {
  const system = arranged(stack, { stages: elements.map((element) => ({ element, count: 1 })), bore: null });
  const facts = factsOf(system) as LifeFacts;
  const { given } = facts;
  const followed = new Map(given.elements.map((element) => [element.name, element]));
  const code = cleanlinessOf(system, given).cleanliness.at(-1)?.code ?? "";
  const wet = given.elements.some(({ swells }) => swells);
  if (!additive || wet) return { code, caught: null, elements: followed };
  const names = elements.map((_, at) => stageName(at + 1, 1));
  const caughtOf = (own: LifeGiven): Caught => {
    const last = followLife(never(own, interval)).moments.at(-1);
    const caught = new Map(own.elements.map(({ name }, at) => [name, last?.soil[at] ?? 0]));
    return {
      stages: names.map((name) => caught.get(name) ?? 0),
      others: new Map([...caught].filter(([name]) => !names.includes(name))),
    };
  };
  if (!slipsToTank(system)) {
    const caught = caughtOf(given);
    return { code, caught: { least: caught, most: caught }, elements: followed };
  }
  const [atLeast, atMost] = [caughtOf(leastPumped(given)), caughtOf(mostPumped(given))];
  return {
    code,
    // The more goes round, the more the suction side takes of it, and the less it leaves to what stands behind the pump.
    caught: {
      least: { stages: atLeast.stages, others: atMost.others },
      most: { stages: atMost.stages, others: atLeast.others },
    },
    elements: followed,
  };
}

/** A life in which nothing fills and no limit is met: soil only gathers. */
function never({ terminals: _, ...given }: LifeGiven, horizon: number): LifeGiven {
  const [point] = given.points;
  const fuel = { ...(point as LifeGiven["points"][number]).fuel, vapourPressure: -1e15 };
  return {
    ...given,
    elements: given.elements.map((element) => ({ ...element, law: null })),
    points: [{ fuel, demand: 1e-12 }],
    limits: { feedPressure: -1e15 },
    horizon,
  };
}

/** Whether fuel of one code is as clean as another asks. */
export function keeps(code: string, asked: string): boolean {
  return dirtierThan(parseCode(code), parseCode(asked)).length === 0;
}

/**
 * Whether sums tell how long a system's arrangements last: new elements on the suction side of one tank or several without
 * filters, all others in a row behind the pump, and no terminal drops there.
 */
export function isAdditive(stack: Stack): boolean {
  const { side, system } = stack;
  if (side !== "suction") return false;
  const behind = system.delivery ?? [];
  const simple = behind.every((part) => part.part !== "bank" && !(part.part === "filter" && part.terminalDrop));
  return simple && system.tanks.every(({ path }) => path.every(({ part }) => part !== "filter" && part !== "bank"));
}

/** Whether the pump's own flow depends on what it has to draw against: then no flow is known before the drops are. */
export function slipsToTank({ pump }: System): boolean {
  return pump.kind === "fixed" && pump.reliefTo === "tank" && pump.slip !== undefined;
}

/** The filters of the delivery side as core has them: resistance, 1/m3, by name. */
export function resistances(system: System): ReadonlyMap<string, number> {
  const { delivery } = build(system);
  const items = delivery?.kind === "series" ? delivery.items : delivery ? [delivery] : [];
  return new Map(
    items.flatMap((item) => (item.kind === "filter" ? [[item.name ?? "", item.medium.linear.middle] as const] : [])),
  );
}
