import {
  bowlDrainInterval,
  CatchBalance,
  type DutyLoad,
  type LifeGiven,
  type ParticleDistribution,
  plugsAt,
  SupplyModel,
} from "@thirstline/core";
import type { System, SystemFilter } from "@thirstline/spec/system";
import { filterFlows } from "../check/filterFlows.js";
import type { Duty } from "./dutyOf.js";
import { filtersOf } from "./filtersOf.js";
import { freeWaterAt } from "./freeWaterAt.js";
import { keptBy } from "./keptBy.js";
import type { WaterAnswer, WaterRow } from "./WaterAnswer.js";

/**
 * Water in the coldest season with the elements clean: how much of it is free, which stage keeps it, and how often bowls
 * are to be drained. What the return brings back dry thins it in the tank, as it does soil.
 */
export function waterOf(system: System, duty: Duty, given: LifeGiven): WaterAnswer | null {
  const total = system.deliveredFuel?.water;
  const [coldest] = [...duty.seasons].sort((a, b) => a.temperature - b.temperature);
  if (total === undefined || !coldest) return null;
  const { name, temperature, phase } = coldest;
  const { dissolved, free } = freeWaterAt(system, phase.fuel, temperature);
  const model = new SupplyModel(given.supply, { fuel: phase.fuel, passage: "smooth", end: given.end ?? "middle" });
  const drying = filtersOf(system).filter(({ separation, absorbs }) => separation || absorbs);
  const rates = new Map(drying.map((filter) => [filter.name, 0]));
  let carried = 0;
  for (const load of phase.loads) {
    const balance = balanceOf(drying, model, load, free, given);
    for (const filter of drying) {
      rates.set(filter.name, (rates.get(filter.name) ?? 0) + load.share * balance.rate(filter.name));
    }
    carried += load.share * free * (balance.tankShare[0] ?? 0) * (balance.pathShare[0] ?? 0);
  }
  const full = filterFlows(model, Math.max(...phase.loads.map(({ demand }) => demand.burn + demand.return)));
  const elements = new Map(given.elements.map((element) => [element.name, element]));
  const stages = drying.map((filter): WaterRow => {
    const rate = rates.get(filter.name) ?? 0;
    const swells = elements.get(filter.name)?.swells;
    const shut = swells ? plugsAt(swells) / rate : Infinity;
    const bowl = filter.bowl;
    const drain =
      bowl === undefined || filter.absorbs ? Infinity : bowlDrainInterval({ bowl, separated: rate, flow: 1 });
    return {
      element: filter.name,
      kind: filter.absorbs ? "absorber" : "bowl",
      efficiency: keptBy(filter, full.get(filter.name) ?? 0),
      rate,
      drainEvery: Number.isFinite(drain) ? drain : null,
      shutAfter: Number.isFinite(shut) ? shut : null,
    };
  });
  return { season: name, temperature, total, dissolved, free, carriedOn: carried, stages };
}

/** The tank's balance of water at one load; water needs no sizes, so all of it stands in the first bin. */
function balanceOf(
  drying: readonly SystemFilter[],
  model: SupplyModel,
  { demand }: DutyLoad,
  free: number,
  { delivered, held }: LifeGiven,
): CatchBalance {
  const flows = filterFlows(model, demand.burn + demand.return);
  const size = delivered.masses.length;
  const masses = new Float64Array(size);
  masses[0] = free;
  const water: ParticleDistribution = { counts: new Float64Array(size), masses };
  const kept = new Map(
    drying.map((filter) => [filter.name, new Float64Array(size).fill(keptBy(filter, flows.get(filter.name) ?? 0))]),
  );
  const balance = new CatchBalance(water, kept, held);
  balance.update(model, demand);
  return balance;
}
