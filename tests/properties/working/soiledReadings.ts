import { fuelState, SupplyModel, tank } from "@thirstline/core";
import { build, type GaugeReading, type System } from "@thirstline/spec";
import { filtersIn } from "./filtersIn.js";

const HOUR = 3600;
/** Pa, to either side. */
const NOISE = 300;

/** What is noted besides hours and vacuum. */
export interface Noting {
  readonly count: number;
  /** resistance over clean at the last reading; it grows evenly from 1 */
  readonly end: number;
  readonly feed?: boolean;
  readonly bare?: boolean;
}

/** Invented readings of any machine: all its elements fill alike, from clean at the first reading on. */
export function soiledReadings(system: System, random: () => number, noting: Noting): GaugeReading[] {
  const built = build(system);
  const names = filtersIn(system);
  const { count, end, feed = false, bare = false } = noting;
  const hours = system.service?.last?.hours ?? 1000 * HOUR;
  const off = () => NOISE * (2 * random() - 1);
  return Array.from({ length: count }, (_, at): GaugeReading => {
    const share = at / (count - 1);
    const load = bare ? 1 : 0.6 + 0.4 * random();
    const temperature = bare ? built.temperature : built.temperature + 6 * random();
    const low = built.tanks[0]?.depthLow ?? 0;
    const full = built.tanks[0]?.depthFull ?? 0;
    const depth = bare ? (low + full) / 2 : low + (full - low) * random();
    const fuel = fuelState(built.fuel, { temperature });
    const supply = {
      ambientPressure: built.ambientPressure,
      tanks: built.tanks.map(({ name, vent, path }) => tank({ name, depth, vent, path })),
      suction: built.suction,
      pump: built.pump,
      delivery: built.delivery,
    };
    const model = new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" });
    model.restrict(new Map(names.map((name) => [name, 1 + (end - 1) * share])));
    const { burn, return: back } = built.demand(fuel);
    const state = model.state(load * (burn + back));
    return {
      row: at + 1,
      line: bare ? null : at + 2,
      hours: hours + 20 * HOUR * (at + 0.5),
      vacuum: state.vacuum + off(),
      ...(feed && state.feedPressure !== null ? { feedPressure: state.feedPressure + off() } : {}),
      ...(bare ? {} : { load, temperature, depth }),
      changed: false,
    };
  });
}
