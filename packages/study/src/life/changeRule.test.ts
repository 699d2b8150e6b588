import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { changeRule } from "./changeRule.js";

const HOUR = 3600;
const YEAR = 1000 * HOUR; // of running

/** As much of a system as the rule looks at. */
function served(service: System["service"], distance?: number): System {
  const duty = { hoursADay: 10, daysAYear: 100, ...(distance === undefined ? {} : { distance }) };
  return { duty, ...(service === undefined ? {} : { service }) } as unknown as System;
}

describe("changeRule(system, year, restricted)", () => {
  test("is the manual's interval where nothing comes before", () => {
    const system = served({ interval: 250 * HOUR, atMost: 500 * HOUR });
    expect(changeRule(system, YEAR, 600 * HOUR)).toEqual({ time: 250 * HOUR, by: "manual's interval" });
    expect(changeRule(system, YEAR, null)).toEqual({ time: 250 * HOUR, by: "manual's interval" });
  });

  test("is restriction where a limit is met before the manual's interval", () => {
    expect(changeRule(served({ interval: 250 * HOUR }), YEAR, 90 * HOUR)).toEqual({
      time: 90 * HOUR,
      by: "restriction",
    });
  });

  test("counts a distance by the distance of a year", () => {
    const system = served({ interval: 900 * HOUR, distance: 20e6 }, 80e6);
    expect(changeRule(system, YEAR, null)).toEqual({ time: 250 * HOUR, by: "distance" });
  });

  test("cannot count a distance without one of a year", () => {
    const system = served({ interval: 900 * HOUR, distance: 20e6 });
    expect(changeRule(system, YEAR, null)).toEqual({ time: 900 * HOUR, by: "manual's interval" });
  });

  test("counts calendar time as so much of a year's running", () => {
    const system = served({ interval: 900 * HOUR, calendar: (365.25 / 2) * 24 * HOUR });
    expect(changeRule(system, YEAR, null)).toEqual({ time: 500 * HOUR, by: "calendar" });
  });

  test("is null where neither manual nor restriction says", () => {
    expect(changeRule(served(undefined), YEAR, null)).toBeNull();
  });

  test("is the manual's longest interval where that is shorter than its usual one", () => {
    const system = served({ interval: 250 * HOUR, atMost: 200 * HOUR });
    expect(changeRule(system, YEAR, null)).toEqual({ time: 200 * HOUR, by: "manual's longest interval" });
  });

  test("counts no distance that the manual does not name, nor any without a duty", () => {
    expect(changeRule(served({ interval: 900 * HOUR }, 80e6), YEAR, null)?.by).toBe("manual's interval");
    const idle = { service: { interval: 900 * HOUR, distance: 20e6, calendar: 1e9 } } as unknown as System;
    expect(changeRule(idle, YEAR, null)?.by).toBe("manual's interval");
  });

  test("is the first of all that are stated", () => {
    const all = { interval: 250 * HOUR, atMost: 500 * HOUR, distance: 20e6, calendar: (365.25 / 2) * 24 * HOUR };
    const by = (more: object, restricted: number | null = null) =>
      changeRule(served({ ...all, ...more }, 100e6), YEAR, restricted);
    expect(by({})).toEqual({ time: 200 * HOUR, by: "distance" });
    expect(by({ calendar: 24 * HOUR })?.by).toBe("calendar");
    expect(by({}, 199 * HOUR)?.by).toBe("restriction");
    // Of two at once the one that is named first.
    expect(by({ interval: 200 * HOUR })?.by).toBe("manual's interval");
  });
});
