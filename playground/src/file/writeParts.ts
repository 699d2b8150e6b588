import type { SystemFitting, SystemLine, SystemPart, SystemStrainer, SystemValve } from "@thirstline/spec/system";
import type { Pen } from "./Pen.js";
import { writeFilter } from "./writeFilter.js";
import type { Block, Written } from "./yaml.js";

/** A path as a file has it; the pen stands at the list. */
export function writePath(parts: readonly SystemPart[], pen: Pen): Written[] {
  return parts.map((part, at) => writePart(part, pen.in(at)));
}

function writePart(part: SystemPart, pen: Pen): Block {
  switch (part.part) {
    case "line":
      return { line: line(part, pen) };
    case "fitting":
      return { fitting: fitting(part, pen) };
    case "filter":
      return { filter: writeFilter(part, pen) };
    case "rise":
      return {
        rise: { name: part.name, height: pen.write(part.height, { key: "height", unit: "length", kind: "height" }) },
      };
    case "valve":
      return { valve: valve(part, pen) };
    case "orifice":
      return {
        orifice: {
          name: part.name,
          diameter: pen.write(part.diameter, { key: "diameter", unit: "bore", kind: "diameter" }),
          "discharge coefficient": part.dischargeCoefficient,
        },
      };
    case "strainer":
      return { strainer: strainer(part, pen) };
    case "bank":
      return { bank: part.branches.map((branch, at) => branchOf(branch, pen.in("branches", at))) };
  }
}

/** A branch of one part is written as that part. */
function branchOf(branch: readonly SystemPart[], pen: Pen): Written {
  const [only, ...more] = branch;
  return only !== undefined && more.length === 0 ? writePart(only, pen.in(0)) : writePath(branch, pen);
}

function line({ name, length, bore, surface, roughness }: SystemLine, pen: Pen): Block {
  return {
    name,
    length: pen.write(length, { key: "length", unit: "length", kind: "length" }),
    bore: pen.write(bore, { key: "bore", unit: "bore", kind: "bore" }),
    ...(surface === undefined
      ? { roughness: pen.write(roughness, { key: "roughness", unit: "bore", kind: "roughness" }) }
      : { surface }),
  };
}

function fitting({ name, bore, count, kind, loss }: SystemFitting, pen: Pen): Block {
  const shared = {
    bore: pen.write(bore, { key: "bore", unit: "bore", kind: "bore" }),
    count: count === 1 ? undefined : count,
  };
  if (loss.by === "two-K") return { name, kind: kind ?? loss.row, ...shared };
  if (loss.by === "k") return { name, k: loss.k, ...shared };
  const roughness = pen.in("loss").write(loss.roughness, { key: "roughness", unit: "bore", kind: "roughness" });
  return { name, "equivalent length": loss.bores, ...shared, roughness };
}

function valve({ name, opening, kv, oneWay }: SystemValve, pen: Pen): Block {
  return {
    name,
    opening: opening > 0 ? pen.write(opening, { key: "opening", unit: "pressure", kind: "opening" }) : undefined,
    kv: pen.write(kv, { key: "kv", unit: "flow", kind: "kv" }),
    "one-way": oneWay ? undefined : false,
  };
}

function strainer({ name, aperture, wire, area }: SystemStrainer, pen: Pen): Block {
  return {
    name,
    aperture: pen.write(aperture, { key: "aperture", unit: "size", kind: "aperture" }),
    wire: pen.write(wire, { key: "wire", unit: "size", kind: "wire" }),
    area: pen.write(area, { key: "area", unit: "screen", kind: "area" }),
  };
}
