import { requireAtLeast } from "../require.js";
import { blend } from "./blend.js";
import type { Fuel } from "./Fuel.js";
import { premixOil } from "./known/petrols.js";

/**
 * Two-stroke premix: petrol with one part of oil to so many parts of petrol, by volume.
 *
 * An estimate: the oil is assumed (130 mm2/s at 20 degC, 50 at 40 degC, 880 kg/m3; common practice, no source), and the
 * log rule was not tried on so thick a part. At 50:1 the oil adds about a tenth to the viscosity.
 *
 * @param petrol petrol, or a petrol blend
 * @param ratio parts of petrol to one of oil, 50 for 50:1; 4 or more
 * @param oil another oil than the assumed one
 * @throws InputError for a ratio below 4
 * @example
 * fuelState(premix(fuels.petrol, 50), { temperature: 293.15 }).kinematicViscosity // 0.612e-6
 */
export function premix(petrol: Fuel, ratio: number, oil: Fuel = premixOil): Fuel {
  requireAtLeast("premix", "ratio", ratio, 4);
  return blend(
    [
      { fuel: petrol, share: ratio / (ratio + 1) },
      { fuel: oil, share: 1 / (ratio + 1) },
    ],
    { name: `${petrol.name} with oil ${ratio}:1` },
  );
}
