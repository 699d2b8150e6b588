import type { System } from "@thirstline/spec/system";

/** The system with its demand made larger or smaller, burn and return in proportion; a power takes the burn with it. */
export function scaledDemand(system: System, factor: number): System {
  const { demand } = system;
  const back = demand.return * factor;
  return {
    ...system,
    demand:
      "burn" in demand
        ? { burn: demand.burn * factor, return: back }
        : { ...demand, power: demand.power * factor, return: back },
  };
}
