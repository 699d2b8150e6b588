import { describe, expect, test } from "vitest";
import type { FleetCaution, FleetReason } from "../fleet/FleetAnswer.js";
import { fleetCautionWords, fleetReasonWords } from "./fleetReasonWords.js";
import { plain } from "./words.js";

describe("fleetReasonWords(reason) names what would settle it", () => {
  const said: readonly (readonly [FleetReason, string])[] = [
    [{ code: "file at fault" }, "its system file is at fault or missing"],
    [{ code: "log at fault", line: 7 }, "line 7 of the log, which is of it, is at fault"],
    [
      { code: "log dated ahead", date: "2026-12-01" },
      "the log has a row of it on 2026-12-01, after today; correct the day",
    ],
    [
      { code: "runs backwards", meter: "hours", date: "2026-12-01" },
      "its hour meter runs backwards on 2026-12-01; correct the figure, or note the new meter",
    ],
    [
      { code: "runs backwards", meter: "distance", date: "2026-12-01" },
      "its distance meter runs backwards on 2026-12-01; correct the figure, or note the new meter",
    ],
    [
      { code: "no such element", element: "C", known: ["A", "B"] },
      'the log says "changed C", and it has no such element; it has A and B',
    ],
    [{ code: "no filter" }, "no filter stands open in its path"],
    [{ code: "no interval" }, 'its manual\'s interval is not stated (under "service" of its system file)'],
    [
      { code: "last change unknown", elements: ["A"] },
      'when A was last changed is not known; put it into the log as "changed all" with its day',
    ],
    [
      { code: "hours unknown", elements: ["A"] },
      "how many hours it runs is not known; log two readings of its hour meter two weeks apart, or state its duty",
    ],
    [
      { code: "distance unknown", elements: ["A"] },
      "how far it goes is not known; log two readings of its distance meter two weeks apart, or state its distance a year",
    ],
    [{ code: "no answer", message: "the pump cannot lift it" }, "the pump cannot lift it"],
  ];
  test.each(said)("%j", (reason, words) => expect(fleetReasonWords(reason)).toBe(words));
});

describe("fleetCautionWords(caution, units) says what the entry rests on, in the units asked for", () => {
  const said: readonly (readonly [FleetCaution, "metric" | "us", string])[] = [
    [
      { code: "starves clean" },
      "metric",
      "a limit is broken with new elements already, at the worst of its duty, which no change of theirs mends: look for " +
        "what else on the way costs so much",
    ],
    [
      { code: "gauge at the change limit", value: 42e3, limit: 40e3 },
      "metric",
      "the gauge showed 42.0 kPa, and the limit at change is 40.0 kPa",
    ],
    [
      { code: "gauge over the clean limit", value: 21e3, limit: 20e3 },
      "us",
      "with elements nearly new the gauge showed 6.2 inHg, over the clean limit of 5.9 inHg: before changing them again " +
        "look for a kinked line, a closed cock or a blocked vent",
    ],
    [{ code: "gauge not used" }, "us", "a gauge reading is not used: there is no limit to hold it against"],
    [
      { code: "stood still" },
      "metric",
      "it stood still between the last readings, so only the calendar counts; read its hour meter when it runs again",
    ],
  ];
  test.each(said)("%j in %s", (caution, units, words) => expect(plain(fleetCautionWords(caution, units))).toBe(words));
});

test("fleetCautionWords(caution, units) gives each figure the name its working has", () => {
  const named = (code: "gauge at the change limit" | "gauge over the clean limit") =>
    fleetCautionWords({ code, value: 42e3, limit: 40e3 }, "metric").flatMap((piece) =>
      typeof piece === "string" ? [] : [piece.figure],
    );
  expect(named("gauge at the change limit")).toEqual(["gauge", "limit at change"]);
  expect(named("gauge over the clean limit")).toEqual(["gauge", "clean limit"]);
});
