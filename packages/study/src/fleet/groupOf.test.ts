import { expect, test } from "vitest";
import type { FleetReason } from "./FleetAnswer.js";
import type { FleetMachine } from "./FleetMachine.js";
import { groupOf } from "./groupOf.js";
import type { Limit } from "./limitsOfElement.js";

const window = { on: 1000, within: 90 };
const limit = (day: number, latest = Infinity, by = "hours") => ({ by, day, latest }) as Limit;
const group = (limits: readonly Limit[], more: object = {}, stakes: FleetMachine["stakes"] = null, of = window) =>
  groupOf({ stakes } as FleetMachine, limits, { reasons: [], runsRight: true, ...more }, of);

test.each([
  [[], "later"],
  [[limit(1091)], "later"],
  [[limit(1090)], "within"],
  [[limit(1008)], "within"],
  [[limit(1007)], "now"],
  [[limit(900)], "now"],
  [[limit(900, 1000)], "now"],
  [[limit(900, 999)], "late"],
  // One of several is enough, whichever is due first.
  [[limit(1050), limit(1080, 999)], "late"],
] as const)("groupOf(machine, %j) is %s", (limits, name) => expect(group(limits)).toBe(name));

test("groupOf(machine, limits) looks no further than it is asked to", () => {
  expect(group([limit(1003)], {}, null, { on: 1000, within: 3 })).toBe("now");
  expect(group([limit(1004)], {}, null, { on: 1000, within: 3 })).toBe("later");
});

test.each([
  ["hours", true, "a nuisance", "left alone"],
  ["calendar", true, "a nuisance", "left alone"],
  ["hours", false, "a nuisance", "within"],
  ["hours", true, "stops the work", "within"],
  ["hours", true, null, "within"],
  ["restriction", true, "a nuisance", "within"],
  ["gauge", true, "a nuisance", "within"],
] as const)(
  "groupOf(machine, limits) due by %s, running right %j, whose stop is %j, is %s",
  (by, runsRight, stakes, name) => {
    expect(group([limit(1050, Infinity, by)], { runsRight }, stakes)).toBe(name);
  },
);

test.each(["log dated ahead", "no such element", "runs backwards", "no filter"])(
  "groupOf(machine, limits) with the reason %j cannot say anything",
  (code) => expect(group([limit(900, 900)], { reasons: [{ code } as FleetReason] })).toBe("cannot say"),
);

test("groupOf(machine, limits) with another reason can say late and now, and no more", () => {
  const reasons = [{ code: "hours unknown" } as FleetReason];
  expect(group([limit(900, 900)], { reasons })).toBe("late");
  expect(group([limit(1007)], { reasons })).toBe("now");
  expect(group([limit(1008)], { reasons })).toBe("cannot say");
  expect(group([], { reasons })).toBe("cannot say");
});
