import type { Report } from "./also.js";

interface Delivered {
  readonly tank?: { readonly volume?: number | undefined } | undefined;
  readonly tanks?: readonly { readonly volume?: number | undefined }[] | undefined;
  readonly "delivered fuel"?: { readonly "dirty delivery"?: { readonly volume: number } | undefined } | undefined;
}

/** Faults a delivery that the tanks have no room for, where all their volumes are stated. */
export function checkDirtyDelivery(data: Delivered, report: Report): void {
  const tanks = Array.isArray(data.tanks) ? data.tanks : [data.tank];
  const room = tanks.reduce((sum, tank) => sum + (tank?.volume ?? Number.NaN), 0);
  if (!((data["delivered fuel"]?.["dirty delivery"]?.volume ?? 0) > room)) return;
  const message = `more than the tanks hold, ${Number((room * 1000).toPrecision(4))} L; write the fuel of one filling`;
  report(["delivered fuel", "dirty delivery", "volume"], "no room", message);
}
