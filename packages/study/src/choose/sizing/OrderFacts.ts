import { dirtierThan, life as followLife, type LifeGiven, parseCode, type SoilElement } from "@thirstline/core";
import { build, type CatalogueElement, type System } from "@thirstline/spec/system";
import { cleanlinessOf } from "../../life/cleanlinessOf.js";
import { factsOf, type LifeFacts } from "../../life/factsOf.js";
import { arranged, type Stack, stageName } from "./stack.js";

/** What one order of elements catches, however many of each stand side by side. */
export interface OrderFacts {
  /** ISO 4406 code at the injection pump or engine */
  readonly code: string;
  /** soil that each stage as a whole has caught at the end of the interval, kg; null where more than sums decides it */
  readonly soil: readonly number[] | null;
  /** what the other elements of the system have caught by then, kg by name */
  readonly others: ReadonlyMap<string, number>;
  /** every element as it is followed, by name; a stage by the name of its first */
  readonly elements: ReadonlyMap<string, SoilElement>;
}

/**
 * What an order of elements catches. Branches of equal elements share flow and soil evenly and keep doing so as they fill,
 * so what a stage catches depends neither on how many there are nor on how restricted they have become: a stage of one,
 * which never fills, is followed in its place.
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
  if (!additive || wet) return { code, soil: null, others: new Map(), elements: followed };
  const { moments } = followLife(never(given, interval));
  const last = moments.at(-1);
  const caught = new Map(given.elements.map(({ name }, at) => [name, last?.soil[at] ?? 0]));
  const stages = elements.map((_, at) => stageName(at + 1, 1));
  return {
    code,
    soil: stages.map((name) => caught.get(name) ?? 0),
    others: new Map([...caught].filter(([name]) => !stages.includes(name))),
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
 * filters, all others in a row behind the pump, no terminal drops there, and flows that do not depend on restriction.
 */
export function isAdditive(stack: Stack): boolean {
  const { side, system } = stack;
  if (side !== "suction" || slipsToTank(system)) return false;
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
