import { readFileSync } from "node:fs";
import {
  dirtierThan,
  life as followLife,
  fuelState,
  judge,
  parseCode,
  type Supply,
  SupplyModel,
  tank,
} from "@thirstline/core";
import { readCatalogue, readSystem } from "@thirstline/spec";
import { build, type CatalogueElement, type System, type SystemFilter, type SystemPart } from "@thirstline/spec/system";
import { type SizeAnswer, type SizeOptions, sizeSteps } from "@thirstline/study";
import { cleanlinessOf } from "../../../packages/study/src/life/cleanlinessOf.js";
import { factsOf } from "../../../packages/study/src/life/factsOf.js";

// Every arrangement, built and judged one by one with nothing but the whole model: what `size` must agree with.

const demo = new URL("../../../packages/spec/demo/", import.meta.url);

/** A demonstration system. */
export function demoSystem(name: string): System {
  const read = readSystem(readFileSync(new URL(`${name}.yaml`, demo)), { file: name });
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.system;
}

/** A demonstration catalogue: "elements.csv", or one of the single elements. */
export function demoElements(file: string): readonly CatalogueElement[] {
  const read = readCatalogue(readFileSync(new URL(file, demo)), { file });
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.elements;
}

/** `sizeSteps` to its end. */
export function sized(system: System, elements: readonly CatalogueElement[], options: SizeOptions): SizeAnswer {
  const steps = sizeSteps(system, elements, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** One arrangement as brute force sees it. */
export interface Tried {
  /** such as "A x2, B x1, bore 0.019" */
  readonly name: string;
  /** what it fails by first; null where it meets every limit */
  readonly by: string | null;
}

/** A random element: mostly tested, now and then with something left open, estimated, or with a limit of its own. */
export function anElement(random: () => number, name: string): CatalogueElement {
  const between = (low: number, high: number) => low * (high / low) ** random();
  const flow = 200e-3 / 3600;
  const fluid = { dynamicViscosity: 2.49e-3, density: 830 };
  const drop = between(500, 40e3);
  const size = between(4e-6, 25e-6);
  const filter: SystemFilter = {
    part: "filter",
    name,
    medium:
      random() < 0.15
        ? { by: "rating", size: between(8e-6, 40e-6), kind: "nominal", area: between(0.1, 2), thickness: 6e-4 }
        : {
            by: "flow test",
            points:
              random() < 0.5
                ? [{ drop, flow }]
                : [
                    { drop, flow },
                    { drop: drop * 2.4, flow: 2 * flow },
                  ],
            ...fluid,
          },
    blocked: false,
    reversed: false,
    ...(random() < 0.1
      ? {}
      : {
          betas: [
            { size, beta: between(1.5, 20) },
            { size: size * 2.5, beta: 75 },
          ],
        }),
    ...(random() < 0.1 ? {} : { capacityTest: { soil: between(2e-3, 0.3), rise: 35e3, flow, ...fluid } }),
    ...(random() < 0.1 ? { terminalDrop: between(5e3, 80e3) } : {}),
  };
  const priced = random() < 0.9 ? { price: Math.round(between(5, 90)) } : {};
  return { name, filter, spreads: [], ...priced, ...(random() < 0.3 ? { mostFlow: between(0.5, 4) * flow } : {}) };
}

/** Every arrangement of elements in the place of a system's first filter or bank on the suction side. */
export function triedAll(
  system: System,
  elements: readonly CatalogueElement[],
  given: { readonly parallel: number; readonly stages: number; readonly bores: readonly (number | null)[] } & {
    readonly temperatures: readonly number[];
    readonly interval: number;
    readonly code: string;
  },
): Tried[] {
  const options = elements.flatMap((element) =>
    Array.from({ length: given.parallel }, (_, at) => ({ element, count: at + 1 })),
  );
  const tried: Tried[] = [];
  const visit = (bore: number | null, stages: (typeof options)[number][], failed: string | null) => {
    for (const option of options) {
      const own = [...stages, option];
      // What a beginning fails by stays with all that begins so.
      const before = failed ?? prefixFault(system, own, bore, given.temperatures);
      const by = before ?? wholeFault(system, own, bore, given);
      const name = own.map(({ element, count }) => `${element.name} x${count}`).join(", ");
      tried.push({ name: bore === null ? name : `${name}, bore ${bore}`, by });
      if (own.length < given.stages) visit(bore, own, before);
    }
  };
  for (const bore of given.bores) visit(bore, [], null);
  return tried;
}

type Stages = readonly { readonly element: CatalogueElement; readonly count: number }[];

function prefixFault(system: System, stages: Stages, bore: number | null, temperatures: readonly number[]) {
  const { element, count } = stages.at(-1) as Stages[number];
  const { betas, capacityTest, area, medium } = element.filter;
  if (!betas) return "catch not known";
  if (!capacityTest && area === undefined && !("area" in medium)) return "capacity not known";
  const built = build(inPlace(system, stages, bore));
  const broken = new Set<string>();
  let most = 0;
  for (const temperature of temperatures) {
    const fuel = fuelState(built.fuel, { temperature });
    const { burn, return: back } = built.demand(fuel);
    const supply = lowSupply(built);
    const { lowEnd, highEnd } = judge(supply, fuel, built.limits, burn + back);
    for (const { limit, inHand } of [...lowEnd.ceilings, ...highEnd.ceilings]) {
      if (inHand < (limit === "vacuum clean" ? 0 : 0.2)) broken.add(limit);
    }
    // What the line would carry with no element in the way.
    const open = lowSupply(build(inPlace(system, [], bore)));
    const carried = new SupplyModel(open, { fuel, passage: "smooth", end: "middle" }).suctionFlow(burn + back);
    most = Math.max(most, carried);
  }
  if (element.mostFlow !== undefined && most / count > element.mostFlow) return "most flow";
  const order = ["pump capacity", "vacuum clean", "vacuum at change", "feed pressure", "vapour"];
  return order.find((limit) => broken.has(limit)) ?? null;
}

function wholeFault(
  system: System,
  stages: Stages,
  bore: number | null,
  { code, interval }: { readonly code: string; readonly interval: number },
) {
  // The life itself, to the interval and no further: the answer about it looks ten years ahead, and takes ten times as long.
  const arranged = inPlace(system, stages, bore);
  const facts = factsOf(arranged);
  if ("reasons" in facts) throw new Error(JSON.stringify(facts.reasons));
  const found = cleanlinessOf(arranged, facts.given).cleanliness.at(-1)?.code ?? "";
  if (dirtierThan(parseCode(found), parseCode(code)).length > 0) return "cleanliness";
  return followLife({ ...facts.given, horizon: interval }).end ? "interval" : null;
}

function lowSupply(built: ReturnType<typeof build>): Supply {
  const { ambientPressure, suction, pump, delivery } = built;
  const tanks = built.tanks.map(({ depthLow, vent, path }) => tank({ depth: depthLow, vent, path }));
  return { ambientPressure, tanks, suction, pump, delivery };
}

/** The system with stages in place of the first filter or bank of its suction side, and every other one there left out. */
function inPlace(system: System, stages: Stages, bore: number | null): System {
  const isFilter = ({ part }: SystemPart) => part === "filter" || part === "bank";
  const at = system.suction.findIndex(isFilter);
  const parts = stages.map(({ element: { filter }, count }, stage): SystemPart => {
    const named = (branch: number) => ({ ...filter, name: `s${stage} b${branch}` });
    if (count === 1) return named(0);
    return { part: "bank", name: `s${stage}`, branches: Array.from({ length: count }, (_, branch) => [named(branch)]) };
  });
  const { spreads: _, ...rest } = system;
  const suction = [
    ...system.suction.slice(0, at),
    ...parts,
    ...system.suction.slice(at).filter((one) => !isFilter(one)),
  ];
  return {
    ...rest,
    suction: suction.map((part) =>
      bore !== null && (part.part === "line" || part.part === "fitting") ? { ...part, bore } : part,
    ),
  };
}
