import type { SystemPart } from "../../system/Part.js";
import type { Naming } from "./naming.js";
import type { PartData } from "./PartData.js";
import { type PartKind, partKinds } from "./partKinds.js";

/** A list of parts in SI, every one named. */
export function toPath(parts: readonly PartData[], name: Naming): SystemPart[] {
  return parts.flatMap((part) => toPart(part, name));
}

/** One part in SI; the schema has seen to it that exactly one kind is there. */
function toPart(part: PartData, name: Naming): SystemPart[] {
  for (const kind of Object.keys(partKinds) as PartKind[]) {
    const data = part[kind];
    // Each kind's own way takes its own block's data, which a loop over all kinds cannot tell the compiler.
    if (data !== undefined) return [partKinds[kind].toSi(data as never, name(kind, data.name))];
  }
  const { bank } = part;
  if (bank === undefined) return [];
  return [{ part: "bank", name: name("bank", undefined), branches: bank.map((branch) => toPath(branch, name)) }];
}
