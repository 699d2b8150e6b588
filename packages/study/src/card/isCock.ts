import type { SystemPart } from "@thirstline/spec/system";

/** Whether a part can be shut by hand: a fitting that is some kind of cock. */
export function isCock(part: SystemPart): boolean {
  return part.part === "fitting" && /valve|cock/.test(part.kind ?? "") && !/check/.test(part.kind ?? "");
}
