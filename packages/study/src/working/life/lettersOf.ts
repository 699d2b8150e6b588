import type { CombinedLawName, SingleLawName } from "@thirstline/core";

/** Which constants the letters A and B of a pair's formula stand for. */
export function lettersOf(name: CombinedLawName): readonly [SingleLawName, SingleLawName] {
  const pairs: Readonly<Record<CombinedLawName, readonly [SingleLawName, SingleLawName]>> = {
    "cake-complete": ["cake", "complete"],
    "cake-intermediate": ["cake", "intermediate"],
    "complete-standard": ["standard", "complete"],
    "intermediate-standard": ["standard", "intermediate"],
    "cake-standard": ["cake", "standard"],
  };
  return pairs[name];
}
