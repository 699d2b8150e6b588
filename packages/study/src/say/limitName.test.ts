import { expect, test } from "vitest";
import { limitName } from "./limitName.js";
import { sideWords } from "./sideWords.js";

test("limitName(limit, pump) is the head of the tank where gravity feeds", () => {
  const limits = ["vacuum clean", "vacuum at change", "feed pressure", "vapour", "pump capacity"] as const;
  expect(limits.map((limit) => limitName(limit, "fixed"))).toEqual([
    "the vacuum limit with clean elements",
    "the vacuum limit at change",
    "the feed pressure",
    "the fuel's vapour pressure",
    "the pump's own capacity",
  ]);
  expect(limitName("feed pressure", "none")).toBe("the head of the tank");
  expect(limitName("vapour", "none")).toBe("the fuel's vapour pressure");
});

test("sideWords(pump) has one side, from tank to engine, where there is no pump", () => {
  expect(sideWords("none")).toEqual({
    suction: "Tank to engine",
    delivery: "To the engine",
    inlet: "at the engine",
    feed: "at the engine",
  });
  expect(sideWords("pulse")).toEqual({
    suction: "Tank to pump",
    delivery: "Pump to injection pump",
    inlet: "at the pump",
    feed: "at the injection pump",
  });
});
