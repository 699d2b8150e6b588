import { blend } from "./blend.js";
import type { Fuel } from "./Fuel.js";
import { ethanol } from "./known/petrols.js";

/**
 * Petrol with ethanol in it by volume: 0.1 for E10, 0.85 for E85.
 *
 * As `blend`: the Reid vapour pressure rises by the European table, up to 8 kPa; above 10 % the last value is held, an
 * estimate on the safe side. The log rule for viscosity was not tried on alcohol, so viscosity is an estimate.
 *
 * @param petrol the petrol without the ethanol
 * @param share ethanol by volume, 0 to 1
 * @throws InputError for a share outside 0 to 1
 * @example
 * withEthanol(fuels.petrol, 0.1).vapourPressure // Reid 60e3 Pa, ethanol 0.1: 67.8e3 Pa in all
 */
export function withEthanol(petrol: Fuel, share: number): Fuel {
  return blend([
    { fuel: petrol, share: 1 - share },
    { fuel: ethanol, share },
  ]);
}
