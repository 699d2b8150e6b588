import { type DutyLoad, type DutyPhase, type DutyPoint, type FuelState, fuelState } from "@thirstline/core";
import type { Built, System } from "@thirstline/spec/system";
import { fuelReasons } from "../check/fuelReasons.js";
import { freeWaterAt } from "./freeWaterAt.js";
import type { LifeCaution } from "./LifeAnswer.js";

/** A season of the year, as core follows it. */
interface Season {
  readonly name: string;
  /** K */
  readonly temperature: number;
  readonly phase: DutyPhase;
}

/** A year of duty as core follows it, and the points its limits are judged at. */
export interface Duty {
  /** running time of a year, s */
  readonly year: number;
  readonly seasons: readonly Season[];
  /** the seasons' phases in order, from the day the elements were new */
  readonly phases: readonly DutyPhase[];
  /** full demand at each temperature whose figures mean something, coldest first */
  readonly points: readonly (DutyPoint & { readonly temperature: number })[];
  readonly cautions: readonly LifeCaution[];
}

const HOUR = 3600;
/** A calendar year of 365.25 days, ms. */
const YEAR = 365.25 * 24 * HOUR * 1000;

/**
 * The duty of a system: its seasons, or the file's one temperature; its loads, or full load all the time, which burns most.
 * A season below the cloud point, or outside the fuel's data, still fills elements but judges no limit.
 */
export function dutyOf(system: System, built: Built): Duty | null {
  const { duty } = system;
  if (!duty) return null;
  const year = duty.hoursADay * duty.daysAYear * HOUR;
  const stated = duty.seasons ?? [{ name: "all year", share: 1, temperature: built.temperature }];
  const loads = duty.loads ?? [{ load: 1, share: 1 }];
  const cautions: LifeCaution[] = duty.loads ? [] : [{ code: "full load assumed" }];
  const seasons = stated.map(({ name, share, temperature }): Season => {
    const fuel = fuelState(built.fuel, { temperature });
    const { free } = freeWaterAt(system, fuel, temperature);
    const phase = {
      duration: share * year,
      fuel,
      freeWater: free,
      loads: loads.map((one) => loadOf(one, built, fuel)),
    };
    return { name, temperature, phase };
  });
  const points = [...stated, { name: "the file's own", temperature: built.temperature }]
    .map(({ name, temperature }) => ({ name, temperature, fuel: fuelState(built.fuel, { temperature }) }))
    .filter(({ name, temperature, fuel }) => {
      const judged = fuelReasons(fuel, false).length === 0;
      if (!judged) cautions.push({ code: "season not judged", season: name, temperature });
      return judged;
    })
    .sort((a, b) => a.temperature - b.temperature)
    .filter((point, at, all) => point.temperature !== all[at - 1]?.temperature)
    .map(({ temperature, fuel }) => ({ temperature, fuel, demand: total(built.demand(fuel)) }));
  const phases = seasons.map(({ phase }) => phase).filter(({ duration }) => duration > 0);
  return { year, seasons, phases: startingAt(phases, yearDone(system) * year), points, cautions };
}

/** How much of a year of seasons had gone by when the elements were last changed, 0 to less than 1. */
function yearDone({ duty, service }: System): number {
  if (duty?.starts === undefined || service?.last?.date === undefined) return 0;
  const years = (Date.parse(service.last.date) - Date.parse(duty.starts)) / YEAR;
  return Number.isFinite(years) ? years - Math.floor(years) : 0;
}

/** The year's phases from a running time in it on, s; the one it falls into is taken in two pieces. */
function startingAt(phases: readonly DutyPhase[], time: number): DutyPhase[] {
  let gone = 0;
  for (const [at, phase] of phases.entries()) {
    const left = gone + phase.duration - time;
    gone += phase.duration;
    // A sliver of a phase is only the rounding of a date.
    if (left <= 1e-6 * phase.duration) continue;
    if (left >= phase.duration * (1 - 1e-6)) return [...phases.slice(at), ...phases.slice(0, at)];
    const rest = { ...phase, duration: left };
    const begun = { ...phase, duration: phase.duration - left };
    return [rest, ...phases.slice(at + 1), ...phases.slice(0, at), begun];
  }
  return [...phases];
}

function loadOf(
  { load, share }: { readonly load: number; readonly share: number },
  built: Built,
  fuel: FuelState,
): DutyLoad {
  const { burn, return: back } = built.demand(fuel);
  return { share, demand: { burn: load * burn, return: load * back } };
}

function total({ burn, return: back }: { readonly burn: number; readonly return: number }): number {
  return burn + back;
}
