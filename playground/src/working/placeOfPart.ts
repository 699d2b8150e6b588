import type { PartPath } from "@thirstline/study/working";
import type { Chosen, Place } from "../model/Place.js";

/** What the drawing calls the part at a place of the system; null for what it does not draw. */
export function placeOfPart(part: PartPath): Chosen | null {
  const [list, first, inner, ...rest] = part;
  if (list === "tanks" && typeof first === "number") {
    if (inner !== "path") return { kind: "tank", tank: first };
    const at = rest[0];
    return typeof at === "number" ? { kind: "part", place: { side: "tank", tank: first, at } } : null;
  }
  if ((list !== "suction" && list !== "delivery") || typeof first !== "number")
    return list === "pump" ? { kind: "pump" } : null;
  const place: Place = { side: list, at: first };
  if (inner !== "branches") return { kind: "part", place };
  const [branch, within] = rest;
  if (typeof branch !== "number" || typeof within !== "number") return { kind: "part", place };
  return { kind: "part", place: { ...place, branch, inner: within } };
}
