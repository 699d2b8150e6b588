import type { Fuel } from "./Fuel.js";
import { biodieselRapeseed, biodieselSoy } from "./known/biodiesels.js";
import { dieselArctic, dieselSummer, dieselWinter } from "./known/diesels.js";
import { kerosene, keroseneHeavy, keroseneLight } from "./known/kerosenes.js";
import { paraffinic } from "./known/paraffinics.js";
import { ethanol, petrol } from "./known/petrols.js";
import { premix } from "./premix.js";
import { withBiodiesel } from "./withBiodiesel.js";
import { withEthanol } from "./withEthanol.js";

/**
 * Representative fuels, from published ranges and measured samples. Real deliveries differ: diesel at 20 degC runs from
 * 2.8 to 5.0 mm2/s. Where it matters, measure and use `fuelLike`.
 *
 * Each states the temperatures its data back, what in it is an estimate, and its sources.
 *
 * @example
 * fuelState(fuels.dieselWinter, { temperature: 263.15 }).cautions // below cloud point, water can freeze
 */
export const fuels = {
  dieselSummer,
  dieselWinter,
  dieselArctic,
  kerosene,
  keroseneLight,
  keroseneHeavy,
  biodieselSoy,
  biodieselRapeseed,
  paraffinic,
  petrol,
  petrolE10: named("petrol E10", withEthanol(petrol, 0.1)),
  petrolE85: named("petrol E85", withEthanol(petrol, 0.85)),
  ethanol,
  premix50: premix(petrol, 50),
  b20Summer: named("summer diesel B20", withBiodiesel(dieselSummer, 0.2)),
  b20Winter: named("winter diesel B20", withBiodiesel(dieselWinter, 0.2)),
} as const satisfies Readonly<Record<string, Fuel>>;

function named(name: string, fuel: Fuel): Fuel {
  return { ...fuel, name };
}
