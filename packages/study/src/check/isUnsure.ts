import { isSpread, type Part } from "@thirstline/core";

/** Whether a part's resistance is known as a band only: a strainer, or a filter whose medium is an estimate. */
export function isUnsure(part: Part): boolean {
  return part.kind === "strainer" || (part.kind === "filter" && isSpread(part.medium.linear));
}

/** Whether a part is a filter that holds soil. */
export function isSoiled(part: Part): boolean {
  return part.kind === "filter" && part.restriction > 1;
}
