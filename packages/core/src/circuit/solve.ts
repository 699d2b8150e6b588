import type { FuelState } from "../fuel/index.js";
import { InputError } from "../InputError.js";
import type { BandEnd } from "../parts/Band.js";
import type { Passage } from "../parts/friction/index.js";
import type { Setting } from "../parts/law/index.js";
import { requireFinite } from "../require.js";
import type { Circuit } from "./Circuit.js";
import { compile } from "./compile.js";
import { type ProfileEntry, profileOf } from "./profile.js";

/** Which reading of what is uncertain to solve with. */
export interface SolveOptions {
  /** between laminar and turbulent flow: `smooth` (usual) or `early`, turbulent from Re 2300, the worse case */
  readonly passage?: Passage;
  /** which end of every band; `middle` when left out */
  readonly end?: BandEnd;
}

/** A circuit under one fuel state. */
export interface Solved {
  /** Pa lost from end to end, head included, at a flow in m3/s; Infinity where the circuit is shut */
  readonly drop: (flow: number) => number;
  /** m3/s that a drop in Pa, head included, drives; 0 where the circuit is shut */
  readonly flow: (drop: number) => number;
  /** fills `into` with the drops, Pa, at `flows`, m3/s; see `sweep` */
  readonly drops: (flows: Float64Array, into: Float64Array) => void;
  /** every part at a flow in m3/s, in the order the fuel meets them */
  readonly profile: (flow: number) => ProfileEntry[];
  /** whether nothing can pass at all */
  readonly shut: boolean;
}

/**
 * Solves a circuit under one fuel state. The drop never falls as flow grows, so each drop has one flow: `flow` undoes
 * `drop` to 1e-10 of the flow, and to what one rounding of the drop is worth where friction is small beside the head.
 *
 * Steady flow of a liquid that fills its lines. Every search is bracketed and ends; nothing can "not converge".
 *
 * @param circuit a part, or `series` and `parallel` of them
 * @param fuel density, kg/m3, and kinematic viscosity, m2/s, from `fuelState`
 * @param options see `SolveOptions`
 * @throws InputError when an option is none of its words; from the three functions, when flow or drop is not a finite number
 * @example
 * solve(line({ length: 1, bore: 0.008, roughness: 0 }), petrol).drop(3e-6) // 13.428698323378667
 */
export function solve(circuit: Circuit, fuel: FuelState, options: SolveOptions = {}): Solved {
  const { passage = "smooth", end = "middle" } = options;
  requireOneOf("passage", passage, ["smooth", "early"]);
  requireOneOf("end", end, ["low", "middle", "high"]);
  const setting: Setting = { fuel, passage, end };
  const { run, stops } = compile(circuit, setting);
  return {
    drop(flow) {
      requireFinite("drop", "flow", flow, "m3/s");
      return run.at(flow);
    },
    flow(drop) {
      requireFinite("flow", "drop", drop, "Pa");
      return run.flowAt(drop);
    },
    drops(flows, into) {
      for (let at = 0; at < flows.length; at++) {
        // Through the run's fields, so that no number is allocated on the way.
        run.flow = flows[at] as number;
        run.update("whole");
        into[at] = run.constant + run.drop;
      }
    },
    profile(flow) {
      requireFinite("profile", "flow", flow, "m3/s");
      return profileOf(stops, fuel, flow);
    },
    shut: run.shut,
  };
}

/** Plain JavaScript may hand over any word, and a wrong one would quietly count as another. */
function requireOneOf(path: string, value: string, words: readonly string[]): void {
  if (!words.includes(value)) throw new InputError("solve", path, `one of ${words.join(", ")}`, value);
}
