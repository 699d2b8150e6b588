import type { System } from "@thirstline/spec/system";
import type { GaugeAnswer } from "@thirstline/study";
import { withSoil } from "../../life/soiledBy.js";
import type { KeptReadings } from "./KeptReadings.js";

/** The soil a gauge found, by the filter's name: resistance over clean, to four digits, since no gauge tells more. */
export function soilOf({ sides }: GaugeAnswer): KeptReadings["put"] {
  return sides.flatMap(({ elements }) =>
    elements.map(({ name, ratio }) => [name, Math.max(1, Number(ratio.middle.toPrecision(4)))] as const),
  );
}

/** The system with that soil on its filters. */
export function withPut(system: System, put: KeptReadings["put"]): System {
  const soil = new Map(put);
  return withSoil(system, ({ name, restriction }) => {
    const found = soil.get(name);
    return found === undefined ? restriction : found > 1 ? found : undefined;
  });
}

/** The system without the soil that was put on it from its own readings: it is what they are read to find. */
export function withoutPut(system: System, put: KeptReadings["put"]): System {
  const soil = new Map(put);
  return withSoil(system, ({ name, restriction }) => (restriction === soil.get(name) ? undefined : restriction));
}
