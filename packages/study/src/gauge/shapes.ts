import { type LoadingLawName, lawConstants, loadAtRatio, loadingLaw, type SingleLawName } from "@thirstline/core";

/** A candidate for how resistance grows, in a load of its own: 0 is clean. */
export interface Shape {
  readonly law: LoadingLawName | "none";
  /** of a law of two constants, how much of the way to four times clean the second one makes, 0 to 1; null of one constant */
  readonly mix: number | null;
  /** resistance over clean at a load; held below `MOST` */
  readonly ratio: (load: number) => number;
  /** load at a ratio of 1 or more */
  readonly load: (ratio: number) => number;
}

/** Resistance over clean beyond which no gauge tells anything. */
export const MOST = 1e4;

/** A fit asks a hundred thousand times, so each law is a table: even steps of the ratio's logarithm, straight between. */
export const STEPS = 600;
const STEP = Math.log(MOST) / STEPS;

/** How a law of two constants may be divided between them. Finer steps are told apart by no gauge. */
const MIXES = [0.25, 0.5, 0.75];

/** The laws of one constant, which tell growth from none as well as all of them do. */
export const isPlain = ({ mix }: Shape) => mix === null;

/** No growth at all. */
export const flat: Shape = { law: "none", mix: null, ratio: () => 1, load: () => 0 };

/** Every law of core as a shape; those of two constants at three mixes. */
export const shapes: readonly Shape[] = (Object.keys(lawConstants) as LoadingLawName[]).flatMap((law) =>
  lawConstants[law].length === 1 ? [shapeOf(law, null)] : MIXES.map((mix) => shapeOf(law, mix)),
);

function shapeOf(name: LoadingLawName, mix: number | null): Shape {
  const [first = "cake", second] = lawConstants[name];
  // Each constant alone, full, would come to four times clean at a load of 1.
  const full = (single: SingleLawName) => loadAtRatio(loadingLaw(single, { [single]: 1 }), 4);
  const law = loadingLaw(name, {
    [first]: (1 - (mix ?? 0)) * full(first),
    ...(second === undefined ? {} : { [second]: (mix ?? 0) * full(second) }),
  });
  const loads = Float64Array.from({ length: STEPS + 1 }, (_, at) => loadAtRatio(law, Math.exp(at * STEP)));
  return { law: name, mix, ratio: (load) => ratioAt(loads, load), load: (ratio) => loadAt(loads, ratio) };
}

function loadAt(loads: Float64Array, ratio: number): number {
  if (!(ratio > 1)) return 0;
  const place = Math.log(Math.min(MOST, ratio)) / STEP;
  const at = Math.min(STEPS - 1, Math.floor(place));
  const left = loads[at] as number;
  return left + (place - at) * ((loads[at + 1] as number) - left);
}

function ratioAt(loads: Float64Array, load: number): number {
  if (!(load > 0)) return 1;
  if (load >= (loads[STEPS] as number)) return MOST;
  let [low, high] = [0, STEPS];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((loads[middle] as number) <= load) low = middle;
    else high = middle;
  }
  const left = loads[low] as number;
  return Math.exp(STEP * (low + (load - left) / ((loads[low + 1] as number) - left)));
}
