import type { z } from "zod";
import type { SystemCapacityTest, SystemFilter, SystemMedium } from "../../system/Filter.js";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { choice, flag, measured, plain, text, viscous } from "../leaves/index.js";
import { withJson } from "../shapes.js";
import { checkTestFluid, dynamicViscosityOf } from "../testFluid.js";
import { betaList, toBetas } from "./betas.js";
import { flowTest, toFlowTest } from "./flowTest.js";
import {
  airTestBlock,
  fibreBlock,
  mediumBlock,
  ratingBlock,
  toAirTest,
  toFibre,
  toMedium,
  toRating,
} from "./medium.js";

const capacityTest = also(
  block("a capacity test", "{ soil: 40 g, rise: 35 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }", {
    soil: measured("mass"),
    rise: measured("pressure"),
    flow: measured("flow"),
    viscosity: viscous(),
    density: measured("density").optional(),
  }),
  checkTestFluid,
);

const sources = ["flow test", "medium", "air test", "rating", "fibre"] as const;

const shape = block(
  "a filter",
  '{ name: prefilter, flow test: [{ drop: 2 kPa, flow: 200 L/h, viscosity: "2.5 mPa s" }] }',
  {
    name: text("a name", "prefilter A").optional(),
    style: choice("a style of filter", ["spin-on", "cartridge", "in-line", "bowl", "in-tank"]).optional(),
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
    "capacity test": capacityTest.optional(),
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

/** A filter, as a file has it. */
export const filterBlock = withJson(also(shape, check), { oneOf: sources.map((source) => ({ required: [source] })) });

type FilterData = z.output<typeof shape>;

function check(data: Partial<FilterData>, report: Report): void {
  const stated = sources.filter((source) => source in data);
  if (stated.length === 0) {
    const message = `nothing says what this filter lets through; write one of ${sources.join(", ")}`;
    report([], "no medium", message);
  }
  for (const extra of stated.slice(1)) {
    const message = `the medium is described by "${stated[0]}" already; keep the one you trust and leave the other out`;
    report([extra], "two media", message);
  }
  const own = areaOf(data);
  if (own === undefined) {
    const needs =
      "air test" in data ? "an air test is of a sample" : "pleats" in data ? "pleats cost by area" : undefined;
    if (needs !== undefined) {
      report(["area"], "missing", `missing; ${needs}: write the area of the medium, such as "0.5 m2"`);
    }
  } else if (data.area !== undefined && Math.abs(data.area - own) > 1e-9 * own) {
    report(["area"], "stated twice", `not the area of "${stated[0]}"; the medium has one area, write it once`);
  }
}

/** Area of the medium: its own, or the filter's. */
function areaOf(data: Partial<FilterData>): number | undefined {
  return data.medium?.area ?? data.rating?.area ?? data.fibre?.area ?? data.area;
}

/** A filter in SI. */
export function toFilter(data: FilterData, name: string): SystemFilter {
  const area = areaOf(data);
  const { style, housing, pleats, betas, restriction } = data;
  return given({
    part: "filter",
    name,
    style,
    medium: mediumOf(data, area ?? Number.NaN),
    area,
    housing,
    pleats: pleats === undefined ? undefined : { ...pleats, area: area ?? Number.NaN },
    restriction,
    blocked: data.blocked ?? false,
    reversed: data.reversed ?? false,
    terminalDrop: data["terminal drop"],
    betas: betas === undefined ? undefined : toBetas(betas),
    capacityTest: data["capacity test"] === undefined ? undefined : toCapacityTest(data["capacity test"]),
  });
}

function mediumOf(data: FilterData, area: number): SystemMedium {
  if (data.medium !== undefined) return toMedium(data.medium);
  if (data.rating !== undefined) return toRating(data.rating);
  if (data.fibre !== undefined) return toFibre(data.fibre);
  if (data["air test"] !== undefined) return toAirTest(data["air test"], area);
  return toFlowTest(data["flow test"] ?? []);
}

function toCapacityTest(test: z.output<typeof capacityTest>): SystemCapacityTest {
  const { soil, rise, flow, density } = test;
  return given({ soil, rise, flow, dynamicViscosity: dynamicViscosityOf(test), density });
}
