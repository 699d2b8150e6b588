import type { GaugeAnswer, HoursLeft } from "../gauge/GaugeAnswer.js";
import { figOf } from "./figOf.js";
import { gaugeFinding } from "./gaugeFinding.js";
import { gaugeReason } from "./gaugeReason.js";
import { joined } from "./joined.js";
import { leftFigure } from "./leftFigure.js";
import { endClause } from "./lifeSentence.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

/** What the gauge says, as a sentence or three: is it the filter, and how long until the change limit. */
export function gaugeSentence(answer: GaugeAnswer, units: UnitSystem): Words {
  const { verdict, system, findings, reasons, pump, left } = answer;
  const why = joined(reasons.map((reason) => gaugeReason(reason, units)));
  if (verdict === "cannot tell") return say`Cannot tell yet what the gauge of ${system} says: ${why}.`;
  if (verdict === "other") {
    const names = [
      ...new Set(findings.filter(({ code }) => code !== "loading").map((one) => gaugeFinding(one, pump, units).name)),
    ];
    const known = reasons.every(({ code }) => code === "not the filter");
    const then = left
      ? say` ${leftWords(left, pump, units)}`
      : known
        ? []
        : say` How long the elements last cannot be told: ${why}.`;
    return say`Not only soil at ${system}: ${names.join("; ")}.${then}`;
  }
  const soil = say`It is the filter: soil explains what the gauge of ${system} reads.`;
  if (left) return say`${soil} ${leftWords(left, pump, units)}`;
  return reasons.length === 0 ? soil : say`${soil} How long they last cannot be told yet: ${why}.`;
}

/** Running time left, its ends, and what ends it. */
function leftWords(left: HoursLeft, pump: GaugeAnswer["pump"], units: UnitSystem): Words {
  const at = figOf("left", "temperature where the limit is met", quantity(left.pointTemperature, "temperature", units));
  const end = say`at full demand and ${at}, ${endClause(left.by, pump)}`;
  if (left.high === 0) return say`The change limit is met already: ${end}.`;
  return say`About ${leftFigure(left, "middle", units)} left, nine times in ten ${leftFigure(left, "low", units)} to ${leftFigure(left, "high", units)}; then, ${end}.`;
}
