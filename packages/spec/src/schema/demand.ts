import type { z } from "zod";
import type { SystemDemand } from "../system/Demand.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { measured } from "./leaves/index.js";
import { withJson } from "./shapes.js";

/** What the engine asks for, as a file has it. */
export const demandBlock = withJson(
  also(
    block("a demand", "{ burn: 113 L/h, return: 228 L/h }", {
      burn: measured("flow").optional(),
      power: measured("power").optional(),
      "specific consumption": measured("specificConsumption").optional(),
      return: measured("flowOrNone").optional(),
    }),
    (data, report) => {
      const byPower = (["power", "specific consumption"] as const).filter((key) => key in data);
      if ("burn" in data) {
        for (const key of byPower) {
          const message = "the burn is stated already; keep either burn, or power and specific consumption";
          report([key], "stated twice", message);
        }
      } else if (byPower.length === 0) {
        report(["burn"], "missing", 'missing; write the burn such as "113 L/h", or power and specific consumption');
      } else if (!("power" in data)) {
        report(["power"], "missing", 'missing; beside a specific consumption write the power, such as "450 kW"');
      } else if (!("specific consumption" in data)) {
        report(["specific consumption"], "missing", 'missing; beside a power write this too, such as "210 g/kWh"');
      }
    },
  ),
  { oneOf: [{ required: ["burn"] }, { required: ["power", "specific consumption"] }] },
);

/** What the engine asks for, in SI. */
export function toDemand(data: z.output<typeof demandBlock>): SystemDemand {
  const back = data.return ?? 0;
  if (data.burn !== undefined) return { burn: data.burn, return: back };
  return {
    power: data.power ?? Number.NaN,
    specificConsumption: data["specific consumption"] ?? Number.NaN,
    return: back,
  };
}
