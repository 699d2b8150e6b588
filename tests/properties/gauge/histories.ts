import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  fuelState,
  type LoadingLawName,
  lawConstants,
  loadAtRatio,
  loadingLaw,
  marginsOf,
  resistanceRatio,
  SupplyModel,
  tank,
} from "@thirstline/core";
import { build, type GaugeReading, readSystem, type System } from "@thirstline/spec";

// Invented histories of a machine whose truth is known: what a mechanic would have noted at the ferry of the demonstration.
//
// How far what is noted is off, chosen before any fit was tried, each one standard deviation of a normal distribution: gauge
// 0.5 kPa, load noted 5 % off, fuel temperature 2 K off, each reading by itself; the file's demand 5 % off for a whole history.

const OFF = { gauge: 500, load: 0.05, temperature: 2, demand: 0.05 } as const;

const HOUR = 3600;

function normalOf(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function demo(name: string): System {
  const path = fileURLToPath(new URL(`../../../packages/spec/demo/${name}.yaml`, import.meta.url));
  const read = readSystem(readFileSync(path), { file: name });
  if ("faults" in read) throw new Error(`${name} cannot be read`);
  return read.system;
}

/** The ferry, its elements new at 11,400 h. */
export const heron = demo("heron");
/** The same with nothing known of when its elements were new. */
export const heronUnknown: System = { ...heron, service: { interval: 250 * HOUR } };
const built = build(heron);
const SUCTION = ["prefilter A", "prefilter B"];
const FINE = "fine filter";
export const NEW_AT = 11_400 * HOUR;

function modelAt(temperature: number, depth: number): SupplyModel {
  const supply = {
    ambientPressure: built.ambientPressure,
    tanks: built.tanks.map((one) => tank({ name: one.name, depth, vent: one.vent, path: one.path })),
    suction: built.suction,
    pump: built.pump,
    delivery: built.delivery,
  };
  return new SupplyModel(supply, { fuel: fuelState(built.fuel, { temperature }), passage: "smooth", end: "middle" });
}

function fullDemand(temperature: number): number {
  const { burn, return: back } = built.demand(fuelState(built.fuel, { temperature }));
  return burn + back;
}

/** Resistance over clean of the prefilters at which the first limit is met, coldest season, full demand, tank low. */
function ratioAtLimit(demandOff: number): number {
  const temperatures = [293.15, 281.15, 263.15, 288.15];
  const holds = (ratio: number) =>
    temperatures.every((temperature) => {
      const supply = modelAt(temperature, built.tanks[0]?.depthLow ?? 0).supply;
      const fuel = fuelState(built.fuel, { temperature });
      const model = new SupplyModel(supply, { fuel, passage: "early", end: "middle" });
      model.restrict(new Map([...SUCTION.map((name) => [name, ratio] as const), [FINE, 1]]));
      const demand = demandOff * fullDemand(temperature);
      return [...marginsOf(model, built.limits)].every(
        ([name, margin]) => name === "vacuum clean" || margin(demand) >= 0,
      );
    });
  let [low, high] = [1, 1000];
  for (let step = 0; step < 40; step++) {
    const middle = Math.sqrt(low * high);
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** How resistance grows with the share of a life: 1 at 0, the limit's at 1. */
export type Growth = (share: number) => number;

/** Growth by one of core's laws; a law of two constants has them mixed at random. */
export function lawGrowth(name: LoadingLawName, limit: number, random: () => number): Growth {
  const [first = "cake", second] = lawConstants[name];
  const mix = second === undefined ? 0 : 0.1 + 0.8 * random();
  const full = (single: typeof first) => loadAtRatio(loadingLaw(single, { [single]: 1 }), limit);
  const law = loadingLaw(name, {
    [first]: (1 - mix) * full(first),
    ...(second === undefined ? {} : { [second]: mix * full(second) }),
  });
  const end = loadAtRatio(law, limit);
  return (share) => resistanceRatio(law, Math.max(0, share) * end);
}

/** Growth by no law that is fitted. */
export const strange: Readonly<Record<string, (limit: number) => Growth>> = {
  // Nothing for the first third, as where an element is far too large for the dirt it gets; then evenly.
  "late onset": (limit) => (share) => 1 + (limit - 1) * Math.max(0, (share - 1 / 3) * 1.5),
  // Ever faster, as where the fuel gets dirtier all the time.
  "dirtier all the time": (limit) => (share) => 1 + (limit - 1) * share * share,
  // Fast and slow by turns, as where one delivery in two is dirty.
  "dirty by turns": (limit) => (share) => limit ** (share + (0.5 / (4 * Math.PI)) * Math.sin(4 * Math.PI * share)),
};

/** What is the matter with a machine besides soil. */
export type Trouble =
  | "none"
  | "jump"
  | "high when new"
  | "air or slip"
  | "air or slip later"
  | "cold"
  | "falls"
  | "falls slowly";

export interface History {
  readonly readings: readonly GaugeReading[];
  /** running time left from the last reading to the first limit, s */
  readonly left: number;
}

export interface HistoryGiven {
  readonly random: () => number;
  readonly growth: (limit: number, random: () => number) => Growth;
  readonly trouble?: Trouble;
  readonly withFeed?: boolean;
  readonly count?: number;
  /** share of the life gone at the last reading */
  readonly gone?: number;
}

/** A history: readings at loads from half to full and fuel from -5 to 25 degC, tank level noted. */
export function historyOf({ random, growth, trouble = "none", withFeed = false, ...given }: HistoryGiven): History {
  const demandOff = Math.exp(OFF.demand * normalOf(random));
  const limit = ratioAtLimit(demandOff);
  const grow = growth(limit, random);
  const life = 200 * HOUR * 10 ** random();
  const gone = given.gone ?? 0.35 + 0.55 * random();
  const count = given.count ?? 8 + Math.floor(33 * random());
  const shares = Array.from({ length: count }, random).sort((one, other) => one - other);
  const last = shares.at(-1) ?? 1;
  const eventAt = Math.floor(count * (0.35 + 0.3 * random()));
  const event = shares[eventAt] ?? 1;
  const sizes = {
    jump: 1.5 + 2 * random(),
    high: 2 + 3 * random(),
    part: 0.3 + 0.3 * random(),
    cold: 0.6 + 0.6 * random(),
  };
  const readings = shares.map((share, at): GaugeReading => {
    const part = (share / last) * gone;
    const temperature = 268.15 + 30 * random();
    const load = 0.5 + 0.5 * random();
    const depth = 0.2 + 0.9 * random();
    const model = modelAt(temperature, depth);
    const demand = demandOff * (1 + OFF.load * normalOf(random)) * load * fullDemand(temperature);
    let ratio = grow(part);
    if (trouble === "jump" && at >= eventAt) ratio += sizes.jump;
    if (trouble === "high when new") ratio += sizes.high;
    if (trouble === "cold") ratio *= 1 + (sizes.cold * Math.max(0, 283.15 - temperature)) / 10;
    // Late in the life of one element; it opens, or another is fitted and nobody notes it.
    if (trouble === "falls")
      ratio = at < eventAt ? grow((0.85 * share) / event) : grow((0.3 * (share - event)) / event);
    if (trouble === "falls slowly") ratio = 4 - (2.8 * share) / last;
    model.restrict(new Map([...SUCTION.map((name) => [name, ratio] as const), [FINE, 1 + 0.3 * (grow(part) - 1)]]));
    const airy = trouble === "air or slip" || (trouble === "air or slip later" && at >= eventAt);
    // Air in the line, or slip, takes part of the flow and of the pressure the pump makes.
    const state = model.state(airy ? demand * (1 - sizes.part) : demand);
    const feed = state.feedPressure ?? 0;
    const note = (value: number) => value + OFF.gauge * normalOf(random);
    return {
      row: at + 1,
      line: at + 2,
      hours: NEW_AT + part * life,
      vacuum: note(state.vacuum),
      ...(withFeed ? { feedPressure: note(airy ? feed - sizes.part * 60e3 : feed) } : {}),
      load,
      temperature: temperature + OFF.temperature * normalOf(random),
      depth,
      changed: false,
    };
  });
  return { readings, left: (1 - gone) * life };
}
