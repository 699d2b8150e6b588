import {
  atmosphere,
  type Circuit,
  type Fuel,
  type FuelState,
  type Limits,
  type Pump,
  type Vent,
} from "@thirstline/core";
import type { System, SystemPump } from "../system/index.js";
import { demandOf } from "./demandOf.js";
import { toCircuit } from "./toCircuit.js";
import { toFuel } from "./toFuel.js";

/** A tank as the core sees it, at both levels. */
export interface BuiltTank {
  readonly name: string;
  /** fuel over the pick-up when full, m */
  readonly depthFull: number;
  /** fuel over the pick-up when low, m */
  readonly depthLow: number;
  readonly vent: Vent;
  /** from the pick-up to where several tanks join; null for the only tank */
  readonly path: Circuit | null;
}

/** A system as values of the core. */
export interface Built {
  readonly fuel: Fuel;
  /** of the fuel, K */
  readonly temperature: number;
  /** above the sea, m */
  readonly altitude: number;
  /** air pressure at the machine's altitude, Pa absolute */
  readonly ambientPressure: number;
  /** one or more */
  readonly tanks: readonly BuiltTank[];
  readonly suction: Circuit;
  readonly pump: Pump;
  /** null when not stated */
  readonly delivery: Circuit | null;
  /** as stated; what is left out was not */
  readonly limits: Limits & { readonly source?: string };
  /** burn and return, m3/s, with fuel in a state: a burn stated by power is a mass, whose volume follows density */
  readonly demand: (state: FuelState) => { readonly burn: number; readonly return: number };
}

/**
 * Makes core's values of a system: the only way from a file's data into the physics.
 *
 * @param system from `readSystem`, or made by a program in the same form
 * @throws InputError of the core, naming the field, for a system no file could hold
 * @example
 * const { suction, fuel, temperature } = build(system);
 * solve(suction, fuelState(fuel, { temperature })).drop(9.4e-5) // Pa
 */
export function build(system: System): Built {
  return {
    fuel: toFuel(system.fuel),
    temperature: system.temperature,
    altitude: system.altitude,
    // Altitude as maps and gauges give it, above the sea.
    ambientPressure: atmosphere(system.altitude, "geometric"),
    tanks: system.tanks.map((tank) => ({
      name: tank.name,
      depthFull: tank.fullDepth,
      depthLow: tank.lowDepth,
      vent: tank.vent,
      path: tank.path.length === 0 ? null : toCircuit(tank.path),
    })),
    suction: toCircuit(system.suction),
    pump: toPump(system.pump),
    delivery: system.delivery === undefined ? null : toCircuit(system.delivery),
    limits: system.limits,
    demand: demandOf(system.demand),
  };
}

function toPump(given: SystemPump): Pump {
  return given.kind === "fixed" ? { ...given, slip: given.slip ?? null } : given;
}
