import { check, remedy } from "@thirstline/study";
import { expect, test } from "vitest";
import { carrySpreads } from "../edit/carrySpreads.js";
import { demo } from "../file/demos.test-support.js";
import { remedied } from "./remedied.js";

test.each(["crane-narrow-hose.yaml", "heron-finer.yaml", "generator-soiled.yaml"])(
  "remedied(%s, changes) stands on the sheet with what the remedy promised in hand",
  (file) => {
    const system = demo(file);
    const { single } = remedy(system);
    for (const { changes, inHand, temperature } of single) {
      const put = carrySpreads(system, remedied(system, changes));
      const [point] = check(put, { temperatures: [temperature] }).points;
      expect(point?.inHand.low).toBe(inHand);
    }
    expect(single.length).toBeGreaterThan(3);
  },
);

test("remedied(system, [warmer fuel]) is warmer in every season, and keeps the spreads that stay", () => {
  const system = demo("heron.yaml");
  const put = carrySpreads(system, remedied(system, [{ kind: "warmer fuel", by: 10 }]));
  expect(put.temperature).toBe(system.temperature + 10);
  expect(put.duty?.seasons?.map(({ temperature }) => temperature)).toEqual(
    system.duty?.seasons?.map(({ temperature }) => temperature + 10),
  );
  expect(put.spreads).toEqual(system.spreads);
});
