import type { System } from "@thirstline/spec/system";
import { check } from "@thirstline/study";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { partsIn } from "../model/parts.js";
import * as edits from "./edits.js";
import { newPart, newParts } from "./newPart.js";

const heron = demo("heron.yaml");
const line = { side: "suction", at: 0 } as const;
const bank = { side: "suction", at: 3 } as const;
const fine = { side: "delivery", at: 1 } as const;
const names = (system: System) => partsIn(system).map(({ name }) => name);
const vacuumOf = (system: System) => check(system).points[0]?.vacuum.middle ?? Number.NaN;

test("branchHere(system, place) sets a copy beside a part, and unbranch takes it back", () => {
  const branched = edits.branchHere(heron, fine);
  expect(names(branched)).toEqual([...names(heron), "fine filter 2"]);
  const feed = (system: System) => check(system).points[0]?.feedPressure?.middle ?? Number.NaN;
  expect(feed(branched)).toBeGreaterThan(feed(heron));
  expect(edits.unbranch(branched, fine)).toEqual(heron);
});

test("addBranch(system, place) makes the bank wider and its vacuum less; removing the branch brings it back", () => {
  const wider = edits.addBranch(heron, bank);
  expect(names(wider)).toContain("prefilter C");
  expect(vacuumOf(wider)).toBeLessThan(vacuumOf(heron));
  expect(edits.removePart(wider, { ...bank, branch: 2, inner: 0 })).toEqual(heron);
});

test("removePart(system, place) of one of two branches leaves the other on the path", () => {
  const single = edits.removePart(heron, { ...bank, branch: 0, inner: 0 });
  expect(single.suction[3]).toMatchObject({ part: "filter", name: "prefilter B" });
});

test("movePart(system, place, by) moves a part and back, and not beyond the ends", () => {
  const moved = edits.movePart(heron, line, 1);
  expect(moved.suction.map(({ name }) => name).slice(0, 2)).toEqual(["elbows", "tank line"]);
  expect(edits.movePart(moved, edits.movedPlace(line, 1), -1)).toEqual(heron);
  expect(edits.movePart(heron, line, -1)).toBe(heron);
});

test("duplicatePart(system, place) gives the copy a name of its own", () => {
  expect(
    edits
      .duplicatePart(heron, line)
      .suction.map(({ name }) => name)
      .slice(0, 2),
  ).toEqual(["tank line", "tank line 2"]);
});

test("canRemove(system, place) keeps one part on the suction side", () => {
  const short = { ...heron, suction: heron.suction.slice(0, 1) };
  expect(edits.canRemove(short, line)).toBe(false);
  expect(edits.canRemove(heron, line)).toBe(true);
});

test.each(newParts)("insertPart(system, place, newPart(%j, system)) can be answered and costs something", (kind) => {
  const longer = edits.insertPart(heron, { side: "suction", at: 1 }, newPart(kind, heron));
  expect(longer.suction).toHaveLength(heron.suction.length + 1);
  expect(vacuumOf(longer)).toBeGreaterThan(vacuumOf(heron));
});
