import type { Reason } from "./CheckAnswer.js";

/** Reasons that take the ground from under every figure; a limit that is missing or broken does not. */
export type GroundReason = Extract<
  Reason,
  { code: "shut" | "below cloud point" | "cloud point not known" | "fuel out of range" }
>;

/** Whether a reason takes the ground from under every figure. */
export function isGround(reason: Reason): reason is GroundReason {
  return ["shut", "below cloud point", "cloud point not known", "fuel out of range"].includes(reason.code);
}
