import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { fromFile, fromSource } from "../worked.js";
import { retold } from "./retold.js";

const line = (name: string, length: number) => ({ part: "line", name, length });
const rise = { part: "rise", name: "lower", height: -0.3 };
const file = {
  tanks: [
    { name: "left", lowDepth: 0.1, path: [line("left hose", 2)] },
    { name: "right", lowDepth: 0.2, path: [] },
  ],
  suction: [line("pipe", 3)],
} as unknown as System;

/** With a deeper right tank, a shorter left hose, and a climb before the pipe. */
const system = {
  tanks: [
    { name: "left", lowDepth: 0.1, path: [line("left hose", 1)] },
    { name: "right", lowDepth: 0.4, path: [] },
  ],
  suction: [rise, line("pipe", 3)],
} as unknown as System;

const told = (path: string, part?: readonly (string | number)[]) => {
  const step = fromFile(path, { name: "a figure", value: 1, unit: "m", part });
  const { part: place, origin } = retold(step, { file, system, change: "as changed" });
  return [
    place?.join(".") ?? null,
    origin.by === "file" ? origin.path : origin.by === "source" ? `source ${origin.source}` : "",
  ];
};

test.each([
  // What is as in the file stands at the file's own place, wherever the change has moved it.
  ["tanks[0].low depth", ["tanks", 0], "tanks.0", "tanks[0].low depth"],
  ["suction[1].line.length", ["suction", 1], "suction.0", "suction[0].line.length"],
  // What is changed has no place there.
  ["tanks[1].low depth", ["tanks", 1], null, "source as changed: low depth"],
  ["tanks[0].path[0].line.length", ["tanks", 0, "path", 0], null, "source as changed: length"],
  ["suction[0].rise", ["suction", 0], null, "source as changed"],
  ["suction[0].rise.height", ["suction", 0], null, "source as changed: height"],
] as const)("retold(step, changed) tells %s of part %j rightly", (path, part, place, origin) => {
  expect(told(path, part)).toEqual([place, origin]);
  // And so the second time that it is met.
  expect(told(path, part)).toEqual([place, origin]);
});

test("retold(step, changed) leaves what belongs to no part as it is, and moves what is no figure of the file", () => {
  expect(told("pump.flow")).toEqual([null, "pump.flow"]);
  const published = fromSource("a table", { name: "a figure", value: 1, unit: "m", part: ["suction", 1] });
  expect(retold(published, { file, system, change: "as changed" })).toEqual({ ...published, part: ["suction", 0] });
  const moved = fromSource("a table", { name: "a figure", value: 1, unit: "m", part: ["suction", 0] });
  expect("part" in retold(moved, { file, system, change: "as changed" })).toBe(false);
});
