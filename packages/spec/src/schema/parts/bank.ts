import type { Report } from "../also.js";
import type { PartData } from "./PartData.js";

/**
 * Faults a bank whose branches cannot share a drop: they join the same two points, so all must climb equally far, and
 * each must hold something that resists flow, since else nothing decides how much it takes.
 */
export function bankFaults(branches: readonly PartData[][], report: Report): void {
  const [first] = branches;
  if (!Array.isArray(first)) return;
  const climb = netRise(first);
  branches.forEach((branch, at) => {
    if (!Array.isArray(branch)) return;
    const own = netRise(branch);
    // Heights are typed to a millimetre at best; a billionth of a metre is rounding of their sum.
    if (Math.abs(own - climb) > 1e-9) {
      const message = `this branch climbs ${metres(own)}, the first ${metres(climb)}; branches between the same two points climb equally far`;
      report([at], "unequal rises", message);
    }
    if (branch.length > 0 && branch.every(isFrictionless)) {
      report(
        [at],
        "no friction",
        "nothing in this branch resists flow, so its share cannot be told; write its line or filter",
      );
    }
  });
}

/** How far a list of parts climbs, m; NaN where a rise could not be read. */
function netRise(parts: readonly PartData[]): number {
  return parts.reduce((sum, part) => sum + riseOf(part), 0);
}

function riseOf(part: PartData): number {
  if (typeof part !== "object" || part === null) return 0;
  if (part.rise !== undefined) return part.rise?.height ?? Number.NaN;
  const [branch] = Array.isArray(part.bank) ? part.bank : [];
  return Array.isArray(branch) ? netRise(branch) : 0;
}

function isFrictionless(part: PartData): boolean {
  if (typeof part !== "object" || part === null) return false;
  return part.rise !== undefined || part.fitting?.k === 0;
}

function metres(height: number): string {
  return `${Number(height.toPrecision(6))} m`;
}
