import { shown } from "../shown.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { checkDirtyDelivery } from "./checkDirtyDelivery.js";
import { deliveredFuelBlock } from "./deliveredFuel.js";
import { demandBlock } from "./demand.js";
import { dutyBlock } from "./duty.js";
import { fuelBlock } from "./fuel.js";
import { leaf } from "./leaf.js";
import { text } from "./leaves/index.js";
import { limitsBlock } from "./limits.js";
import { checkParts } from "./parts/checkParts.js";
import { path } from "./parts/part.js";
import { placeBlock } from "./place.js";
import { protectionBlock } from "./protection.js";
import { pumpBlock } from "./pump.js";
import { serviceBlock } from "./service.js";
import { withJson } from "./shapes.js";
import { tankBlock, tankList } from "./tank.js";
import type { z } from "./zod.js";

/** The one version of the file's format that is read. */
export const formatName = "thirstline/1";

const format = leaf(formatName, { const: formatName, description: "version of this file's format" }, "", (value) =>
  value === formatName
    ? { value: formatName }
    : { fault: { code: "unknown format", message: `${shown(value)} is not a format known here; write ${formatName}` } },
);

/** A whole system file. */
export const fileBlock = withJson(
  also(
    block("a system file", `format: ${formatName}`, {
      format,
      name: text("the machine's name", "Heron, port engine"),
      fuel: fuelBlock,
      place: placeBlock.optional(),
      demand: demandBlock,
      tank: tankBlock.optional(),
      tanks: tankList.optional(),
      suction: path,
      pump: pumpBlock,
      delivery: path.optional(),
      limits: limitsBlock.optional(),
      protection: protectionBlock.optional(),
      duty: dutyBlock.optional(),
      "delivered fuel": deliveredFuelBlock.optional(),
      service: serviceBlock.optional(),
    }),
    (data, report) => {
      if ("tank" in data && "tanks" in data) {
        report(["tanks"], "stated twice", "there is a tank already; write either tank or tanks, which lists several");
      }
      if (!("tank" in data) && !("tanks" in data)) {
        report(
          ["tank"],
          "missing",
          "missing; write the tank such as { full depth: 1.1 m, low depth: 0.2 m, vent: open }",
        );
      }
      if (data.pump?.kind === "none" && "delivery" in data) {
        report(
          ["delivery"],
          "not used",
          "without a pump there is no delivery side; move its parts to the end of suction",
        );
      }
      checkParts(data, report);
      checkDirtyDelivery(data, report);
    },
  ),
  { oneOf: [{ required: ["tank"] }, { required: ["tanks"] }] },
);

/** A system file's data: keys as people write them, quantities in SI. */
export type FileData = z.output<typeof fileBlock>;
