import { type BandEnd, type Circuit, type FuelState, LEAST_IN_HAND, type LimitName, solve } from "@thirstline/core";
import { build, type CatalogueElement } from "@thirstline/spec/system";
import { type Pumped, PumpedFlow } from "./PumpedFlow.js";
import { circuitOf, isSpread, type Judged } from "./SupplyGate.js";
import { type Stack, withParts } from "./stack.js";

/** One fuel state at one end of the bands, and its flows under both readings of the passage to turbulence. */
interface State {
  readonly linear: Float64Array;
  readonly quadratic: Float64Array;
  readonly flows: readonly [smooth: PumpedFlow, early: PumpedFlow];
}

/**
 * What `SupplyGate` is for a pump that slips and relieves to the tank. What such a pump moves hangs on the drops, and the
 * drops on what it moves, so no flow is known beforehand. But an element's drop is a Q + b Q² under one fuel state, sums of
 * a and b tell the drop of any arrangement at any flow, and the pump's flow lies where the drop, which rises with it, meets
 * what the pump can draw, which falls: `PumpedFlow` finds it.
 */
export class SlipGate {
  private readonly states: readonly State[];
  /** how many of them, the first, are the likely ones, which rank; the rest judge, or the same where nothing is spread */
  private readonly likely: number;
  private readonly judging: number;

  private constructor(states: readonly State[], likely: number) {
    this.states = states;
    this.likely = likely;
    this.judging = states.length > likely ? likely : 0;
  }

  static of(
    stack: Stack,
    bore: number | null,
    given: { readonly temperatures: readonly number[]; readonly elements: readonly CatalogueElement[] },
  ): SlipGate {
    const builts = given.elements.map(({ filter }) => circuitOf(stack, filter));
    const spread = builts.some(isSpread) || isSpread(build(withParts(stack, [], bore)));
    const ends: BandEnd[] = spread ? ["middle", "low", "high"] : ["middle"];
    const circuits = builts.map(({ suction }) => suction);
    const states = ends.flatMap((end) =>
      given.temperatures.map((temperature): State => {
        const smooth = PumpedFlow.of(stack, bore, { temperature, end, passage: "smooth" });
        const early = PumpedFlow.of(stack, bore, { temperature, end, passage: "early" });
        return { ...lawsOf(circuits, smooth.fuel, end), flows: [smooth, early] };
      }),
    );
    return new SlipGate(states, given.temperatures.length);
  }

  get none(): Float64Array {
    return new Float64Array(2 * this.states.length);
  }

  /** Sums of a and b with one stage more, state by state. */
  with(before: Float64Array, element: number, count: number): Float64Array {
    const sums = before.slice();
    this.states.forEach(({ linear, quadratic }, at) => {
      sums[2 * at] = (sums[2 * at] as number) + (linear[element] as number) / count;
      sums[2 * at + 1] = (sums[2 * at + 1] as number) + (quadratic[element] as number) / count ** 2;
    });
    return sums;
  }

  /** The suction limits that do not hold with 20 % in hand; the clean limit without any. */
  judge(sums: Float64Array): Judged {
    const broken = new Set<LimitName>();
    let close = false;
    for (let at = this.judging; at < this.states.length; at++) {
      const drop = lawOf(sums, at);
      for (const flow of (this.states[at] as State).flows) {
        for (const limit of flow.limits) {
          if (broken.has(limit)) continue;
          const fits = flow.fits(limit, drop, limit === "vacuum clean" ? 1 : 1 + LEAST_IN_HAND);
          if (fits === "no") broken.add(limit);
          else if (fits === "too close") close = true;
        }
      }
    }
    return { close, broken };
  }

  /** Most likely vacuum at the pump's inlet over the temperatures, Pa. */
  vacuum(sums: Float64Array): number {
    return this.states
      .slice(0, this.likely)
      .reduce((most, { flows: [smooth] }, at) => Math.max(most, smooth.vacuum(lawOf(sums, at))), -Infinity);
  }
}

function lawOf(sums: Float64Array, at: number): Pumped {
  return { linear: sums[2 * at] as number, quadratic: sums[2 * at + 1] as number };
}

/** The a and b of every element, found from its drop at two flows. */
function lawsOf(circuits: readonly Circuit[], fuel: FuelState, end: BandEnd): Omit<State, "flows"> {
  const flow = 1e-4;
  const laws = circuits.map((circuit) => {
    const { drop } = solve(circuit, fuel, { end });
    const [one, two] = [drop(flow), drop(2 * flow)];
    const quadratic = (two - 2 * one) / (2 * flow ** 2);
    return { linear: one / flow - quadratic * flow, quadratic };
  });
  return {
    linear: Float64Array.from(laws, ({ linear }) => linear),
    quadratic: Float64Array.from(laws, ({ quadratic }) => quadratic),
  };
}
