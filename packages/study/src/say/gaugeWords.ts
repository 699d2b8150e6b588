import type { GaugeAnswer, GaugeCaution, Outlier } from "../gauge/GaugeAnswer.js";
import { figOf } from "./figOf.js";
import { gaugePlace } from "./gaugePlace.js";
import { leftFigure } from "./leftFigure.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** A reading that stands off, with what was expected; its figures by the names that workings of it have. */
export function outlierWords(outlier: Outlier, units: UnitSystem): Words {
  const { side, read, expected, deviations } = outlier;
  const kind = side === "delivery" ? "pressure" : "vacuum";
  const name = side === "delivery" ? "a feed pressure" : "a vacuum";
  const shown = (figure: string, value: number) => fig(figure, quantity(value, kind, units));
  const off = fig("standard deviations off", Math.abs(deviations).toFixed(1));
  return say`${gaugePlace(outlier)}: ${name} of ${shown("pressure read", read)} where the others let expect ${shown("pressure expected", expected)}, off by ${off} times the usual scatter. It is counted all the same; read it again.`;
}

/** The hours left without the readings that stand off, where that says something else; null where it does not matter. */
export function withoutWords({ left, leftWithout }: GaugeAnswer, units: UnitSystem): Words | null {
  if (!left || !leftWithout) return null;
  const apart = Math.abs(left.middle - leftWithout.middle) > 0.1 * Math.max(left.middle, leftWithout.middle);
  const wider = left.high - left.low > 1.2 * (leftWithout.high - leftWithout.low);
  if (!apart && !wider) return say`Without what stands off the hours left come out the same.`;
  const end = (which: "low" | "middle" | "high") => leftFigure(leftWithout, which, units, "left without");
  return say`Without what stands off: about ${end("middle")} left, nine times in ten ${end("low")} to ${end("high")}.`;
}

/** What the figures rest on, as sentences without a full stop. */
export function gaugeCautionWords(answer: GaugeAnswer, units: UnitSystem): Words[] {
  const noise = answer.sides.map(({ side, gaugeError, scatter, elements }): Words => {
    const kind = side === "delivery" ? "pressure" : "vacuum";
    const error = figOf(side, "error of the gauge", quantity(gaugeError.value, kind, units));
    const by = gaugeError.by === "stated" ? "as stated" : "common practice, no source";
    const gauge = answer.sides.length < 2 ? "the gauge" : side === "delivery" ? "the feed gauge" : "the vacuum gauge";
    const taken = say`${gauge} is taken to be read to ±${error} (${by})`;
    if (elements.length === 0) return taken;
    return say`${taken}; with load and temperature as noted, and by their own scatter, readings stand ±${figOf(side, "scatter of a reading", quantity(scatter, kind, units))} off`;
  });
  const limits = answer.left
    ? [
        say`hours left are for going on as before: dirtier fuel or harder work shortens them; the manual's interval stays the rule`,
      ]
    : [];
  return [...noise, ...answer.cautions.map((one) => cautionWords(one, units)), ...limits];
}

function cautionWords(caution: GaugeCaution, units: UnitSystem): Words {
  const own = (figure: string, text: string) => figOf("readings", figure, text);
  switch (caution.code) {
    case "equal soil":
      return say`what ${namesWords(caution.elements)} catch is not known well enough to tell their shares, so all are taken to grow alike`;
    case "one gauge":
      return say`one gauge sees ${namesWords(caution.elements)} together; their shares are as the file predicts, not as read`;
    case "start":
      return say`${startText(caution.by)}`;
    case "earlier readings":
      return say`${readings("readings of elements changed since", caution.count)} from before the last change ${caution.count === 1 ? "is" : "are"} left out`;
    case "load taken":
      return say`${readings("readings without a load", caution.count)} without a load: full load is taken, give or take 15 %`;
    case "temperature taken":
      return say`${readings("readings without a temperature", caution.count)} without a fuel temperature: the file's ${own("temperature taken", quantity(caution.temperature, "temperature", units))} is taken, give or take 6 K`;
    case "level taken":
      return say`${readings("readings without a level", caution.count)} without the tank's level: half-way is taken, and from full to low the gauge moves by ${own("what the level makes of the vacuum", quantity(caution.range, "vacuum", units))}`;
    case "after the jump":
      return say`since ${gaugePlace(caution.from)} only ${caution.count === 1 ? "1 reading counts" : `${caution.count} readings count`} for soil and hours`;
    case "no feed pressure":
      return say`${namesWords(caution.elements)} cannot be seen by a vacuum gauge; note the feed pressure beside it`;
    case "no vacuum readings":
      return say`no vacuum is noted, so the elements before the pump are taken as the file has them`;
    case "file and machine apart":
      return say`the machine draws ${own("demand over the file's, less one", quantity(Math.abs(caution.share), "ratio", units))} ${caution.share > 0 ? "more" : "less"} than the file lets expect; check its demand, lines and elements against the machine`;
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

function readings(figure: string, count: number): Words {
  return say`${figOf("readings", figure, String(count))} ${count === 1 ? "reading" : "readings"}`;
}
