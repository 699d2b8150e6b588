import { type DutyLoad, type DutyPhase, type DutyPoint, type FuelState, fuelState } from "@thirstline/core";
import type { Built, System } from "@thirstline/spec/system";
import { fuelReasons } from "../check/fuelReasons.js";
import type { LifeCaution } from "./LifeAnswer.js";

/** A year of duty as core follows it, and the points its limits are judged at. */
export interface Duty {
  /** running time of a year, s */
  readonly year: number;
  readonly phases: readonly DutyPhase[];
  /** full demand at each temperature whose figures mean something, coldest first */
  readonly points: readonly (DutyPoint & { readonly temperature: number })[];
  readonly cautions: readonly LifeCaution[];
}

const HOUR = 3600;

/**
 * The duty of a system: its seasons, or the file's one temperature; its loads, or full load all the time, which burns most.
 * A season below the cloud point, or outside the fuel's data, still fills elements but judges no limit.
 */
export function dutyOf(system: System, built: Built): Duty | null {
  const { duty } = system;
  if (!duty) return null;
  const year = duty.hoursADay * duty.daysAYear * HOUR;
  const seasons = duty.seasons ?? [{ name: "all year", share: 1, temperature: built.temperature }];
  const loads = duty.loads ?? [{ load: 1, share: 1 }];
  const cautions: LifeCaution[] = duty.loads ? [] : [{ code: "full load assumed" }];
  const phases = seasons.map(({ share, temperature }) => {
    const fuel = fuelState(built.fuel, { temperature });
    return { duration: share * year, fuel, loads: loads.map((one) => loadOf(one, built, fuel)) };
  });
  const points = [...seasons, { name: "the file's own", temperature: built.temperature }]
    .map(({ name, temperature }) => ({ name, temperature, fuel: fuelState(built.fuel, { temperature }) }))
    .filter(({ name, temperature, fuel }) => {
      const judged = fuelReasons(fuel, false).length === 0;
      if (!judged) cautions.push({ code: "season not judged", season: name, temperature });
      return judged;
    })
    .sort((a, b) => a.temperature - b.temperature)
    .filter((point, at, all) => point.temperature !== all[at - 1]?.temperature)
    .map(({ temperature, fuel }) => ({ temperature, fuel, demand: total(built.demand(fuel)) }));
  return { year, phases: phases.filter(({ duration }) => duration > 0), points, cautions };
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
