import { type FuelState, fuelState, type Supply, SupplyModel, tank } from "@thirstline/core";
import type { Built, GaugeReading } from "@thirstline/spec/system";
import type { Instant } from "./Instant.js";
import { usualNoise } from "./noise.js";
import { RatioTable } from "./RatioTable.js";
import type { Timed } from "./runOf.js";
import type { SidePath } from "./SidePath.js";

/** Which gauge: the vacuum at the lift pump, or the pressure at the injection pump. */
export type GaugeSide = "suction" | "delivery";

/** What readings are worked out from. */
export interface InstantFacts {
  readonly built: Built;
  readonly path: SidePath;
  /** resistance over clean of the elements of the other side at a running time, s */
  readonly others: (time: number) => ReadonlyMap<string, number>;
  /** a gauge's error, Pa, one standard deviation; null for the usual one */
  readonly gaugeError: number | null;
}

/** Vacuum beyond which no model goes on, Pa: more than the air presses. */
const LIMIT = 2e5;

/** The readings of one gauge with what the model makes of each. */
export function instantsOf(side: GaugeSide, readings: readonly Timed[], facts: InstantFacts): Instant[] {
  return readings.flatMap(({ reading, time }): Instant[] => {
    const read = readOf(side, reading, facts.built.pump.kind === "none");
    return read === undefined ? [] : [instantOf(side, { reading, time }, read, facts)];
  });
}

/** With no pump there is one gauge, at the engine, that may be noted either way. */
function readOf(side: GaugeSide, { vacuum, feedPressure }: GaugeReading, gravity: boolean): number | undefined {
  const feed = feedPressure === undefined ? undefined : -feedPressure;
  if (gravity) return side === "suction" ? (vacuum ?? feed) : undefined;
  return side === "suction" ? vacuum : feed;
}

function instantOf(side: GaugeSide, { reading, time }: Timed, read: number, facts: InstantFacts): Instant {
  const { built, path, others, gaugeError } = facts;
  const temperature = reading.temperature ?? built.temperature;
  const fuel = fuelState(built.fuel, { temperature });
  const model = new SupplyModel(supplyAt(built, reading.depth), { fuel, passage: "smooth", end: "middle" });
  const demand = demandOf(reading, built, fuel);
  const beside = others(time);
  const vacuumOf = (flow: number) => held(model.vacuum(model.suctionFlow(flow)));
  const table = new RatioTable((factor, ratio) => {
    model.restrict(new Map([...beside, ...path.at(ratio)]));
    if (side === "suction") return vacuumOf(demand * factor);
    const { feedPressure, vacuum } = model.state(demand * factor);
    // The vacuum that was read stands in for the reckoned one: what the suction side does is then no matter here.
    const known = reading.vacuum === undefined || followsRelief(built) ? 0 : held(vacuum) - reading.vacuum;
    return held(-(feedPressure ?? 0) - known);
  });
  const noted = reading.load !== undefined || reading.flow !== undefined;
  const off = usualNoise.temperature[reading.temperature === undefined ? "taken" : "noted"];
  const gauge = gaugeError ?? usualNoise.gauge;
  return {
    reading,
    time,
    read,
    table,
    temperature,
    noise: {
      // Two gauges are read where the vacuum stands in for the suction side.
      gauge: side === "delivery" && reading.vacuum !== undefined ? gauge * Math.SQRT2 : gauge,
      demand: usualNoise.demand[noted ? "noted" : "taken"],
      viscosity: Math.abs(Math.log(viscosityAt(built, temperature + off) / viscosityAt(built, temperature))),
    },
  };
}

/** A pump whose relief goes to the tank holds its outlet whatever its inlet does. */
function followsRelief({ pump }: Built): boolean {
  return pump.kind === "fixed" && pump.reliefTo === "tank";
}

/** A supply with its tanks at a noted level, or half-way between full and low. */
export function supplyAt(built: Built, depth: number | undefined): Supply {
  return {
    ambientPressure: built.ambientPressure,
    tanks: built.tanks.map(({ name, depthFull, depthLow, vent, path }) =>
      tank({ name, depth: depth ?? (depthFull + depthLow) / 2, vent, path }),
    ),
    suction: built.suction,
    pump: built.pump,
    delivery: built.delivery,
  };
}

/** Demand at a reading, burn and return together, m3/s; full where nobody noted it. */
function demandOf({ load = 1, flow }: GaugeReading, built: Built, fuel: FuelState): number {
  const { burn, return: back } = built.demand(fuel);
  return flow ?? load * (burn + back);
}

function viscosityAt({ fuel }: Built, temperature: number): number {
  const { density, kinematicViscosity } = fuelState(fuel, { temperature });
  return density * kinematicViscosity;
}

function held(pressure: number): number {
  return Number.isFinite(pressure) ? Math.max(-50 * LIMIT, Math.min(50 * LIMIT, pressure)) : 50 * LIMIT;
}
