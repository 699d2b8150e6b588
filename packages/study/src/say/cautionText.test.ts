import type { FuelCaution, MediumSource } from "@thirstline/core";
import { expect, test } from "vitest";
import type { Caution } from "../check/CheckAnswer.js";
import { cautionText } from "./cautionText.js";

const ICE = 273.15;
const cases: readonly (readonly [Caution, string])[] = [
  [
    { code: "transitional", part: "hose", reynolds: 2711.4 },
    "the flow in hose is between laminar and turbulent (Re 2711), where no law holds; the verdict takes the worse",
  ],
  [
    { code: "strainer laws", part: "screen" },
    "the published laws for the screen of screen differ by about 2.5; both ends are judged",
  ],
  [{ code: "reversed", part: "A" }, "A is fitted against its flow arrow; what it catches is unknown"],
  [
    { code: "housing share unknown", part: "A" },
    "A was tested at one flow, so the body's share of its drop is unknown and counted as soiled medium",
  ],
  [
    { code: "constant K in laminar flow", part: "tee", reynolds: 400 },
    "tee has a constant K, which reads low at Re 400; name its kind instead",
  ],
  [
    { code: "orifice at low Reynolds number", part: "jet", reynolds: 800 },
    "the coefficient of jet is unsure at Re 800; it may cost more",
  ],
  [
    { code: "limit assumed", which: "both", source: "a handbook" },
    "the vacuum limit clean and at change is not in the file; taken from a handbook. The machine's manual comes first",
  ],
  [
    { code: "limit assumed", which: "at change", source: "a handbook" },
    "the vacuum limit at change is not in the file; taken from a handbook. The machine's manual comes first",
  ],
  [{ code: "clean limit used at change" }, "no vacuum limit at change is given, so the clean limit stands for it"],
  [{ code: "altitude", altitude: 3000, ambientPressure: 70.1e3 }, "at 3000 m the air presses with only 70.1 kPa"],
  [
    { code: "vapour margin", margin: -100, part: "A" },
    "behind A the pressure is under the fuel's vapour pressure: it boils",
  ],
  [
    { code: "vapour margin", margin: 0, part: "A" },
    "behind A the pressure is only 0.0 kPa above the fuel's vapour pressure",
  ],
  [
    { code: "vapour margin", margin: 3e3, part: "A" },
    "behind A the pressure is only 3.0 kPa above the fuel's vapour pressure",
  ],
  [
    { code: "low point in the path", pressure: 80e3, part: "rise" },
    "the lowest pressure on the way is not at its end but behind rise: 80.0 kPa",
  ],
  [
    { code: "no bore at the pump" },
    "no line or fitting with a bore comes before the pump, so the fuel's motion is not counted in the vacuum",
  ],
  [
    { code: "return heat ignored" },
    "heat that the return brings back to the tank is ignored; warmer fuel is thinner and boils sooner",
  ],
  [
    { code: "freed air", share: 0.05, vacuum: 30e3 },
    "at 30.0 kPa of vacuum some 5 % of gas by volume may come out of the fuel",
  ],
  [
    { code: "tank runs backwards", tank: "day tank", flow: 12e-3 / 3600 },
    "fuel runs back into day tank, 12.0 L/h; a check valve in its path would stop it",
  ],
  [
    { code: "vent blocked", tank: "day tank" },
    "the vent of day tank is blocked: the vacuum in the tank grows until the pump starves",
  ],
  [{ code: "delivery not judged" }, "no delivery side is in the file, so nothing between pump and engine is counted"],
  [
    { code: "past terminal drop", part: "A", drop: 32e3, terminalDrop: 30e3 },
    "A already costs 32.0 kPa, and is due for change at 30.0 kPa",
  ],
];
test.each(cases)("cautionText(%j, 'metric') is what to know before relying on a figure", (caution, text) => {
  expect(cautionText(caution, "metric")).toBe(text);
});

const sources: readonly (readonly [MediumSource, string])[] = [
  ["two-point flow test", "a flow test at two points"],
  ["one-point flow test", "a flow test at one point"],
  ["geometry", "its geometry"],
  ["air test", "an air test"],
  ["fibre law", "its fibres"],
  ["rating estimate", "its rating"],
];
test.each(sources)(
  "cautionText(estimated medium) of %s says what it rests on and how sure that is",
  (source, words) => {
    expect(cautionText({ code: "estimated medium", part: "A", source, factor: 2 }, "metric")).toBe(
      `A is estimated from ${words}, to a factor of 2.0 either way; a flow test would settle it`,
    );
  },
);

const temperature = ICE - 20;
const wax = { code: "below cloud point", temperature, cloudPoint: ICE - 16, estimated: false } as const;
const ofFuel: readonly (readonly [FuelCaution, string])[] = [
  [wax, "below the cloud point of -16 °C wax can plug a filter whatever the figures say"],
  [
    { ...wax, estimated: true, coldFilterPluggingPoint: ICE - 26 },
    "below the cloud point of -16 °C (an estimate) wax can plug a filter whatever the figures say; its cold filter plugging point is -26 °C",
  ],
  [
    { code: "cloud point not known", temperature, limit: ICE + 5 },
    "the cloud point is not given; fuel of this kind may carry wax below 5 °C",
  ],
  [{ code: "below range", temperature, from: ICE - 10 }, "no data back this fuel's figures below -10 °C"],
  [{ code: "above range", temperature, to: ICE + 60 }, "no data back this fuel's figures above 60 °C"],
  [
    { code: "beyond measured points", temperature, from: ICE - 10, to: ICE + 40 },
    "the viscosity was measured between -10 °C and 40 °C only",
  ],
  [
    { code: "part outside range", temperature, part: "ethanol", share: 0.1, from: ICE - 10, to: ICE + 40 },
    "ethanol, 10 % of the fuel, is known between -10 °C and 40 °C only",
  ],
  [
    { code: "estimated", properties: ["density", "viscosity"] as never },
    "estimated, not measured, for this fuel: density, viscosity",
  ],
  [{ code: "water can freeze", temperature }, "free water can freeze: drain bowls and separators before the cold"],
  [{ code: "no vapour pressure" }, "no vapour pressure is known for this fuel; boiling is not judged"],
];
test.each(ofFuel)("cautionText(fuel, 'metric') of %j says what its data do not cover", (caution, text) => {
  expect(cautionText({ code: "fuel", caution }, "metric")).toBe(text);
});

test("cautionText(caution, 'us') has every figure in the reader's units", () => {
  expect(cautionText({ code: "altitude", altitude: 3048, ambientPressure: 68947.6 }, "us")).toBe(
    "at 10000 ft the air presses with only 10.0 psia",
  );
  expect(cautionText({ code: "fuel", caution: wax }, "us")).toContain("the cloud point of 3.2 °F wax");
});
