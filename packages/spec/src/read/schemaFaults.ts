import type { z } from "zod";
import type { UnknownKey } from "../schema/block.js";
import type { Path, RawFault } from "./RawFault.js";

/** The schema's issues as faults, without those that only follow from a mistyped key. */
export function schemaFaults(issues: readonly z.core.$ZodIssue[]): RawFault[] {
  const faults = issues.flatMap(toFaults);
  const mistyped = new Set<string>();
  const inBlock = new Set<string>();
  for (const { code, path, meant } of faults) {
    if (code !== "unknown key") continue;
    inBlock.add(pathKey(path));
    if (meant !== undefined) mistyped.add(pathKey([...path, meant]));
  }
  return faults.filter(({ code, path }) => {
    if (code === "missing" && mistyped.has(pathKey(path))) return false;
    return !(wholeBlock.has(code) && inBlock.has(pathKey(path)));
  });
}

/** Codes of faults that a block as a whole lacks something, which may stand in it under a mistyped key. */
const wholeBlock: ReadonlySet<string> = new Set(["no medium", "no part", "too few sizes"]);

/** Codes of faults that say something is not there. */
export function isAbsence(code: string): boolean {
  return code === "missing" || wholeBlock.has(code);
}

function toFaults(issue: z.core.$ZodIssue): RawFault[] {
  const path = issue.path as Path;
  const { message } = issue;
  switch (issue.code) {
    case "custom":
      return [{ code: (issue.params as { readonly code: string }).code, path, message }];
    case "unrecognized_keys":
      return (JSON.parse(message) as UnknownKey[]).map((unknown) => ({
        code: "unknown key",
        path,
        message: unknown.message,
        received: unknown.key,
        ...(unknown.meant === undefined ? {} : { meant: unknown.meant }),
      }));
    case "too_small":
      return [{ code: "too few", path, message }];
    case "too_big":
      return [{ code: "too many", path, message }];
    case "invalid_union":
      return [{ code: message.startsWith("missing") ? "missing" : "unknown kind", path, message }];
    default:
      return [{ code: message.startsWith("missing") ? "missing" : "wrong form", path, message }];
  }
}

function pathKey(path: Path): string {
  return JSON.stringify(path);
}
