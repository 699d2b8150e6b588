import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { Finding, GaugeAnswer } from "../gauge/GaugeAnswer.js";
import { gaugeFinding } from "./gaugeFinding.js";

const from = { row: 4, line: 5 };
const typed = { row: 4, line: null };
const said = (finding: Finding, pump: GaugeAnswer["pump"] = "fixed", units: "metric" | "us" = "metric") => {
  const { name, shows, check } = gaugeFinding(finding, pump, units);
  return { name, shows: marked(shows), check };
};

const jump = [
  "what was tanked just before: dirty or wet fuel, or wax on a cold day",
  "the bowls, for water",
  "the element, for a collapsed or wrinkled medium",
  "the line before it, for a kink or a crushed hose",
];
const high = [
  "the element: the right one, its arrow the right way, seals and wrapper out of the way",
  "every cock, fully open",
  "the tank's vent, and the strainer at the pick-up",
  "hoses, for a kink or a lining that has come loose",
  "whether the file is right about lines and elements",
];
const slip = [
  "every joint and seal before the pump, for air drawn in: foam or bubbles in a clear hose",
  "the fuel's level over the pick-up",
  "the lift pump: valves, vanes or diaphragm worn, drive slipping",
  "its relief valve, stuck open",
];
const low = [
  "the gauge: does it stand at zero, and is its line free?",
  "the load: was it what was noted?",
  "a feed pressure at the injection pump, noted beside the vacuum",
  "joints before the pump, for air",
  "the element and its bypass",
];
const cold = [
  "the fuel's cloud point, by its delivery note or a sample in the cold",
  "whether summer fuel is still in the tank",
  "the bowls, for water that can freeze",
  "the heater, where there is one",
  "a reading with warm fuel before any element is thrown away",
];
const falls = [
  "whether the elements were changed and nobody noted it",
  "the element, for a burst or a seal that lets fuel past",
  "its bypass valve, for one that leaks or stands open",
  "what is behind it, for dirt that has got through",
];
const weak = [
  "the element behind the pump: a pressure before and behind it tells",
  "the pump's relief valve",
  "the pump against a closed line, by its manual",
];
const cases: readonly (readonly [Finding, string, string, readonly string[]])[] = [
  [
    { code: "loading", side: "suction" },
    "soil",
    "The vacuum changes as soil on the elements before the pump changes it: steadily, and no more in the cold than viscosity explains.",
    [],
  ],
  [
    { code: "loading", side: "delivery" },
    "soil",
    "The feed pressure changes as soil on the elements behind the pump changes it: steadily, and no more in the cold than viscosity explains.",
    [],
  ],
  [
    { code: "jump", side: "suction", from, by: 4200 },
    "a jump",
    "From reading 4 (line 5) on the elements before the pump cost {size|4.2 kPa} more than soil brings from one reading to the next.",
    jump,
  ],
  [
    { code: "jump", side: "delivery", from: typed, by: 4200 },
    "a jump",
    "From reading 4 on the elements behind the pump cost {size|4.2 kPa} more than soil brings from one reading to the next.",
    jump,
  ],
  [
    { code: "high when new", side: "suction", from, by: 4200 },
    "too high when new",
    "From reading 4 (line 5) on, with new elements, the path before the pump costs {size|4.2 kPa} more than this file's does clean.",
    high,
  ],
  [
    { code: "air or slip", from, by: 4200, weakBy: 9300 },
    "air, or a slipping pump",
    "From reading 4 (line 5) on the vacuum is {size|4.2 kPa} too low and the feed pressure {feed pressure short by|9.3 kPa} too weak, both together. Cleaner elements would raise the feed pressure: this is not the filter.",
    slip,
  ],
  [
    { code: "low", from, by: 4200 },
    "too low",
    "From reading 4 (line 5) on the vacuum is {size|4.2 kPa} lower than it can be with the flow noted. Without a weak feed pressure beside it nobody can say whether air gets in, less fuel flows, or fuel goes round the element.",
    low,
  ],
  [
    { code: "cold", side: "suction", by: 4200, coldest: 263.15 },
    "worse in the cold than viscosity explains",
    "At {coldest reading|-10 °C} the elements before the pump cost {size|4.2 kPa} more than the fuel's viscosity accounts for, and it goes away when it is warm: wax, or ice, on the elements.",
    cold,
  ],
  [
    { code: "falls", side: "suction", from, by: 4200 },
    "it falls without a change",
    "From reading 4 (line 5) on the elements before the pump cost {size|4.2 kPa} less, and no change is noted.",
    falls,
  ],
  [
    { code: "falls", side: "delivery", from: null, by: 4200 },
    "it falls without a change",
    "Little by little the elements behind the pump cost {size|4.2 kPa} less, and no change is noted.",
    falls,
  ],
  [
    { code: "weak delivery", from, by: 4200 },
    "weak delivery",
    "From reading 4 (line 5) on the feed pressure is {size|4.2 kPa} weaker, and the vacuum does not show why: a plugged element behind the pump, or the pump itself.",
    weak,
  ],
];
test.each(cases)(
  "gaugeFinding(%j) says what shows and what to look at, in the order of work",
  (finding, name, shows, check) => {
    expect(said(finding)).toEqual({ name, shows, check });
  },
);

test("gaugeFinding(finding, 'none') has one side only, and its gauge at the engine", () => {
  expect(said({ code: "loading", side: "suction" }, "none").shows).toBe(
    "The pressure at the engine changes as soil on the elements changes it: steadily, and no more in the cold than viscosity explains.",
  );
  expect(said({ code: "jump", side: "suction", from, by: 4200 }, "none").shows).toBe(
    "From reading 4 (line 5) on the elements cost {size|4.2 kPa} more than soil brings from one reading to the next.",
  );
});

test("gaugeFinding(finding, pump, 'us') counts a vacuum in inHg and what a delivery side costs in psi", () => {
  // 3386.39 Pa is an inch of mercury, 6894.76 Pa a pound per square inch.
  const shows = (finding: Finding) => said(finding, "fixed", "us").shows;
  expect(shows({ code: "jump", side: "suction", from, by: 6772.8 })).toContain("cost {size|2.0 inHg} more");
  expect(shows({ code: "jump", side: "delivery", from, by: 13789.5 })).toContain("cost {size|2.0 psi} more");
  expect(shows({ code: "low", from, by: 6772.8 })).toContain("is {size|2.0 inHg} lower");
  expect(shows({ code: "weak delivery", from, by: 13789.5 })).toContain("is {size|2.0 psi} weaker");
  expect(shows({ code: "air or slip", from, by: 6772.8, weakBy: 20684.3 })).toContain(
    "{size|2.0 inHg} too low and the feed pressure {feed pressure short by|3.0 psi} too weak",
  );
});
