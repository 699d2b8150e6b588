import type { Finding, GaugeAnswer, GaugeSide } from "../gauge/GaugeAnswer.js";
import { gaugePlace } from "./gaugePlace.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** A finding in words: what shows, and what to look at. */
export interface FindingWords {
  /** a few words, as a heading */
  readonly name: string;
  /** what shows, as a sentence */
  readonly shows: Words;
  /** what to check, in the order of work */
  readonly check: readonly string[];
}

type Pump = GaugeAnswer["pump"];

/** What a finding says; its figures by the names that workings have. */
export function gaugeFinding(finding: Finding, pump: Pump, units: UnitSystem): FindingWords {
  const amount = (by: number, kind: "vacuum" | "pressure" = "vacuum") => fig("size", quantity(by, kind, units));
  const coldest = (at: number) => fig("coldest reading", quantity(at, "temperature", units));
  const on = (side: GaugeSide) =>
    side === "delivery" ? "feed pressure" : pump === "none" ? "pressure at the engine" : "vacuum";
  const costs = (side: GaugeSide, by: number) => amount(by, side === "delivery" ? "pressure" : "vacuum");
  const where = (side: GaugeSide) =>
    pump === "none" ? "" : side === "suction" ? " before the pump" : " behind the pump";
  switch (finding.code) {
    case "loading":
      return {
        name: "soil",
        shows: say`The ${on(finding.side)} changes as soil on the elements${where(finding.side)} changes it: steadily, and no more in the cold than viscosity explains.`,
        check: [],
      };
    case "jump":
      return {
        name: "a jump",
        shows: say`From ${gaugePlace(finding.from)} on the elements${where(finding.side)} cost ${costs(finding.side, finding.by)} more than soil brings from one reading to the next.`,
        check: [
          "what was tanked just before: dirty or wet fuel, or wax on a cold day",
          "the bowls, for water",
          "the element, for a collapsed or wrinkled medium",
          "the line before it, for a kink or a crushed hose",
        ],
      };
    case "high when new":
      return {
        name: "too high when new",
        shows: say`From ${gaugePlace(finding.from)} on, with new elements, the path${where(finding.side)} costs ${costs(finding.side, finding.by)} more than this file's does clean.`,
        check: [
          "the element: the right one, its arrow the right way, seals and wrapper out of the way",
          "every cock, fully open",
          "the tank's vent, and the strainer at the pick-up",
          "hoses, for a kink or a lining that has come loose",
          "whether the file is right about lines and elements",
        ],
      };
    case "air or slip":
      return {
        name: "air, or a slipping pump",
        shows: say`From ${gaugePlace(finding.from)} on the vacuum is ${amount(finding.by)} too low and the feed pressure ${fig("feed pressure short by", quantity(finding.weakBy, "pressure", units))} too weak, both together. Cleaner elements would raise the feed pressure: this is not the filter.`,
        check: [
          "every joint and seal before the pump, for air drawn in: foam or bubbles in a clear hose",
          "the fuel's level over the pick-up",
          "the lift pump: valves, vanes or diaphragm worn, drive slipping",
          "its relief valve, stuck open",
        ],
      };
    case "low":
      return {
        name: "too low",
        shows: say`From ${gaugePlace(finding.from)} on the vacuum is ${amount(finding.by)} lower than it can be with the flow noted. Without a weak feed pressure beside it nobody can say whether air gets in, less fuel flows, or fuel goes round the element.`,
        check: [
          "the gauge: does it stand at zero, and is its line free?",
          "the load: was it what was noted?",
          "a feed pressure at the injection pump, noted beside the vacuum",
          "joints before the pump, for air",
          "the element and its bypass",
        ],
      };
    case "cold":
      return {
        name: "worse in the cold than viscosity explains",
        shows: say`At ${coldest(finding.coldest)} the elements${where(finding.side)} cost ${costs(finding.side, finding.by)} more than the fuel's viscosity accounts for, and it goes away when it is warm: wax, or ice, on the elements.`,
        check: [
          "the fuel's cloud point, by its delivery note or a sample in the cold",
          "whether summer fuel is still in the tank",
          "the bowls, for water that can freeze",
          "the heater, where there is one",
          "a reading with warm fuel before any element is thrown away",
        ],
      };
    case "falls":
      return {
        name: "it falls without a change",
        shows: say`${finding.from === null ? "Little by little" : `From ${gaugePlace(finding.from)} on`} the elements${where(finding.side)} cost ${costs(finding.side, finding.by)} less, and no change is noted.`,
        check: [
          "whether the elements were changed and nobody noted it",
          "the element, for a burst or a seal that lets fuel past",
          "its bypass valve, for one that leaks or stands open",
          "what is behind it, for dirt that has got through",
        ],
      };
    case "weak delivery":
      return {
        name: "weak delivery",
        shows: say`From ${gaugePlace(finding.from)} on the feed pressure is ${amount(finding.by, "pressure")} weaker, and the vacuum does not show why: a plugged element behind the pump, or the pump itself.`,
        check: [
          "the element behind the pump: a pressure before and behind it tells",
          "the pump's relief valve",
          "the pump against a closed line, by its manual",
        ],
      };
  }
}
