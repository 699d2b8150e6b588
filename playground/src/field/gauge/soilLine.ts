import { type Interval, type Shape, type SideAnswer, shapes } from "@thirstline/study";

/** What is known of the soil of the element that goes first; times in running time since the run began, s. */
export interface SoilKnown {
  /** resistance over clean when the run began; null where that is not known */
  readonly start: number | null;
  readonly now: number;
  readonly ratio: Interval;
  /** when a limit is met, and the resistance it is met at; null where that is not told */
  readonly end: { readonly time: Interval; readonly ratio: number } | null;
}

/** Resistance over clean at a running time, s: likeliest, and the ends between which it lies nine times in ten. */
export type SoilLine = (time: number) => Interval;

/**
 * How resistance grows between what the gauge's answer says of the beginning, of now and of the limit: by the likeliest
 * law, soil coming evenly from one to the next. So the band is the answer's own at those three, and drawn between.
 */
export function soilLine({ laws: [law] }: Pick<SideAnswer, "laws">, known: SoilKnown): SoilLine | null {
  const shape = shapes.find((one) => one.law === law?.law && one.mix === law.mix);
  if (shape === undefined) return null;
  const middle = path(shape, known, known.ratio.middle, known.end?.time.middle);
  // More soil now, and the limit sooner: the upper end.
  const high = path(shape, known, known.ratio.high, known.end?.time.low);
  const low = path(shape, known, known.ratio.low, known.end?.time.high);
  return (time) => ({
    low: shape.ratio(low(time)),
    middle: shape.ratio(middle(time)),
    high: shape.ratio(high(time)),
  });
}

/** Soil, in the law's own measure, over running time. */
function path(shape: Shape, { start, now, end }: SoilKnown, ratio: number, met: number | undefined) {
  const load = (of: number) => shape.load(Math.max(1, of));
  const there = load(ratio);
  const later = met !== undefined && met > now && Number.isFinite(met) && end !== null;
  const onward = later ? (load(end.ratio) - there) / (met - now) : 0;
  const rate = start === null || now <= 0 ? onward : (there - load(start)) / now;
  return (time: number) => Math.max(0, there + (time > now && later ? onward : time > now ? 0 : rate) * (time - now));
}
