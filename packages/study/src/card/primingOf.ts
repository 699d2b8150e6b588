import { InputError } from "@thirstline/core";
import type { CardElement, CardPriming, CardVolumes } from "./CardAnswer.js";
import { PRIMER_FILL, primingStrokes } from "./primingStrokes.js";

/** What the asker knows of priming. */
export interface PrimingAsked {
  /** sweep of a stroke, m3; null where nobody states it */
  readonly stroke: number | null;
  readonly saidAllowed: boolean;
}

/**
 * How the air is got out again. An element is filled before it is fitted only where the manual allows it: by what the
 * asker says of it, unless the file says it forbids it, which stands.
 */
export function primingOf(
  elements: readonly CardElement[],
  volumes: CardVolumes,
  { stroke, saidAllowed }: PrimingAsked,
): CardPriming {
  if (stroke !== null && !(stroke > 0 && stroke < Infinity)) {
    throw new InputError("card", "primer", "more than 0 m3", stroke);
  }
  const filled = elements.filter(({ style }) => style !== "in-tank" && style !== "screen");
  const sayOf = ({ prefill }: CardElement) => (prefill === "forbidden" || !saidAllowed ? prefill : "allowed");
  const named = (say: CardElement["prefill"]) => filled.filter((one) => sayOf(one) === say).map(({ name }) => name);
  const dry = filled.filter((one) => sayOf(one) !== "allowed");
  const least = dry.reduce((sum, { body, bowl }) => sum + (body ?? bowl ?? 0), 0);
  const most = least + volumes.lines;
  const strokesFor = (volume: number) => primingStrokes({ volume, stroke: stroke ?? 1, fill: PRIMER_FILL });
  return {
    allowed: named("allowed"),
    forbidden: named("forbidden"),
    assumed: named(null),
    saidAllowed,
    stroke,
    fill: PRIMER_FILL,
    least,
    most,
    strokes: stroke === null ? null : { least: strokesFor(least), most: strokesFor(most) },
    unknown: dry.filter(({ body }) => body === null).map(({ name }) => name),
  };
}
