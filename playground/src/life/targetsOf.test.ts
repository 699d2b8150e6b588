import { life } from "@thirstline/study";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { soiledBy, soilShare } from "./soiledBy.js";
import { targetsOf } from "./targetsOf.js";

function targetsFor(file: string) {
  const system = demo(file);
  const targets = targetsOf(system);
  if (targets === null) throw new Error(`no filter in ${file}`);
  return { system, targets };
}

test("targetsOf(system) is what life says of each filter at its end, whatever soil is stated", () => {
  const { system, targets } = targetsFor("heron.yaml");
  const due = life(system).elements.map(({ name, restriction }) => [name, restriction]);
  expect(targets).toEqual({ by: "life", due });
  expect(targetsOf(soiledBy(system, 0.5, targets))).toEqual(targets);
});

test("soilShare(soiledBy(system, share, targets), targets) is that share again", () => {
  const { system, targets } = targetsFor("heron.yaml");
  for (const share of [0, 0.25, 1, 1.5])
    expect(soilShare(soiledBy(system, share, targets), targets)).toBeCloseTo(share, 4);
  expect(soiledBy(soiledBy(system, 0.7, targets), 0, targets)).toEqual(system);
});

test("targetsOf(system) closes all filters alike where life cannot say, or has ended before it began", () => {
  expect(targetsFor("dewatering.yaml").targets).toEqual({ by: "alike", due: [["felt pick-up filter", 10]] });
  expect(targetsFor("heron-finer.yaml").targets.by).toBe("alike");
});
