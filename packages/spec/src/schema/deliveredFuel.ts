import type { z } from "zod";
import type { SystemDeliveredFuel } from "../system/DeliveredFuel.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { choice, measured } from "./leaves/index.js";
import { checkSolids, solidsKeys, toSolids } from "./solids.js";

const dirtyDelivery = also(
  block("a dirty delivery", "{ after: 100 h, volume: 600 L, code: 23/21/18 }", {
    after: measured("runningTime"),
    volume: measured("volume"),
    ...solidsKeys,
  }),
  (data, report) => {
    checkSolids(data, report);
    if ("code" in data || "solids" in data || "counts" in data) return;
    report(["code"], "missing", "missing; write how dirty it is: a code such as 23/21/18, solids or counts");
  },
);

/** How dirty and wet the fuel comes, as a file has it. */
export const deliveredFuelBlock = also(
  block("delivered fuel", "{ code: 18/16/13, water: 150 mg/L }", {
    ...solidsKeys,
    water: measured("concentration").optional(),
    held: choice("a fuel to hold fixed", ["delivered", "tank"]).optional(),
    "dirty delivery": dirtyDelivery.optional(),
  }),
  checkSolids,
);

/** How dirty and wet the fuel comes, in SI. */
export function toDeliveredFuel(data: z.output<typeof deliveredFuelBlock>): SystemDeliveredFuel {
  const dirty = data["dirty delivery"];
  return {
    ...toSolids(data),
    ...given({
      water: data.water,
      held: data.held === "delivered" ? "delivered fuel" : data.held,
      dirtyDelivery: dirty && { ...toSolids(dirty), after: dirty.after, volume: dirty.volume },
    }),
  };
}
