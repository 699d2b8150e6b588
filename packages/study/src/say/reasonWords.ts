import type { LimitName } from "@thirstline/core";
import type { CheckAnswer, CheckPoint, Reason } from "../check/CheckAnswer.js";
import { groundWords } from "./groundWords.js";
import { limitName } from "./limitName.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { QuantityKind, UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** What a reason is said about. */
export interface Said {
  readonly pump: CheckAnswer["pump"];
  readonly point: CheckPoint;
  readonly units: UnitSystem;
}

/** Why a verdict is what it is, as a clause. */
export function reasonWords(one: Reason, said: Said): Words {
  switch (one.code) {
    case "broken":
      return brokenWords(one.limit, said);
    case "over clean limit":
      return overCleanLimit(said);
    case "little in hand":
      return say`only ${inHandFigure(said.point)} in hand before ${limitName(one.limit, said.pump)} binds`;
    case "unsettled":
      return say`at the bad end of what is known of ${one.parts.join(", ")} ${limitName(one.limit, said.pump)} is broken, at the good end it is not; a flow test would settle it`;
    case "no vacuum limit":
      return say`no vacuum limit is given, and for this pump and fuel there is no published one to take; the maker's manual has it`;
    default:
      return groundWords(one, said.units);
  }
}

/** What is in hand at the bad end of what is known. */
export function inHandFigure(point: CheckPoint) {
  return fig("in hand", quantity(point.inHand.low, "ratio", "metric"));
}

function overCleanLimit({ pump, point, units }: Said): Words {
  const limit = point.vacuumLimits.clean ?? 0;
  const under = fig("clean limit", quantity(limit, "vacuum", units));
  // The verdict takes the bad end; the likely figure may be under the limit, and must then not be quoted as over it.
  const { middle, high } = point.vacuum;
  if (high <= limit)
    return say`${worseReading} clean elements go over the clean limit of ${under}, so there is no room for soil`;
  const drawn = fig("vacuum", quantity(middle > limit ? middle : high, "vacuum", units));
  const may = middle > limit ? "already draw" : "may already draw";
  return say`clean elements ${may} ${drawn} ${sideWords(pump).inlet} against a clean limit of ${under}, so there is no room for soil`;
}

/** Said where a figure on the smooth passage keeps the limit, and the worse reading breaks it. */
const worseReading = "on the worse reading of flow between laminar and turbulent";

function brokenWords(limit: LimitName, said: Said): Words {
  const { pump, point, units } = said;
  const words = sideWords(pump);
  const shown = (name: string, value: number, kind: QuantityKind) => fig(name, quantity(value, kind, units));
  switch (limit) {
    case "vacuum clean":
      return overCleanLimit(said);
    case "vacuum at change": {
      const vacuum = (point.vacuumNow ?? point.vacuum).middle;
      const most = point.vacuumLimits.atChange ?? 0;
      const over = shown("limit at change", most, "vacuum");
      if ((point.lowest?.pressure.middle ?? 0) < 0) {
        return say`the pump would have to draw ${shown("vacuum", vacuum, "vacuum")}, which is more than the air presses and over the limit at change of ${over}`;
      }
      if (vacuum <= most)
        return say`${worseReading} the vacuum ${words.inlet} goes over the limit at change of ${over}`;
      return say`the vacuum ${words.inlet} comes to ${shown("vacuum", vacuum, "vacuum")}, over the limit at change of ${over}`;
    }
    case "feed pressure": {
      const feed = point.feedPressure?.middle ?? Number.NaN;
      const under = shown("feed limit", point.feedLimit, "pressure");
      if (feed >= point.feedLimit)
        return say`${worseReading} the pressure ${words.feed} falls under the ${under} it needs`;
      return say`the pressure ${words.feed} comes to ${shown("feed pressure", feed, "pressure")}, under the ${under} it needs`;
    }
    case "vapour": {
      const lowest = point.lowest?.pressure.middle ?? Number.NaN;
      const boils = shown("vapour pressure", point.fuel.vapourPressure, "absolute pressure");
      if (lowest < 0) return say`the air cannot press so much fuel past ${point.lowest?.part ?? "the tank"}`;
      const where = `the pressure behind ${point.lowest?.part ?? "the tank"}`;
      if (lowest >= point.fuel.vapourPressure)
        return say`${worseReading} ${where} falls under the ${boils} at which the fuel boils`;
      return say`${where} falls to ${shown("lowest pressure", lowest, "absolute pressure")}, under the ${boils} at which the fuel boils`;
    }
    case "pump capacity":
      return say`the demand of ${shown("demand", point.demand.total, "flow")} is more than the pump can move`;
  }
}
