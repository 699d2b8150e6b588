import { assumedCapacities, type LoadingLawName, lawConstants, type MediumMake } from "@thirstline/core";
import type { z } from "zod";
import { block } from "../block.js";
import { choice, flag, measured, plain, share, text } from "../leaves/index.js";
import { betaList } from "./betas.js";
import { capacityTests } from "./capacityTest.js";
import { absorbsBlock, separationBlock } from "./filterWater.js";
import { flowTest } from "./flowTest.js";
import { airTestBlock, fibreBlock, mediumBlock, ratingBlock, statedRatingBlock } from "./medium.js";

/** Keys of which a filter has exactly one: where its medium's figures come from. */
export const sources = ["flow test", "medium", "air test", "rating", "fibre"] as const;

/** A filter's keys, each checked by itself. */
export const filterKeys = block(
  "a filter",
  '{ name: prefilter, flow test: [{ drop: 2 kPa, flow: 200 L/h, viscosity: "2.5 mPa s" }] }',
  {
    name: text("a name", "prefilter A").optional(),
    style: choice("a style of filter", ["spin-on", "cartridge", "in-line", "bowl", "in-tank"]).optional(),
    thread: text("a thread or port", "M24x1.5").optional(),
    "flow direction": choice("a flow direction", ["outside in", "inside out"]).optional(),
    "flow test": flowTest.optional(),
    medium: mediumBlock.optional(),
    "air test": airTestBlock.optional(),
    rating: ratingBlock.optional(),
    fibre: fibreBlock.optional(),
    area: measured("area").optional(),
    housing: block("a housing", "{ k: 4, port: 12 mm }", {
      k: plain({ words: "a loss coefficient K", least: 0, most: 10000, example: 4 }),
      port: measured("bore"),
    }).optional(),
    pleats: block("pleats", "{ depth: 15 mm, gap: 0.5 mm }", {
      depth: measured("pleatDepth"),
      gap: measured("gap"),
    }).optional(),
    betas: betaList.optional(),
    "stated rating": statedRatingBlock.optional(),
    leak: share("a share that slips past the seal", "2 %").optional(),
    "capacity test": capacityTests.optional(),
    "loading law": choice("a loading law", Object.keys(lawConstants) as LoadingLawName[]).optional(),
    make: choice("a make of medium", Object.keys(assumedCapacities) as MediumMake[]).optional(),
    bowl: measured("bowl").optional(),
    body: measured("body").optional(),
    prefill: choice("a rule on prefilling", ["allowed", "forbidden"]).optional(),
    water: separationBlock.optional(),
    absorbs: absorbsBlock.optional(),
    "terminal drop": measured("pressure", "a terminal drop").optional(),
    restriction: plain({
      words: "a restriction (resistance over clean resistance)",
      least: 1,
      most: 1e6,
      example: 1.8,
    }).optional(),
    blocked: flag("whether it is shut off").optional(),
    reversed: flag("whether it is fitted against its flow arrow").optional(),
  },
);

/** A filter, as the schema gives it. */
export type FilterData = z.output<typeof filterKeys>;
