import type { Fuel } from "./Fuel.js";
import type { VapourPressureLaw } from "./vapourPressureAt.js";

/**
 * Vapour pressure law of a blend: petrol's Reid value with the lift its ethanol gives, beside the most volatile of the
 * other parts. Estimated when ethanol passes the 10 % at which the published table ends.
 */
export function blendVapourPressure(
  parts: readonly { readonly fuel: Fuel }[],
  composition: Fuel["composition"],
): { readonly law: VapourPressureLaw; readonly estimated: boolean } {
  const laws = parts.flatMap(({ fuel }) => single(fuel.vapourPressure));
  const petrols = laws.filter((law) => law.kind === "Reid");
  const [petrol] = [...petrols].sort((left, right) => right.reid - left.reid);
  const ethanolShare = composition.ethanol ?? 0;
  const share = ethanolShare / (ethanolShare + (composition.petrol ?? 0));
  const rule = petrols.find(({ ethanol }) => ethanol !== undefined)?.ethanol?.rule ?? "EU waiver";
  const volatile: VapourPressureLaw[] = [];
  if (petrol !== undefined) {
    const { kind, reid, slope } = petrol;
    volatile.push({ kind, reid, slope, ...(ethanolShare > 0 ? { ethanol: { share, rule } } : {}) });
  }
  // Where petrol is present its ethanol is in the lift; ethanol's own law then counts for nothing.
  const others = parts.filter(({ fuel }) => petrol === undefined || fuel.composition.ethanol !== 1);
  volatile.push(
    ...others.flatMap(({ fuel }) => single(fuel.vapourPressure)).filter((law) => law.kind === "two constants"),
  );
  const [first = { kind: "none" }, ...rest] = volatile;
  return {
    law: rest.length === 0 ? first : { kind: "highest of", parts: volatile },
    // Ethanol lifts the vapour pressure of anything it mixes with; only for petrol is there a table.
    estimated: ethanolShare > 0 && (petrol === undefined || share > 0.1 + 1e-9),
  };
}

function single(law: VapourPressureLaw): readonly VapourPressureLaw[] {
  return law.kind === "highest of" ? law.parts.flatMap(single) : [law];
}
