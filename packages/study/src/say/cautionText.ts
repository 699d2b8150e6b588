import type { FuelCaution, MediumSource } from "@thirstline/core";
import type { Caution } from "../check/CheckAnswer.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

/** A caution as a sentence, without its full stop. */
export function cautionText(caution: Caution, units: UnitSystem): string {
  switch (caution.code) {
    case "fuel":
      return fuelText(caution.caution, units);
    case "transitional":
      return `the flow in ${caution.part} is between laminar and turbulent (Re ${whole(caution.reynolds)}), where no law holds; the verdict takes the worse`;
    case "estimated medium":
      return `${caution.part} is estimated from ${sources[caution.source]}, to a factor of ${caution.factor.toFixed(1)} either way; a flow test would settle it`;
    case "strainer laws":
      return `the published laws for the screen of ${caution.part} differ by about 2.5; both ends are judged`;
    case "reversed":
      return `${caution.part} is fitted against its flow arrow; what it catches is unknown`;
    case "housing share unknown":
      return `${caution.part} was tested at one flow, so the body's share of its drop is unknown and counted as soiled medium`;
    case "constant K in laminar flow":
      return `${caution.part} has a constant K, which reads low at Re ${whole(caution.reynolds)}; name its kind instead`;
    case "orifice at low Reynolds number":
      return `the coefficient of ${caution.part} is unsure at Re ${whole(caution.reynolds)}; it may cost more`;
    case "limit assumed":
      return `the vacuum limit ${caution.which === "both" ? "clean and at change" : caution.which} is not in the file; taken from ${caution.source}. The machine's manual comes first`;
    case "clean limit used at change":
      return "no vacuum limit at change is given, so the clean limit stands for it";
    case "altitude":
      return `at ${quantity(caution.altitude, "altitude", units)} the air presses with only ${quantity(caution.ambientPressure, "absolute pressure", units)}`;
    case "vapour margin":
      return caution.margin < 0
        ? `behind ${caution.part} the pressure is under the fuel's vapour pressure: it boils`
        : `behind ${caution.part} the pressure is only ${quantity(caution.margin, "pressure", units)} above the fuel's vapour pressure`;
    case "low point in the path":
      return `the lowest pressure on the way is not at its end but behind ${caution.part}: ${quantity(caution.pressure, "absolute pressure", units)}`;
    case "no bore at the pump":
      return "no line or fitting with a bore comes before the pump, so the fuel's motion is not counted in the vacuum";
    case "return heat ignored":
      return "heat that the return brings back to the tank is ignored; warmer fuel is thinner and boils sooner";
    case "freed air":
      return `at ${quantity(caution.vacuum, "vacuum", units)} of vacuum some ${quantity(caution.share, "ratio", units)} of gas by volume may come out of the fuel`;
    case "tank runs backwards":
      return `fuel runs back into ${caution.tank}, ${quantity(caution.flow, "flow", units)}; a check valve in its path would stop it`;
    case "vent blocked":
      return `the vent of ${caution.tank} is blocked: the vacuum in the tank grows until the pump starves`;
    case "delivery not judged":
      return "no delivery side is in the file, so nothing between pump and engine is counted";
    case "past terminal drop":
      return `${caution.part} already costs ${quantity(caution.drop, "pressure", units)}, and is due for change at ${quantity(caution.terminalDrop, "pressure", units)}`;
  }
}

function fuelText(caution: FuelCaution, units: UnitSystem): string {
  const at = (temperature: number) => quantity(temperature, "temperature", units);
  switch (caution.code) {
    case "below cloud point": {
      const plugging = caution.coldFilterPluggingPoint;
      const cfpp = plugging === undefined ? "" : `; its cold filter plugging point is ${at(plugging)}`;
      const sure = caution.estimated ? " (an estimate)" : "";
      return `below the cloud point of ${at(caution.cloudPoint)}${sure} wax can plug a filter whatever the figures say${cfpp}`;
    }
    case "cloud point not known":
      return `the cloud point is not given; fuel of this kind may carry wax below ${at(caution.limit)}`;
    case "below range":
      return `no data back this fuel's figures below ${at(caution.from)}`;
    case "above range":
      return `no data back this fuel's figures above ${at(caution.to)}`;
    case "beyond measured points":
      return `the viscosity was measured between ${at(caution.from)} and ${at(caution.to)} only`;
    case "part outside range":
      return `${caution.part}, ${quantity(caution.share, "ratio", units)} of the fuel, is known between ${at(caution.from)} and ${at(caution.to)} only`;
    case "estimated":
      return `estimated, not measured, for this fuel: ${caution.properties.join(", ")}`;
    case "water can freeze":
      return "free water can freeze: drain bowls and separators before the cold";
    case "no vapour pressure":
      return "no vapour pressure is known for this fuel; boiling is not judged";
  }
}

/** Where a medium's figures come from, in words. */
const sources: Readonly<Record<MediumSource, string>> = {
  "two-point flow test": "a flow test at two points",
  "one-point flow test": "a flow test at one point",
  geometry: "its geometry",
  "air test": "an air test",
  "fibre law": "its fibres",
  "rating estimate": "its rating",
};

function whole(reynolds: number): string {
  return reynolds.toFixed(0);
}
