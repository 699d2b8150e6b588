import {
  type BandEnd,
  type Ceiling,
  type FuelState,
  type LimitName,
  type Passage,
  type Supply,
  SupplyModel,
} from "@thirstline/core";
import fc from "fast-check";
import { expect } from "vitest";

export const anEnd = fc.constantFrom<BandEnd>("low", "middle", "high");

/** Pressures come about as sums of heads, drops and the air's own, Pa; a rounding of those is no change. */
export const HAIR = 1e-12;

export function modelOf(supply: Supply, fuel: FuelState, passage: Passage, end: BandEnd = "middle"): SupplyModel {
  return new SupplyModel(supply, { fuel, passage, end });
}

/** Whether fuel runs back into a tank at no demand; then the lowest pressure on its way may rise with demand. */
export function fedBackward(supply: Supply, fuel: FuelState): boolean {
  const { intake } = new SupplyModel(supply, { fuel, passage: "smooth", end: "middle" });
  return intake.descent(0).tanks.some(({ flow }) => flow < 0);
}

export function expectNoneRose(
  before: readonly Ceiling[],
  after: readonly Ceiling[],
  except: readonly LimitName[],
): void {
  before.forEach(({ limit, flow }, at) => {
    if (!except.includes(limit)) expect(after[at]?.flow, limit).toBeLessThanOrEqual(flow * (1 + 1e-9));
  });
}
