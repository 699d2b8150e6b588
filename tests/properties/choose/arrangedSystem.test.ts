import { quantity, readSystem, spreadQuantity } from "@thirstline/spec";
import { arrangedSystem, arrangementFigures, life, lifeDraws } from "@thirstline/study";
import { expect, test } from "vitest";
import { writeSystem } from "../../../playground/src/file/writeSystem.js";
import { demoElements, demoSystem, sized } from "./arrangements.js";

const heron = demoSystem("heron");
const elements = demoElements("elements.csv");
const stages = [
  { element: "element P30 tall", count: 3 },
  { element: "element P30 tall", count: 1 },
];

test("arrangedSystem(system, elements, side, arrangement) is what its file reads back as, spreads and all", () => {
  const system = arrangedSystem(heron, elements, "suction", { stages, bore: 0.022 });
  const back = readSystem(writeSystem(system, { quantity, spreadQuantity }), { file: "put.yaml" });
  expect("system" in back && back.system).toEqual(system);
  const names = system.suction.flatMap((part) =>
    part.part === "bank" ? part.branches.flat().map(({ name }) => name) : part.part === "filter" ? [part.name] : [],
  );
  expect(names).toEqual(["element P30 tall A", "element P30 tall B", "element P30 tall C", "element P30 tall"]);
  expect(system.suction.every((part) => part.part !== "line" || part.bore === 0.022)).toBe(true);
});

test("arrangedSystem keeps one element one unknown at all of its places, and the file's own spreads", () => {
  const { spreads = [] } = arrangedSystem(heron, elements, "suction", { stages, bore: null });
  const ofStages = spreads.filter(({ path }) => path[0] === "suction" && path.includes("soil"));
  expect(ofStages).toHaveLength(4);
  expect(new Set(ofStages.map(({ group }) => group)).size).toBe(1);
  const elsewhere = (heron.spreads ?? []).filter(({ path }) => path[0] !== "suction").map(({ path }) => path);
  for (const path of elsewhere) expect(spreads.map((one) => one.path)).toContainEqual(path);
});

test("arrangementFigures(system, temperatures) are what the search itself says of its best", () => {
  const answer = sized(heron, elements.slice(0, 6), { stages: 1 });
  const best = answer.arrangements[answer.best.vacuum ?? -1];
  if (!best) throw new Error("none found");
  const system = arrangedSystem(heron, elements, answer.side, best);
  expect(arrangementFigures(system, answer.temperatures).life).toBe(best.life);
  expect(life(system).end?.time ?? null).toBe(best.life);
  // Where nothing is drawn beyond the middle, a life of the spread stands around it.
  const [low, high] = [...lifeDraws(system, { from: 0, to: 20, seed: 1 })]
    .sort((a, b) => a - b)
    .filter((_, at) => at % 19 === 0);
  expect(low).toBeLessThan(best.life ?? Infinity);
  expect(high).toBeGreaterThan(best.life ?? 0);
});

test("arrangedSystem refuses an element that is not in the catalogue", () => {
  const unknown = [{ element: "element Q", count: 1 }];
  expect(() => arrangedSystem(heron, elements, "suction", { stages: unknown, bore: null })).toThrow(
    "arrangedSystem requires element to be one of the catalogue, got",
  );
});
