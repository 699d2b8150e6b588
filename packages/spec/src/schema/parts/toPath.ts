import type { SystemPart } from "../../system/Part.js";
import { toFilter } from "./filter.js";
import { toFitting } from "./fitting.js";
import { toLine } from "./line.js";
import type { Naming } from "./naming.js";
import { toOrifice } from "./orifice.js";
import type { PartData } from "./PartData.js";
import { toRise } from "./rise.js";
import { toStrainer } from "./strainer.js";
import { toValve } from "./valve.js";

/** A list of parts in SI, every one named. */
export function toPath(parts: readonly PartData[], name: Naming): SystemPart[] {
  return parts.flatMap((part) => toPart(part, name));
}

/** One part in SI; the schema has seen to it that exactly one kind is there. */
function toPart(part: PartData, name: Naming): SystemPart[] {
  const { line, fitting, filter, rise, bank, valve, orifice, strainer } = part;
  if (line !== undefined) return [toLine(line, name("line", line.name))];
  if (fitting !== undefined) return [toFitting(fitting, name("fitting", fitting.name))];
  if (filter !== undefined) return [toFilter(filter, name("filter", filter.name))];
  if (rise !== undefined) return [toRise(rise, name("rise", rise.name))];
  if (valve !== undefined) return [toValve(valve, name("valve", valve.name))];
  if (orifice !== undefined) return [toOrifice(orifice, name("orifice", orifice.name))];
  if (strainer !== undefined) return [toStrainer(strainer, name("strainer", strainer.name))];
  if (bank === undefined) return [];
  return [{ part: "bank", name: name("bank", undefined), branches: bank.map((branch) => toPath(branch, name)) }];
}
