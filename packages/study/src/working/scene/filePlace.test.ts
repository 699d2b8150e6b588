import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { filePlace } from "./filePlace.js";

const filter = { part: "filter" };
const line = { part: "line" };
const system = {
  tanks: [{ path: [line] }],
  suction: [line, { part: "bank", branches: [[filter], [line, filter]] }],
} as unknown as System;
const several = { ...system, tanks: [...system.tanks, ...system.tanks] } as System;

test.each([
  [["suction", 0], "suction[0].line"],
  [["suction", 1], "suction[1].bank"],
  [["suction", 1, "branches", 0, 0], "suction[1].bank[0].filter"],
  [["suction", 1, "branches", 1, 1], "suction[1].bank[1][1].filter"],
  [["tanks", 0], "tank"],
])("filePlace(system, %j) is %j", (path, place) => {
  expect(filePlace(system, path)).toBe(place);
});

test("filePlace(system, path) numbers tanks where there are several", () => {
  expect(filePlace(several, ["tanks", 1])).toBe("tanks[1]");
  expect(filePlace(several, ["tanks", 1, "path", 0])).toBe("tanks[1].path[0].line");
});
