import {
  type Circuit,
  fitting,
  line,
  orifice,
  parallel,
  rise,
  series,
  strainer,
  twoKConstants,
  valve,
} from "@thirstline/core";
import type { SystemFitting, SystemPart } from "../system/index.js";
import { toFilter } from "./toFilter.js";

/** A path of a system as a circuit of the core. */
export function toCircuit(parts: readonly SystemPart[]): Circuit {
  return series(...parts.map(toItem));
}

function toItem(part: SystemPart): Circuit {
  const { name } = part;
  switch (part.part) {
    case "line":
      return line({ name, length: part.length, bore: part.bore, roughness: part.roughness });
    case "fitting":
      return fitting({ name, bore: part.bore, count: part.count, ...lossOf(part) });
    case "filter":
      return toFilter(part);
    case "rise":
      return rise({ name, height: part.height });
    case "valve":
      return valve({ name, opening: part.opening, kv: part.kv, oneWay: part.oneWay });
    case "orifice":
      return orifice({ name, diameter: part.diameter, dischargeCoefficient: part.dischargeCoefficient });
    case "strainer":
      return strainer({ name, aperture: part.aperture, wire: part.wire, area: part.area });
    case "bank":
      return parallel(...part.branches.map(toCircuit));
  }
}

function lossOf({ loss }: SystemFitting) {
  switch (loss.by) {
    case "k":
      return { k: loss.k };
    case "two-K":
      return { twoK: twoKConstants[loss.row] };
    case "equivalent length":
      return { equivalentLength: loss.bores, roughness: loss.roughness };
  }
}
