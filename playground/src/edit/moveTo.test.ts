import { check } from "@thirstline/study";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import type { Place } from "../model/Place.js";
import { insertPart } from "./edits.js";
import { moveTo } from "./moveTo.js";
import { newPart } from "./newPart.js";
import { setBranches } from "./setBranches.js";
import { slotsFor } from "./slots.js";

const heron = demo("heron.yaml");
const lorry = demo("lorry.yaml");
const suction = (at: number): Place => ({ side: "suction", at });
const names = (parts: readonly { readonly name: string }[] | undefined) => parts?.map(({ name }) => name);

test("moveTo(system, from, to) moves along a list, forth and back", () => {
  const { system, place } = moveTo(heron, suction(0), suction(3));
  expect(names(system.suction)?.slice(0, 3)).toEqual(["elbows", "rise", "tank line"]);
  expect(place).toEqual(suction(2));
  expect(moveTo(system, place, suction(0)).system).toEqual(heron);
});

test("moveTo(system, from, to) moves into a branch and over the pump", () => {
  const { system, place } = moveTo(heron, suction(0), { side: "suction", at: 3, branch: 0, inner: 1 });
  expect(place).toEqual({ side: "suction", at: 2, branch: 0, inner: 1 });
  const bank = system.suction[2];
  expect(bank?.part === "bank" && names(bank.branches[0])).toEqual(["prefilter A", "tank line"]);
  const over = moveTo(heron, suction(4), { side: "delivery", at: 0 });
  expect(names(over.system.delivery)).toEqual(["pump line", "delivery line", "fine filter"]);
});

test("moveTo(system, from, to) makes a bank of two its one branch when the other leaves", () => {
  const { system, place } = moveTo(heron, { side: "suction", at: 3, branch: 1, inner: 0 }, suction(5));
  expect(names(system.suction)?.slice(3)).toEqual(["prefilter A", "pump line", "prefilter B"]);
  expect(place).toEqual(suction(5));
});

test("slotsFor(system, place) leaves out where the part is, and branches for what cannot stand in one", () => {
  const words = slotsFor(heron, suction(0)).map((slot) => slot.words);
  expect(words).not.toContain("behind port tank");
  expect(words).toContain("in branch 1, behind prefilter A");
  expect(words).toContain("behind the pump");
  const bank = slotsFor(heron, suction(3)).map((slot) => slot.words);
  expect(bank.some((one) => one.startsWith("in branch"))).toBe(false);
  const rise = slotsFor(heron, suction(2)).map((slot) => slot.words);
  expect(rise.some((one) => one.startsWith("in branch"))).toBe(false);
});

test("every slot of every part of the ferry and the lorry is one that can be answered, or is refused in words", () => {
  for (const system of [heron, lorry]) {
    for (const at of system.suction.keys()) {
      for (const { place } of slotsFor(system, suction(at))) {
        const moved = moveTo(system, suction(at), place).system;
        try {
          expect(check(moved).points[0]?.vacuum.middle).not.toBeNaN();
        } catch (error) {
          expect((error as Error).message).toMatch(/rise/);
        }
      }
    }
  }
});

test("slotsFor(system, place) keeps the last part of a tank's own path where it is", () => {
  const own: Place = { side: "tank", tank: 0, at: 0 };
  const single = { ...lorry, tanks: lorry.tanks.map((tank) => ({ ...tank, path: tank.path.slice(0, 1) })) };
  expect(slotsFor(single, own)).toEqual([]);
  const longer = insertPart(single, own, newPart("Filter", single));
  expect(slotsFor(longer, own).map(({ words }) => words)).toContain("behind the joint");
});

test("setBranches(system, place, count) widens and narrows a bank, and makes and takes one away", () => {
  const count = (system: typeof heron) => {
    const part = system.suction[3];
    return part?.part === "bank" ? part.branches.length : 1;
  };
  expect(count(setBranches(heron, suction(3), 5))).toBe(5);
  expect(setBranches(setBranches(heron, suction(3), 5), suction(3), 2)).toEqual(heron);
  expect(count(setBranches(setBranches(heron, suction(3), 1), suction(3), 3))).toBe(3);
});
