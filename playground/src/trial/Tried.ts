import type { System, SystemFilter, SystemMedium } from "@thirstline/spec/system";
import { partsIn } from "../model/parts.js";

/** What a filter was before its size was tried otherwise: what is stated of it, and the size it is stated for, m. */
export interface Tried {
  readonly size: number;
  readonly medium: SystemMedium;
  readonly betas?: SystemFilter["betas"];
  readonly statedRating?: SystemFilter["statedRating"];
}

/** A filter of the sheet; `tried` stands on one whose figures are assumed, and is never written into a file's figures. */
export type SheetFilter = SystemFilter & { readonly tried?: Tried };

/** Filters whose figures are assumed. */
export function triedIn(system: System): SheetFilter[] {
  return partsIn(system).filter((part): part is SheetFilter => part.part === "filter" && "tried" in part);
}
