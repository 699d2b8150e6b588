import { blend } from "./blend.js";
import type { Fuel } from "./Fuel.js";
import { biodieselSoy } from "./known/biodiesels.js";

/**
 * Diesel with biodiesel in it by volume: 0.07 for B7, 0.2 for B20.
 *
 * As `blend`. Biodiesel raises the cloud point and thickens cold fuel; from more than a tenth on, data reach down to
 * 0 degC only.
 *
 * @param diesel the mineral fuel
 * @param share biodiesel by volume, 0 to 1
 * @param biodiesel soy unless another is given
 * @throws InputError for a share outside 0 to 1
 * @example
 * withBiodiesel(fuels.dieselWinter, 0.2).cloudPoint // 267.55 K, -5.6 degC: 80 % at -7, 20 % at 0 degC
 */
export function withBiodiesel(diesel: Fuel, share: number, biodiesel: Fuel = biodieselSoy): Fuel {
  return blend([
    { fuel: diesel, share: 1 - share },
    { fuel: biodiesel, share },
  ]);
}
