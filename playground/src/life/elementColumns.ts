import { figure, type LifeAnswer, PLUGGED, quantity, type UnitSystem, unitOf } from "@thirstline/study";

/** One element in words: what it has grown to, what it costs, and its part in the rise. */
export interface ElementWords {
  readonly name: string;
  readonly soil: string;
  readonly restriction: string;
  readonly clean: string;
  readonly due: string;
  readonly share: string;
}

/** Every element when the first limit is met, the one that goes first on top. */
export function elementWords({ elements }: LifeAnswer, units: UnitSystem): ElementWords[] {
  return [...elements]
    .sort((a, b) => b.share - a.share)
    .map(({ name, soil, restriction, dropClean, drop, share }) => ({
      name,
      soil: quantity(soil, "soil", units),
      restriction: restriction >= PLUGGED ? "plugged" : `${restriction.toFixed(restriction < 9.95 ? 1 : 0)} ×`,
      clean: figure(dropClean, "pressure", units),
      due: figure(drop, "pressure", units),
      share: quantity(share, "ratio", units),
    }));
}

/** The unit that `clean` and `due` are in. */
export function costUnit(units: UnitSystem): string {
  return unitOf("pressure", units).symbol;
}
