import type { System } from "@thirstline/spec/system";
import { check } from "../check/check.js";
import { mapParts } from "../choose/mapParts.js";
import type { CardDuplex, CardElement } from "./CardAnswer.js";

/**
 * The first element that could be changed while others of its bank carry the flow, and what the gauge would then read at
 * full demand; null where no bank allows it. Whether the engine may run meanwhile is for the manual to say.
 */
export function duplexOf(system: System, elements: readonly CardElement[], temperature: number): CardDuplex | null {
  const first = elements.find(({ beside, standby }) => beside.length + standby.length > 0);
  if (!first) return null;
  const opened = first.beside.length === 0;
  const through = opened ? first.standby : first.beside;
  const turned = mapParts(system, (part) => {
    if (part.part !== "filter") return part;
    if (part.name === first.name) return { ...part, blocked: true };
    return opened && through.includes(part.name) ? { ...part, blocked: false } : part;
  });
  const { points, verdict } = check(turned, { temperatures: [temperature] });
  const [point] = points;
  const shut = point === undefined || point.reasons.some(({ code }) => code === "shut");
  return { first: first.name, through, opened, vacuum: shut ? null : (point.vacuumNow ?? point.vacuum), verdict };
}
