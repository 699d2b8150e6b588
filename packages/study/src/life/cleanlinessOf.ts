import {
  CatchBalance,
  codeOfDistribution,
  countsPerMl,
  dirtierThan,
  type LifeGiven,
  massOf,
  type ParticleDistribution,
  parseCode,
  printCode,
  SupplyModel,
} from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import type { CleanlinessRow, LifeAnswer } from "./LifeAnswer.js";

/** How clean the fuel is from delivery to the injection pump, with the elements clean, and whether that is enough. */
export function cleanlinessOf(system: System, given: LifeGiven): Pick<LifeAnswer, "cleanliness" | "protection"> {
  const phase = given.phases[0] as LifeGiven["phases"][number];
  const load = phase.loads[0] as (typeof phase.loads)[number];
  const model = new SupplyModel(given.supply, { fuel: phase.fuel, passage: "smooth", end: given.end ?? "middle" });
  const efficiencies = new Map(
    given.elements.flatMap(({ name, efficiency }) => (efficiency ? [[name, efficiency] as const] : [])),
  );
  const shares = new CatchBalance(given.delivered, efficiencies, given.held);
  shares.update(model, load.demand);
  const tank = scaled(given.delivered, shares.tankShare);
  const end = scaled(tank, shares.pathShare);
  const rows = [
    row("as delivered", given.delivered),
    row("in the tank", tank),
    ...(system.pump.kind === "none" ? [] : [row("at the lift pump", scaled(tank, shares.suctionShare))]),
    row(system.pump.kind === "none" ? "at the engine" : "at the injection pump", end),
  ];
  const asked = system.protection?.code;
  const kept = asked === undefined || dirtierThan(codeOfDistribution(end), parseCode(asked)).length === 0;
  return { cleanliness: rows, protection: asked === undefined ? null : { code: asked, kept } };
}

function scaled({ counts, masses }: ParticleDistribution, shares: Float64Array): ParticleDistribution {
  const by = (value: number, bin: number) => value * (shares[bin] ?? 0);
  return { counts: counts.map(by), masses: masses.map(by) };
}

function row(place: string, fuel: ParticleDistribution): CleanlinessRow {
  const { at4, at6, at14 } = countsPerMl(fuel);
  return { place, code: printCode(codeOfDistribution(fuel)), solids: massOf(fuel), counts: [at4, at6, at14] };
}
