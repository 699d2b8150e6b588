import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { risesBefore } from "./risesBefore.js";

const rise = (name: string, height: number): SystemPart => ({ part: "rise", name, height });
const filter = (name: string) => ({ part: "filter", name }) as unknown as SystemPart;
const bank = (name: string, ...branches: SystemPart[][]): SystemPart => ({ part: "bank", name, branches });

const suction = [
  rise("to the frame", 0.5),
  filter("screen"),
  bank("screen pair", [rise("left", 0.1), filter("left filter")], [rise("right", 0.1), filter("right filter")]),
  rise("to the pump", 0.3),
  filter("last"),
];
const system = { tanks: [], suction } as unknown as System;
const to = (name: string) => {
  const { found, rises } = risesBefore(system, ["suction"], suction, name);
  return [found, ...stepLines(rises)];
};

test("risesBefore(system, place, parts, name) tells the climbs on the way to a part, and no others", () => {
  const first = "climb of to the frame (length, m) | file suction[0].rise.height | 0.5";
  expect(to("to the frame")).toEqual([true]);
  expect(to("screen")).toEqual([true, first]);
  const left = "climb of left (length, m) | file suction[2].bank[0][0].rise.height | 0.1";
  expect(to("left filter")).toEqual([true, first, left]);
  expect(to("right filter")).toEqual([
    true,
    first,
    "climb of right (length, m) | file suction[2].bank[1][0].rise.height | 0.1",
  ]);
  // Beyond a bank any of its branches will do.
  const last = "climb of to the pump (length, m) | file suction[3].rise.height | 0.3";
  expect(to("last")).toEqual([true, first, left, last]);
  expect(to("elsewhere")).toEqual([false, first, left, last]);
});

test("risesBefore(system, place, parts, name) takes a filter for what is named, and not a bank", () => {
  const row = [bank("twin", [rise("inside", 0.2), filter("twin")])];
  const { found, rises } = risesBefore({ tanks: [], suction: row } as unknown as System, ["suction"], row, "twin");
  expect(found).toBe(true);
  expect(rises.map(({ value }) => value)).toEqual([0.2]);
});

test("risesBefore(system, place, parts, name) goes past a bank without branches", () => {
  const row = [bank("empty"), rise("after", 0.4), filter("last")];
  const { rises } = risesBefore({ tanks: [], suction: row } as unknown as System, ["suction"], row, "last");
  expect(rises.map(({ value }) => value)).toEqual([0.4]);
});
