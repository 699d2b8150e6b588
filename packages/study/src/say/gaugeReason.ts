import type { GaugeReason } from "../gauge/GaugeAnswer.js";
import { figOf } from "./figOf.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

/** Why something cannot be told, as a clause that names what would settle it. */
export function gaugeReason(reason: GaugeReason, units: UnitSystem): Words {
  const hours = (end: "low" | "high", time: number) =>
    figOf("left", `running time left, ${end} end`, quantity(time, "running time", units));
  const counted = (figure: string, count: number) => figOf("readings", figure, String(count));
  switch (reason.code) {
    case "no readings":
      return say`no reading of a gauge is noted since the elements were new`;
    case "no duty for dates":
      return say`the readings have dates only, and the file does not say how many hours the machine runs (hours a day and days a year, under "duty")`;
    case "hours and dates mixed":
      return say`some readings have hours only and some dates only; one of the two is wanted on all`;
    case "no filter":
      return say`no filter stands open in the path`;
    case "shut":
      return say`nothing can pass: something in the path is shut, by the file`;
    case "too few readings":
      return say`there ${reason.count === 1 ? "is" : "are"} ${counted("readings at different times", reason.count)} ${reason.count === 1 ? "reading" : "readings"} and it takes ${counted("readings needed", reason.needed)} or more at different hours to see growth`;
    case "no trend":
      return say`${counted("readings at different times", reason.count)} readings show no growth beyond their own scatter; go on noting`;
    case "too wide": {
      const ends =
        reason.high === null
          ? say`${hours("low", reason.low)} and more`
          : say`${hours("low", reason.low)} to ${hours("high", reason.high)}`;
      return say`the laws that fit disagree, anywhere from ${ends}; later readings will settle it`;
    }
    case "no limit":
      return say`no limit is stated, or none is met however full the elements get`;
    case "no temperature to judge":
      return say`at every temperature of the duty the fuel is below its cloud point or outside its data`;
    case "not the filter":
      return say`what the readings show is not soil, and its hours would mean nothing; put that right and begin afresh`;
  }
}
