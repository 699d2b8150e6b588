import type { Supply } from "@thirstline/core";
import { tank } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";

/** The supply to judge, with every tank at its low depth: the verdict is for the emptiest it is run. */
export function supplyOf(built: Built): Supply {
  return {
    ambientPressure: built.ambientPressure,
    tanks: built.tanks.map(({ name, depthLow, vent, path }) =>
      tank({ ...(name === undefined ? {} : { name }), depth: depthLow, vent, path }),
    ),
    suction: built.suction,
    pump: built.pump,
    delivery: built.delivery,
  };
}
