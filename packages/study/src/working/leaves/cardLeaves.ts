import type { Asked } from "../Asked.js";
import type { Blocks, LeafRow } from "./Leaf.js";
import { remarkRows } from "./remarkLeaves.js";

type Block = Readonly<Record<string, unknown>>;
const of = (what: string) => (block: Block) => `${what} ${String(block.name)}`;

/** Figures of an answer to `card`. */
export const cardLeaves: readonly LeafRow[] = [
  ["temperature", "temperature on the day"],
  ["elements.*.head", of("head over")],
  ["elements.*.body", of("body of")],
  ["elements.*.bowl", of("bowl of")],
  ["relief", "relief of the pump"],
  ["duplex.vacuum.middle", "vacuum now"],
  ["volumes.bodies", "fuel in the bodies"],
  ["volumes.lines", "fuel in the lines beside"],
  ["priming.stroke", "sweep of a stroke"],
  ["priming.fill", "share of the sweep that moves"],
  ["priming.least", "least air to move"],
  ["priming.most", "most air to move"],
  ["priming.strokes.least", "least strokes"],
  ["priming.strokes.most", "most strokes"],
  ["water.temperature", "coldest season"],
  ["water.free", "free water"],
  ["water.reasons.*.early", "early end"],
  ["water.reasons.*.late", "late end"],
  [
    "water.stages.*.every",
    ({ element, kind }) => (kind === "bowl" ? `draining of ${element}` : `shutting of ${element} by water`),
  ],
  ["settling.size", "size of the drops"],
  ["settling.depth", "depth of the deepest tank"],
  ["settling.time", "time to settle"],
  ["readings.*.load", (block) => (isPart(block) ? "lowest load" : "full load")],
  ["readings.*.demand", (block) => (isPart(block) ? "demand at the lowest load" : "demand")],
  ["readings.*.vacuum.middle", "vacuum now"],
  ["readings.*.feedPressure.middle", "feed pressure"],
  ...remarkRows("check.reasons"),
  ["check.vacuumLimits.clean", "clean limit"],
  ["check.vacuumLimits.atChange", "limit at change"],
  ["check.feedLimit", "feed limit"],
  ["next.time", "next change"],
  ["next.distance", "service distance"],
  ["next.calendar", "calendar time between changes"],
];

/** Whether a figure of `card` is of a bank with one side shut. */
export function cardOf([first]: readonly (string | number)[]): string {
  return first === "duplex" ? "duplex" : "fitted";
}

/** A reading at part load is asked for at its own demand. */
export function cardAsked(blocks: Blocks): Asked {
  const reading = blocks.find(isPart);
  return reading === undefined ? {} : { demand: siOf(reading.demand) };
}

function isPart(block: Block): boolean {
  return "load" in block && siOf(block.load) < 1;
}

function siOf(figure: unknown): number {
  return (figure as { readonly value: number }).value;
}
