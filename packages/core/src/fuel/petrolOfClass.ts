import { InputError } from "../InputError.js";
import { requireBetween } from "../require.js";
import type { EthanolRule } from "./ethanolVapourRaise.js";
import type { Fuel } from "./Fuel.js";
import { petrol } from "./known/petrols.js";
import { type PetrolClass, petrolClasses } from "./petrolClasses.js";
import { withEthanol } from "./withEthanol.js";

/**
 * Petrol of a volatility class, as volatile as the class allows: the safe side for vapour lock.
 *
 * With ethanol the vapour pressure is the class limit plus the waiver of the place: the European table, or 1 psi from
 * 9 % in America. Where no waiver is granted the limit holds for the finished fuel and this lies up to 8 kPa above it.
 *
 * @param given standard, class, and ethanol by volume, 0 to 0.1 (none unless stated)
 * @throws InputError for a class the standard does not have, naming those it has, or more ethanol than 10 %
 * @see EN 228 and ASTM D4814 limits, restated publicly; Directive 98/70/EC, Annex III
 * @example
 * petrolOfClass({ standard: "EN 228", class: "D1", ethanol: 0.05 }).vapourPressure // Reid 90e3 Pa, with 5 % ethanol
 */
export function petrolOfClass(given: {
  readonly standard: PetrolClass["standard"];
  readonly class: string;
  readonly ethanol?: number;
}): Fuel {
  const found = classOf(given.standard, given.class);
  const share = given.ethanol ?? 0;
  requireBetween("petrolOfClass", "ethanol", share, { from: 0, to: 0.1 });
  const name = `petrol, ${found.standard} class ${found.class}`;
  const source = `Reid vapour pressure: ${found.standard} class ${found.class}, at most ${found.vapourPressure.to / 1e3} kPa (seen)`;
  const neat: Fuel = {
    ...petrol,
    name,
    vapourPressure: { kind: "Reid", reid: found.vapourPressure.to, slope: 3 },
    sources: [...petrol.sources.filter((text) => !text.startsWith("Reid vapour pressure")), source],
  };
  if (share === 0) return neat;
  const rule: EthanolRule = found.standard === "EN 228" ? "EU waiver" : "US waiver";
  const mixed = withEthanol(neat, share);
  const vapourPressure = { kind: "Reid", reid: found.vapourPressure.to, slope: 3, ethanol: { share, rule } } as const;
  return { ...mixed, name: `${name}, ${Number((share * 100).toPrecision(4))} % ethanol`, vapourPressure };
}

function classOf(standard: string, name: string): PetrolClass {
  const ofStandard = petrolClasses.filter((one) => one.standard === standard);
  if (ofStandard.length === 0) {
    throw new InputError("petrolOfClass", "standard", "one of EN 228, ASTM D4814", standard);
  }
  const found = ofStandard.find((one) => one.class === name);
  if (found === undefined) {
    const known = ofStandard.map((one) => one.class).join(", ");
    throw new InputError("petrolOfClass", "class", `one of ${known} (${standard})`, name);
  }
  return found;
}
