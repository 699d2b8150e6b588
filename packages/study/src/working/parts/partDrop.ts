import type { Part } from "@thirstline/core";
import type { SystemPart } from "@thirstline/spec/system";
import type { Step } from "../Step.js";
import { inWords } from "../worked.js";
import { systemFilterDrop } from "./filterDrop.js";
import { systemFittingDrop, systemLineDrop } from "./fittingDrop.js";
import { systemOrificeDrop, systemRiseDrop, systemStrainerDrop, systemValveDrop } from "./otherDrops.js";
import type { PartScene } from "./PartScene.js";

/**
 * What a part costs at its flow, by the law of its kind.
 *
 * @param core core's own part of it
 * @param value its drop as core has it, Pa; null where core has none because nothing flows
 */
export function partDrop(given: PartScene, core: Part, value: number | null): Step {
  const step = dropOf(given, core);
  const name = `drop of ${given.part.name}`;
  return { ...step, name, ...(value === null ? {} : { value }), part: given.path };
}

function dropOf(given: PartScene, core: Part): Step {
  const { part } = given;
  switch (part.part) {
    case "line":
      return systemLineDrop({ ...given, part });
    case "fitting":
      return systemFittingDrop({ ...given, part });
    case "rise":
      return systemRiseDrop({ ...given, part });
    case "valve":
      return systemValveDrop({ ...given, part });
    case "orifice":
      return systemOrificeDrop({ ...given, part });
    case "strainer":
      return systemStrainerDrop({ ...given, part });
    case "filter":
      return core.kind === "filter" ? systemFilterDrop({ ...given, part }, core) : none(part);
    case "bank":
      return none(part);
  }
}

function none({ name }: SystemPart): Step {
  return inWords("not a part by itself", { name, value: Number.NaN, unit: "Pa" });
}
