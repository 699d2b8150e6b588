import type { FleetCaution, FleetReason } from "../fleet/FleetAnswer.js";
import { joined } from "./joined.js";
import { lifeReasonWords } from "./lifeReasonWords.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What cannot be told of a machine, as a clause that names what would settle it. */
export function fleetReasonWords(reason: FleetReason): string {
  switch (reason.code) {
    case "file at fault":
      return "its system file is at fault or missing";
    case "log at fault":
      return `line ${reason.line} of the log, which is of it, is at fault`;
    case "log dated ahead":
      return `the log has a row of it on ${reason.date}, after today; correct the day`;
    case "runs backwards":
      return `its ${reason.meter === "hours" ? "hour" : "distance"} meter runs backwards on ${reason.date}; correct the figure, or note the new meter`;
    case "no such element":
      return `the log says "changed ${reason.element}", and it has no such element; it has ${namesWords(reason.known)}`;
    case "no filter":
      return "no filter stands open in its path";
    case "no interval":
      return 'its manual\'s interval is not stated (under "service" of its system file)';
    case "last change unknown":
      return `when ${namesWords(reason.elements)} was last changed is not known; put it into the log as "changed all" with its day`;
    case "hours unknown":
      return `how many hours it runs is not known; log two readings of its hour meter two weeks apart, or state its duty`;
    case "distance unknown":
      return `how far it goes is not known; log two readings of its distance meter two weeks apart, or state its distance a year`;
    case "no answer":
      return reason.message;
  }
}

/** What an entry rests on, as a clause; its figures by the names that workings of the machine have. */
export function fleetCautionWords(caution: FleetCaution, units: UnitSystem): Words {
  const vacuum = (figure: string, value: number) => fig(figure, quantity(value, "vacuum", units));
  switch (caution.code) {
    case "restriction not followed":
      return say`the restriction is not predicted: ${joined(
        caution.reasons.map((one) => lifeReasonWords(one, units)),
        ", and ",
      )}`;
    case "starves clean":
      return say`a limit is broken with new elements already, at the worst of its duty, which no change of theirs mends: look for what else on the way costs so much`;
    case "gauge at the change limit":
      return say`the gauge showed ${vacuum("gauge", caution.value)}, and the limit at change is ${vacuum("limit at change", caution.limit)}`;
    case "gauge over the clean limit":
      return say`with elements nearly new the gauge showed ${vacuum("gauge", caution.value)}, over the clean limit of ${vacuum("clean limit", caution.limit)}: before changing them again look for a kinked line, a closed cock or a blocked vent`;
    case "gauge not used":
      return say`a gauge reading is not used: there is no limit to hold it against`;
    case "stood still":
      return say`it stood still between the last readings, so only the calendar counts; read its hour meter when it runs again`;
  }
}
