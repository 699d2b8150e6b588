import { expect, test } from "vitest";
import { cautionLines } from "./cautionLines.js";

const heat = { code: "return heat ignored" } as const;
const vent = { code: "vent blocked", tank: "left tank" } as const;

test("cautionLines(file, points) says a caution once, and for which temperatures when not for all", () => {
  const lines = cautionLines(
    [],
    [
      { temperature: 288.15, cautions: [heat, vent] },
      { temperature: 263.15, cautions: [heat] },
    ],
    "metric",
  );
  expect(lines).toEqual([
    "Keep in mind",
    "  - Heat that the return brings back to the tank is ignored; warmer fuel is",
    "    thinner and boils sooner.",
    "  - At 15 °C: the vent of left tank is blocked: the vacuum in the tank grows",
    "    until the pump starves.",
  ]);
});

test("cautionLines(file, points) begins with what the file leaves open, and leaves out what is about soil only", () => {
  const open = { code: "no altitude", path: "place", message: "no altitude is stated; sea level is taken" };
  const beta = { code: "one beta", path: "suction[0]", message: "one beta ratio only" };
  expect(cautionLines([open, beta], [], "metric")).toEqual([
    "Keep in mind",
    "  - No altitude is stated; sea level is taken.",
  ]);
  expect(cautionLines([beta], [], "metric")).toEqual([]);
});
