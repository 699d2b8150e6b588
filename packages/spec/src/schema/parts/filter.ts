import type { SystemFilter, SystemMedium } from "../../system/Filter.js";
import { also } from "../also.js";
import { given } from "../given.js";
import { withJson } from "../shapes.js";
import { toBetas } from "./betas.js";
import { toCapacityTests } from "./capacityTest.js";
import { areaOf, checkFilter } from "./checkFilter.js";
import { type FilterData, filterKeys, sources } from "./filterKeys.js";
import { toAbsorber } from "./filterWater.js";
import { toFlowTest } from "./flowTest.js";
import { toAirTest, toFibre, toMedium, toRating } from "./medium.js";

/** A filter, as a file has it. */
export const filterBlock = withJson(also(filterKeys, checkFilter), {
  oneOf: sources.map((source) => ({ required: [source] })),
});

/** A filter in SI. */
export function toFilter(data: FilterData, name: string): SystemFilter {
  const area = areaOf(data);
  const { style, thread, housing, pleats, betas, restriction, leak, make, bowl, water, absorbs, body, prefill } = data;
  const tests = toCapacityTests(data["capacity test"] ?? []);
  return given({
    part: "filter",
    name,
    style,
    thread,
    direction: data["flow direction"],
    medium: mediumOf(data, area ?? Number.NaN),
    area,
    housing,
    pleats: pleats === undefined ? undefined : { ...pleats, area: area ?? Number.NaN },
    restriction,
    blocked: data.blocked ?? false,
    reversed: data.reversed ?? false,
    terminalDrop: data["terminal drop"],
    betas: betas === undefined ? undefined : toBetas(betas),
    statedRating: data["stated rating"],
    leak,
    capacityTest: tests.at(-1),
    lighterCapacityTest: tests.at(-2),
    loadingLaw: data["loading law"],
    make,
    bowl,
    body,
    prefill,
    separation: water && { efficiency: water.efficiency, flow: water.at },
    absorbs: absorbs && toAbsorber(absorbs),
  });
}

function mediumOf(data: FilterData, area: number): SystemMedium {
  if (data.medium !== undefined) return toMedium(data.medium);
  if (data.rating !== undefined) return toRating(data.rating);
  if (data.fibre !== undefined) return toFibre(data.fibre);
  if (data["air test"] !== undefined) return toAirTest(data["air test"], area);
  return toFlowTest(data["flow test"] ?? []);
}
