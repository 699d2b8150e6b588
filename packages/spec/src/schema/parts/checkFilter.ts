import { lawConstants } from "@thirstline/core";
import type { Report } from "../also.js";
import { type FilterData, sources } from "./filterKeys.js";
import { checkRoom } from "./roomForSoil.js";

/** Faults what the keys of a filter say together: no medium or two, areas that differ, a bowl larger than the whole, too much soil, a law without its tests. */
export function checkFilter(data: Partial<FilterData>, report: Report): void {
  const stated = sources.filter((source) => source in data);
  if (stated.length === 0) {
    const message = `nothing says what this filter lets through; write one of ${sources.join(", ")}`;
    report([], "no medium", message);
  }
  for (const extra of stated.slice(1)) {
    const message = `the medium is described by "${stated[0]}" already; keep the one you trust and leave the other out`;
    report([extra], "two media", message);
  }
  if ("rating" in data && "stated rating" in data) {
    report(["stated rating"], "stated twice", "the rating says how fine it is already; leave one of the two out");
  }
  if ((data.body ?? Number.NaN) < (data.bowl ?? Number.NaN)) {
    report(["body"], "body under bowl", "less than the bowl alone; the body counts the bowl and all the fuel above it");
  }
  checkLaw(data, report);
  const own = areaOf(data);
  checkRoom({ ...data, area: own, thickness: thicknessOf(data), tests: data["capacity test"] }, (path, code, message) =>
    report(["capacity test", ...path], code, message),
  );
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
export function areaOf(data: Partial<FilterData>): number | undefined {
  return data.medium?.area ?? data.rating?.area ?? data.fibre?.area ?? data.area;
}

function thicknessOf(data: Partial<FilterData>): number | undefined {
  return data.medium?.thickness ?? data.rating?.thickness ?? data.fibre?.thickness;
}

/** A law has as many constants as it takes tests; without a test the law alone is still worth saying. */
function checkLaw(data: Partial<FilterData>, report: Report): void {
  const [law, tests] = [data["loading law"], data["capacity test"]];
  if (law === undefined || !Array.isArray(tests)) return;
  const constants = lawConstants[law].length;
  if (constants > tests.length) {
    const message = `a ${law} law has two constants and takes two capacity tests; write a second, or a law of one word`;
    report(["loading law"], "one test", message);
  } else if (constants < tests.length) {
    const message = `a ${law} law has one constant and cannot go through two capacity tests; write a law such as cake-${law === "cake" ? "complete" : law}`;
    report(["loading law"], "two tests", message);
  }
}
