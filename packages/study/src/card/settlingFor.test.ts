import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { settlingFor } from "./settlingFor.js";

const ICE = 273.15;
const heron = demoSystem("heron");
const lorry = demoSystem("lorry");

test("settlingFor(system, temperature) may find ice under 0 °C, and knows nothing over 40 °C", () => {
  expect(settlingFor(heron, ICE - 0.01)).toEqual({ code: "may be ice" });
  expect(settlingFor(heron, ICE + 40.01)).toEqual({ code: "not known" });
  expect([settlingFor(heron, ICE).code, settlingFor(heron, ICE + 40).code]).toEqual(["time", "time"]);
});

test("settlingFor(system, temperature) is for drops of 50 µm to fall through the deepest tank when full", () => {
  const deeper = { ...lorry, tanks: lorry.tanks.map((tank, at) => ({ ...tank, fullDepth: at === 0 ? 0.5 : 1 })) };
  const found = settlingFor(deeper, ICE + 15);
  expect(found).toMatchObject({ code: "time", size: 50e-6, depth: 1 });
  const half = settlingFor({ ...deeper, tanks: deeper.tanks.slice(0, 1) }, ICE + 15);
  expect("time" in half && "time" in found && found.time / half.time).toBeCloseTo(2, 6);
});

test("settlingFor(system, temperature) takes longer in the cold, where fuel is thicker", () => {
  const [warm, cold] = [ICE + 30, ICE + 2].map((at) => settlingFor(heron, at));
  expect(cold && warm && "time" in cold && "time" in warm && cold.time > warm.time).toBe(true);
});
