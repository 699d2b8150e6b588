import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { plainSystem } from "../../../../tests/support/plainSystem.js";
import { mapParts } from "./mapParts.js";
import { filterPlaces, isInside, placesOf } from "./places.js";

const rise = (name: string): SystemPart => ({ part: "rise", name, height: 1 });
const bank = (name: string, ...branches: SystemPart[][]): SystemPart => ({ part: "bank", name, branches });
const { delivery: _, ...plain } = plainSystem;
const machine: System = {
  ...plain,
  tanks: [
    { ...(plain.tanks[0] as System["tanks"][number]), path: [rise("t1")] },
    { ...(plain.tanks[0] as System["tanks"][number]), name: "other", path: [rise("t2"), rise("t3")] },
  ],
  suction: [rise("s1"), bank("b1", [rise("s2")], [rise("s3"), bank("b2", [rise("s4")], [rise("s5")])]), rise("s6")],
  delivery: [rise("d1")],
};

test("placesOf(system) has every part with the path to it, in the order the fuel meets them", () => {
  expect(placesOf(machine).map(({ part, path }) => `${part.name}: ${path.join(".")}`)).toEqual([
    "t1: tanks.0.path.0",
    "t2: tanks.1.path.0",
    "t3: tanks.1.path.1",
    "s1: suction.0",
    "b1: suction.1",
    "s2: suction.1.branches.0.0",
    "s3: suction.1.branches.1.0",
    "b2: suction.1.branches.1.1",
    "s4: suction.1.branches.1.1.branches.0.0",
    "s5: suction.1.branches.1.1.branches.1.0",
    "s6: suction.2",
    "d1: delivery.0",
  ]);
  expect(placesOf({ ...plain, tanks: [], suction: [] })).toEqual([]);
  expect(filterPlaces(plain).map(({ part, path }) => [part.name, path])).toEqual([["fitted", ["suction", 1]]]);
});

test("isInside(path, place) is of the place itself and all in it, of nothing around or beside it", () => {
  const place = ["suction", 1];
  const paths = [["suction", 1], ["suction", 1, "area"], ["suction"], ["suction", 2], ["delivery", 1], []];
  expect(paths.map((path) => isInside(path, place))).toEqual([true, true, false, false, false, false]);
  expect(
    isInside([undefined as unknown as string], [undefined as unknown as string, undefined as unknown as string]),
  ).toBe(false);
});

const marked = (part: SystemPart): SystemPart => ({ ...part, name: `${part.name}'` });
const namesOf = (system: System) => placesOf(system).map(({ part }) => part.name);

test("mapParts(system, change) changes every part, those in banks and banks themselves, and leaves spreads out", () => {
  const found = mapParts({ ...machine, spreads: [{ path: ["altitude"], low: 0, high: 1 }] }, marked);
  expect(namesOf(found)).toEqual(namesOf(machine).map((name) => `${name}'`));
  expect(found).not.toHaveProperty("spreads");
  expect(mapParts(plain, marked)).not.toHaveProperty("delivery");
});

test("mapParts(system, change, side) changes one side alone, the tanks' ways being of the suction side", () => {
  const suction = namesOf(mapParts(machine, marked, "suction"));
  expect(suction.filter((name) => !name.endsWith("'"))).toEqual(["d1"]);
  const delivery = namesOf(mapParts(machine, marked, "delivery"));
  expect(delivery.filter((name) => name.endsWith("'"))).toEqual(["d1'"]);
  expect(namesOf(mapParts(machine, marked, "everywhere"))).toEqual(namesOf(mapParts(machine, marked)));
});

test("mapParts(system, change) takes several parts for one, or none, from the innermost out", () => {
  const found = mapParts(machine, (part) => {
    if (part.name === "s4") return [rise("x"), rise("y")];
    if (part.name === "s6" || part.name === "d1") return [];
    return part.part === "bank" ? { ...part, name: `${part.name} of ${part.branches.flat().length}` } : part;
  });
  expect(namesOf(found)).toEqual(["t1", "t2", "t3", "s1", "b1 of 3", "s2", "s3", "b2 of 3", "x", "y", "s5"]);
});
