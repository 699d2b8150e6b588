import { type Circuit, type FixedPump, type LifeGiven, SupplyModel } from "@thirstline/core";

/** So little that it moves no figure. */
const NOTHING = 1e-9;

/** A life in which a slipping pump moves the most it can: its suction elements are no hindrance. */
export function mostPumped(given: LifeGiven): LifeGiven {
  return { ...given, supply: { ...given.supply, suction: unresisting(given.supply.suction) } };
}

/**
 * A life in which a slipping pump moves the least it does before the vacuum limit at change is broken: it has that vacuum
 * against it throughout. Where a season is too cold to be judged, or no limit is stated, it moves the demand alone.
 */
export function leastPumped(given: LifeGiven): LifeGiven {
  const most = mostPumped(given);
  const { supply, phases, points, limits } = most;
  const pump = supply.pump as FixedPump;
  const judged = phases.every(({ fuel }) =>
    points.some((point) => point.fuel.kinematicViscosity === fuel.kinematicViscosity),
  );
  // Fuel that stands over the pump helps it, and must not count as help here.
  const flooded = phases.map(({ fuel }) => {
    const model = new SupplyModel(supply, { fuel, passage: "smooth", end: given.end ?? "middle" });
    return Math.max(0, -model.vacuum(0));
  });
  const against = judged ? (limits.vacuumAtChange ?? Infinity) + Math.max(...flooded) : Infinity;
  const relief = pump.relief + Math.min(against, 1e15);
  return { ...most, supply: { ...supply, pump: { ...pump, relief } } };
}

function unresisting(circuit: Circuit): Circuit {
  if (circuit.kind === "series") return { ...circuit, items: circuit.items.map(unresisting) };
  if (circuit.kind !== "filter") return circuit;
  const { low, middle, high } = circuit.medium.linear;
  const linear = { low: low * NOTHING, middle: middle * NOTHING, high: high * NOTHING };
  return { ...circuit, medium: { ...circuit.medium, linear } };
}
