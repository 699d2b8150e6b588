import type { System, SystemFilter, SystemPart } from "@thirstline/spec/system";
import type { SheetFilter } from "../trial/Tried.js";
import type { Example } from "./Example.js";
import { mapParts, partsIn } from "./parts.js";

/** An element that fits a filter's body: what it lets through and what it catches. */
export type Element = Pick<SystemFilter, "medium" | "area" | "betas" | "capacityTest" | "terminalDrop">;

/** A choice of element for every filter of one or several names. */
export interface ElementChoice {
  readonly label: string;
  readonly elements: ReadonlyMap<string, Element>;
  readonly fitted: boolean;
}

/** Elements of a finer or coarser kind that the demonstration systems hold for filters of these names; empty for none. */
export function elementChoices(system: System, examples: readonly Example[]): ElementChoice[] {
  const own = filtersOf(system);
  const found = new Map<string, Map<string, Element>>();
  for (const example of examples) {
    const theirs = filtersOf(example.system).filter(({ name }) => own.some((filter) => filter.name === name));
    if (theirs.length === 0 || !sameMachine(system, example.system)) continue;
    const elements = new Map(theirs.map((filter) => [filter.name, elementOf(filter)]));
    found.set(JSON.stringify([...elements]), elements);
  }
  if (found.size < 2) return [];
  return theOnesThatDiffer([...found.values()])
    .sort((a, b) => sizeOf(b) - sizeOf(a))
    .map((elements, at, all) => ({
      label: labelOf(elements, at, all.length),
      elements,
      fitted: own.every((filter) => !elements.has(filter.name) || same(elements.get(filter.name), filter)),
    }));
}

/** Choices without the filters that are the same in all of them. */
function theOnesThatDiffer(choices: readonly ReadonlyMap<string, Element>[]): ReadonlyMap<string, Element>[] {
  const kinds = (name: string) => new Set(choices.map((one) => JSON.stringify(one.get(name))));
  return choices.map((one) => new Map([...one].filter(([name]) => kinds(name).size > 1)));
}

/** The system with those elements in its filters. */
export function withElements(system: System, elements: ReadonlyMap<string, Element>): System {
  return mapParts(system, (part) => {
    const element = part.part === "filter" ? elements.get(part.name) : undefined;
    if (part.part !== "filter" || element === undefined) return part;
    const {
      medium: _,
      area: __,
      betas: ___,
      capacityTest: ____,
      terminalDrop: _____,
      tried: ______,
      ...body
    } = part as SheetFilter;
    return { ...body, ...element };
  });
}

function filtersOf(system: System): SystemFilter[] {
  return partsIn(system).filter((part): part is SystemFilter => part.part === "filter");
}

function elementOf({ medium, area, betas, capacityTest, terminalDrop }: SystemFilter): Element {
  const given = { medium, area, betas, capacityTest, terminalDrop };
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as unknown as Element;
}

/** Demonstrations of one machine differ in elements only: their parts have the same names. */
function sameMachine(a: System, b: System): boolean {
  const names = (system: System) => partsIn(system).map((part: SystemPart) => part.name);
  return names(a).some((name) => names(b).includes(name)) && filtersOf(b).every(({ name }) => names(a).includes(name));
}

function same(element: Element | undefined, filter: SystemFilter): boolean {
  return element !== undefined && JSON.stringify(element) === JSON.stringify(elementOf(filter));
}

/** The largest size the coarsest filter is rated at, m: what tells the choices apart. */
function sizeOf(elements: ReadonlyMap<string, Element>): number {
  return Math.max(0, ...[...elements.values()].map(({ betas }) => betas?.at(-1)?.size ?? 0));
}

function labelOf(elements: ReadonlyMap<string, Element>, at: number, of: number): string {
  const microns = `${Number((sizeOf(elements) * 1e6).toPrecision(3))} µm`;
  if (at === 0) return `Own prefilter, ${microns}`;
  return at === of - 1 ? `Finer prefilter, ${microns}` : `Between, ${microns}`;
}
