import { quantity, readSystem, spreadQuantity } from "@thirstline/spec";
import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { writeSystem } from "../file/writeSystem.js";
import { carrySpreads } from "./carrySpreads.js";
import * as edits from "./edits.js";
import { newPart } from "./newPart.js";

const heron = demo("heron.yaml");
const paths = ({ spreads = [] }: System) => spreads.map(({ path }) => path.join("/"));

function readBack(system: System): System {
  const read = readSystem(writeSystem(system, { quantity, spreadQuantity }), { file: "written.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ line, message }) => `${line}: ${message}`).join("\n"));
  return read.system;
}

test("carrySpreads(before, after) moves spreads with their parts, and a file written then says the same", () => {
  const longer = carrySpreads(heron, edits.insertPart(heron, { side: "suction", at: 1 }, newPart("Line", heron)));
  expect(paths(heron)).toContain("suction/3/branches/0/0/capacityTest/soil");
  expect(paths(longer)).toContain("suction/4/branches/0/0/capacityTest/soil");
  expect(paths(longer)).toHaveLength(paths(heron).length);
  expect(readBack(longer)).toEqual(longer);
});

test("carrySpreads(before, after) gives a further branch the spread of the element it is a copy of, as one unknown", () => {
  const wider = carrySpreads(heron, edits.addBranch(heron, { side: "suction", at: 3 }));
  expect(paths(wider)).toContain("suction/3/branches/2/0/capacityTest/soil");
  expect(readBack(wider)).toEqual(wider);
});

test("carrySpreads(before, after) drops the spread of a figure that was changed, and of a part that was taken out", () => {
  const place = { side: "suction", at: 3, branch: 0, inner: 0 } as const;
  const filter = heron.suction[3]?.part === "bank" ? heron.suction[3].branches[0]?.[0] : undefined;
  if (filter?.part !== "filter" || filter.capacityTest === undefined) throw new Error("the ferry has changed");
  const changed: SystemPart = { ...filter, capacityTest: { ...filter.capacityTest, soil: 0.1 } };
  expect(paths(carrySpreads(heron, edits.setPart(heron, place, changed)))).toHaveLength(paths(heron).length - 1);
  expect(paths(carrySpreads(heron, edits.removePart(heron, place)))).toHaveLength(paths(heron).length - 1);
});

test("carrySpreads(before, after) keeps spreads beside the path", () => {
  const warmer = carrySpreads(heron, { ...heron, temperature: 290 });
  expect(paths(warmer)).toEqual(paths(heron));
});
