import { type BandEnd, type LimitName, solve } from "@thirstline/core";
import { type Built, build, type CatalogueElement, type SystemPart } from "@thirstline/spec/system";
import { type Condition, conditionsAt } from "./conditionsAt.js";
import { fits } from "./freeDrop.js";
import { type Stack, withParts } from "./stack.js";

/** What sums tell of an arrangement: the limits that do not hold, and whether any came too close to call. */
export interface Judged {
  readonly close: boolean;
  readonly broken: ReadonlySet<LimitName>;
}

/**
 * Whether stages of equal elements leave every limit held, by sums: at one flow the stages' drops add up, branches of equal
 * elements share the flow evenly, and each limit has so much room for drops at that place of the path, found once with a
 * head there in place of elements. Exact, save within a hundredth of a Pa of a limit, where the whole model is to be asked.
 */
export class SupplyGate {
  readonly conditions: readonly Condition[];
  /** drop at the conditions' flows, Pa: by element, count and condition */
  private readonly drops: Float64Array[][];

  constructor(conditions: readonly Condition[], drops: Float64Array[][]) {
    this.conditions = conditions;
    this.drops = drops;
  }

  /** Of a stack with lines of a bore; `ends` are the ends of bands to judge at. */
  static of(
    stack: Stack,
    bore: number | null,
    given: {
      readonly temperatures: readonly number[];
      readonly elements: readonly CatalogueElement[];
      readonly counts: number;
    },
  ): SupplyGate {
    const parts = given.elements.map(({ filter }) => circuitOf(stack, filter));
    const spread = parts.some((circuit) => isSpread(circuit)) || isSpread(build(withParts(stack, [], bore)));
    const ends: BandEnd[] = spread ? ["low", "high"] : ["middle"];
    const conditions = ends.flatMap((end) =>
      given.temperatures.flatMap((temperature) => conditionsAt(stack, bore, temperature, end)),
    );
    const drops = parts.map((circuit) => {
      const solved = new Map<string, (flow: number) => number>();
      return Array.from({ length: given.counts }, (_, at) =>
        Float64Array.from(conditions, ({ temperature, fuel, end, flow }) => {
          const key = `${temperature} ${end}`;
          const drop = solved.get(key) ?? solve(circuit.suction, fuel, { end }).drop;
          solved.set(key, drop);
          return drop(flow / (at + 1));
        }),
      );
    });
    return new SupplyGate(conditions, drops);
  }

  /** Drops with one stage more, Pa by condition. */
  with(before: Float64Array, element: number, count: number): Float64Array {
    const own = this.drops[element]?.[count - 1] as Float64Array;
    return before.map((drop, at) => drop + (own[at] as number));
  }

  /** No stage at all. */
  get none(): Float64Array {
    return new Float64Array(this.conditions.length);
  }

  /** The limits that do not hold with so much drop. */
  judge(drops: Float64Array): Judged {
    let close = false;
    const broken = new Set<LimitName>();
    this.conditions.forEach(({ free }, at) => {
      for (const [limit, room] of free) {
        const own = fits(drops[at] as number, room);
        if (own === "no") broken.add(limit);
        else if (own === "too close") close = true;
      }
    });
    return { close, broken };
  }
}

/** Whether a system's parts are known by bands. */
export function isSpread(built: Built): boolean {
  const text = JSON.stringify([built.tanks, built.suction, built.delivery], (key, value) =>
    key === "linear" && value.low !== value.high ? "spread" : value,
  );
  return text.includes('"spread"') || text.includes('"strainer"');
}

/** One filter by itself as core has it. */
export function circuitOf({ system }: Stack, filter: SystemPart): Built {
  const { delivery: _, ...rest } = system;
  return build({ ...rest, suction: [filter] });
}
