import type { z } from "zod";
import type { SystemDeliveredFuel } from "../system/DeliveredFuel.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { cleanlinessCode } from "./cleanliness.js";
import { given } from "./given.js";
import { measured } from "./leaves/index.js";

/** How dirty and wet the fuel comes, as a file has it. */
export const deliveredFuelBlock = also(
  block("delivered fuel", "{ code: 18/16/13, water: 150 mg/L }", {
    code: cleanlinessCode().optional(),
    solids: measured("concentration").optional(),
    water: measured("concentration").optional(),
  }),
  (data, report) => {
    if ("code" in data && "solids" in data) {
      report(["solids"], "stated twice", "the code says how dirty the fuel is already; leave one of the two out");
    }
  },
);

/** How dirty and wet the fuel comes, in SI. */
export function toDeliveredFuel(data: z.output<typeof deliveredFuelBlock>): SystemDeliveredFuel {
  return given({ code: data.code, solids: data.solids, water: data.water });
}
