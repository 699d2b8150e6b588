import { fuelState, type Limits, SupplyModel } from "@thirstline/core";
import { type Built, build, type GaugeReading, type System } from "@thirstline/spec/system";
import { fuelReasons } from "../check/fuelReasons.js";
import { limitsOf } from "../check/limitsOf.js";
import { dutyOf } from "../life/dutyOf.js";
import { factsOf, type LifeFacts } from "../life/factsOf.js";
import { filtersOf } from "../life/filtersOf.js";
import type { GaugeOptions } from "./GaugeAnswer.js";
import { supplyAt } from "./instantsOf.js";
import type { LimitPoint } from "./LimitMap.js";
import { fileNoise, noiseWeight, usualNoise } from "./noise.js";
import { type NoRun, type RunReadings, runOf } from "./runOf.js";
import { type SidePath, sidePath } from "./SidePath.js";
import { sideNames } from "./sideNames.js";

/** All that readings are held against. */
export interface GaugeFacts {
  readonly system: System;
  readonly built: Built;
  readonly limits: Limits;
  /** whether there is a limit to the vacuum at all */
  readonly limited: boolean;
  readonly points: readonly LimitPoint[];
  readonly terminals: ReadonlyMap<string, number>;
  readonly run: RunReadings;
  readonly suction: SidePath;
  readonly delivery: SidePath;
  /** Pa, one standard deviation: of one vacuum reading, and of all of them alike; of all feed pressures alike */
  readonly gaugeError: number | null;
  readonly zero: { readonly suction: number; readonly delivery: number };
  /** weight of what is known of scatter beforehand, as of so many readings */
  readonly weight: number;
  /** whether nothing can pass to the pump */
  readonly shut: boolean;
  /** how far the vacuum depends on how full the tank is, Pa from full to low */
  readonly levelRange: number;
}

/** What readings are held against, or why they cannot be put in time. */
export function gaugeFacts(
  system: System,
  readings: readonly GaugeReading[],
  { gaugeError }: GaugeOptions,
): GaugeFacts | NoRun {
  const built = build(system);
  const stated = new Map(
    filtersOf(system).flatMap(({ name, restriction = 1 }) => (restriction > 1 ? [[name, restriction] as const] : [])),
  );
  const names = sideNames(system);
  const gravity = built.pump.kind === "none";
  const before = gravity ? [...names.suction, ...names.delivery] : names.suction;
  const behind = gravity ? [] : names.delivery;
  const life = factsOf(system);
  const known = "given" in life ? life : null;
  const dirty = sidePath(before, known, stated);
  const run = runOf(readings, system, Math.max(1, ...before.map((name) => stated.get(name) ?? 1)));
  if ("code" in run) return run;
  const soiled = run.start.known && run.start.by === "stated";
  const fuel = fuelState(built.fuel, { temperature: built.temperature });
  const model = new SupplyModel(supplyAt(built, undefined), { fuel, passage: "smooth", end: "middle" });
  const { burn, return: back } = built.demand(fuel);
  const rise = model.intake.shut ? 0 : (model.state(burn + back).pumpRise ?? 0);
  const [tank] = built.tanks;
  const levelRange = fuel.density * 9.80665 * ((tank?.depthFull ?? 0) - (tank?.depthLow ?? 0));
  const unnoted = readings.some(({ depth }) => depth === undefined);
  const judged = limitsOf(built);
  return {
    system,
    built,
    limits: judged.limits,
    limited: judged.complete,
    points: pointsOf(system, built, known),
    terminals: new Map(
      filtersOf(system).flatMap(({ name, terminalDrop }) =>
        terminalDrop === undefined ? [] : [[name, terminalDrop] as const],
      ),
    ),
    run: soiled ? { ...run, start: { ...run.start, ratio: dirty.begun } } : run,
    suction: soiled ? dirty : sidePath(before, known, new Map()),
    delivery: sidePath(behind, known, soiled ? stated : new Map()),
    gaugeError: gaugeError ?? null,
    zero: {
      // Evenly anywhere between full and low: a range over the root of 12 is its standard deviation.
      suction: Math.hypot(fileNoise.zero, unnoted ? levelRange / Math.sqrt(12) : 0),
      delivery: Math.hypot(fileNoise.zero, fileNoise.rise * rise),
    },
    weight: noiseWeight[gaugeError === undefined ? "usual" : "stated"],
    shut: model.intake.shut,
    levelRange: unnoted ? levelRange : 0,
  };
}

/** Where limits are judged: the duty's temperatures, or the file's own where none is stated. */
function pointsOf(system: System, built: Built, known: LifeFacts | null): LimitPoint[] {
  const duty = known?.duty ?? dutyOf(system, built);
  if (duty) return duty.points.map(({ temperature }) => ({ temperature }));
  const { temperature } = built;
  return fuelReasons(fuelState(built.fuel, { temperature }), false).length === 0 ? [{ temperature }] : [];
}

/** What a gauge is taken to be off by, Pa, and by whose word. */
export function gaugeErrorOf({ gaugeError }: GaugeFacts): {
  readonly value: number;
  readonly by: "stated" | "common practice";
} {
  return gaugeError === null ? { value: usualNoise.gauge, by: "common practice" } : { value: gaugeError, by: "stated" };
}
