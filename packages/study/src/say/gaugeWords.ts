import type { GaugeAnswer, GaugeCaution, Outlier } from "../gauge/GaugeAnswer.js";
import { gaugePlace } from "./gaugePlace.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

/** Readings that stand off, each with what was expected, and what it would be without them. */
export function outlierWords(outlier: Outlier, units: UnitSystem): string {
  const { side, read, expected, deviations } = outlier;
  const kind = side === "delivery" ? "pressure" : "vacuum";
  const name = side === "delivery" ? "a feed pressure" : "a vacuum";
  const shown = (value: number) => quantity(value, kind, units);
  return `${gaugePlace(outlier)}: ${name} of ${shown(read)} where the others let expect ${shown(expected)}, off by ${Math.abs(deviations).toFixed(1)} times the usual scatter. It is counted all the same; read it again.`;
}

/** The hours left without the readings that stand off, where that says something else; null where it does not matter. */
export function withoutWords({ left, leftWithout }: GaugeAnswer, units: UnitSystem): string | null {
  if (!left || !leftWithout) return null;
  const hours = (time: number) => quantity(time, "running time", units);
  const apart = Math.abs(left.middle - leftWithout.middle) > 0.1 * Math.max(left.middle, leftWithout.middle);
  const wider = left.high - left.low > 1.2 * (leftWithout.high - leftWithout.low);
  if (!apart && !wider) return "Without what stands off the hours left come out the same.";
  return `Without what stands off: about ${hours(leftWithout.middle)} left, nine times in ten ${hours(leftWithout.low)} to ${hours(leftWithout.high)}.`;
}

/** What the figures rest on, as sentences without a full stop. */
export function gaugeCautionTexts(answer: GaugeAnswer, units: UnitSystem): string[] {
  const noise = answer.sides.map(({ side, gaugeError, scatter, elements }) => {
    const kind = side === "delivery" ? "pressure" : "vacuum";
    const own = `${quantity(gaugeError.value, kind, units)} (${gaugeError.by === "stated" ? "as stated" : "common practice, no source"})`;
    const gauge = answer.sides.length < 2 ? "the gauge" : side === "delivery" ? "the feed gauge" : "the vacuum gauge";
    const taken = `${gauge} is taken to be read to ±${own}`;
    if (elements.length === 0) return taken;
    return `${taken}; with load and temperature as noted, and by their own scatter, readings stand ±${quantity(scatter, kind, units)} off`;
  });
  const limits = answer.left
    ? [
        "hours left are for going on as before: dirtier fuel or harder work shortens them; the manual's interval stays the rule",
      ]
    : [];
  return [...noise, ...answer.cautions.map((one) => cautionText(one, units)), ...limits];
}

function cautionText(caution: GaugeCaution, units: UnitSystem): string {
  switch (caution.code) {
    case "equal soil":
      return `what ${namesWords(caution.elements)} catch is not known well enough to tell their shares, so all are taken to grow alike`;
    case "one gauge":
      return `one gauge sees ${namesWords(caution.elements)} together; their shares are as the file predicts, not as read`;
    case "start":
      return startText(caution.by);
    case "earlier readings":
      return `${readingsText(caution.count)} from before the last change ${caution.count === 1 ? "is" : "are"} left out`;
    case "load taken":
      return `${readingsText(caution.count)} without a load: full load is taken, give or take 15 %`;
    case "temperature taken":
      return `${readingsText(caution.count)} without a fuel temperature: the file's ${quantity(caution.temperature, "temperature", units)} is taken, give or take 6 K`;
    case "level taken":
      return `${readingsText(caution.count)} without the tank's level: half-way is taken, and from full to low the gauge moves by ${quantity(caution.range, "vacuum", units)}`;
    case "after the jump":
      return `since ${gaugePlace(caution.from)} only ${readingsText(caution.count)} ${caution.count === 1 ? "counts" : "count"} for soil and hours`;
    case "no feed pressure":
      return `${namesWords(caution.elements)} cannot be seen by a vacuum gauge; note the feed pressure beside it`;
    case "no vacuum readings":
      return "no vacuum is noted, so the elements before the pump are taken as the file has them";
    case "file and machine apart":
      return `the machine draws ${quantity(Math.abs(caution.share), "ratio", units)} ${caution.share > 0 ? "more" : "less"} than the file lets expect; check its demand, lines and elements against the machine`;
  }
}

function startText(by: Extract<GaugeCaution, { code: "start" }>["by"]): string {
  switch (by) {
    case "change in the readings":
      return "the elements are taken as new at the change noted in the readings, all of them";
    case "last change":
      return "the elements are taken as new at the last change the file states";
    case "stated":
      return "the soil the file states is taken as that of the first reading";
    case "not known":
      return "when the elements were new is not known, so how much soil they had at the first reading is part of what is fitted; note changes";
  }
}

function readingsText(count: number): string {
  return count === 1 ? "1 reading" : `${count} readings`;
}
