/** What arrangements are compared by; less is better in each. */
export interface Measures {
  /** Infinity where not known */
  readonly cost: number;
  readonly vacuum: number;
  /** elements: a whole number above 0 */
  readonly elements: number;
}

/** Which of many no other beats: none is better in one measure and as good in the rest. In the order given. */
export function paretoOf(all: readonly Measures[]): boolean[] {
  const order = all.map((_, at) => at).sort((one, other) => byAll(all[one] as Measures, all[other] as Measures));
  const kept = all.map(() => false);
  // By rising cost, so only what came before can beat what comes; least vacuum so far, by number of elements.
  const least = new Map<number, Measures>();
  for (const at of order) {
    const own = all[at] as Measures;
    const beaten = [...least.values()].some((other) => beats(other, own));
    if (beaten) continue;
    kept[at] = true;
    const before = least.get(own.elements);
    if (!before || own.vacuum < before.vacuum) least.set(own.elements, own);
  }
  return kept;
}

function byAll(one: Measures, other: Measures): number {
  if (one.cost !== other.cost) return one.cost < other.cost ? -1 : 1;
  return one.vacuum - other.vacuum || one.elements - other.elements;
}

function beats(one: Measures, other: Measures): boolean {
  const asGood = one.cost <= other.cost && one.vacuum <= other.vacuum && one.elements <= other.elements;
  const better = one.cost < other.cost || one.vacuum < other.vacuum || one.elements < other.elements;
  return asGood && better;
}
