import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { bench } from "../../../../../tests/properties/working/benches.js";
import { sceneOf } from "../scene/Scene.js";
import { feedLimit, vacuumLimit } from "./limits.js";

const INCH_OF_MERCURY = 3386.388640341;
const petrol: Partial<System> = { fuel: { kind: "petrol", class: "EN 228 A", ethanol: 0 } };

/** Where a limit comes from, in a word, and what it comes to, Pa. */
function told(change: Partial<System>, which: "clean" | "at change"): string {
  const step = vacuumLimit(sceneOf(bench(change), {}), which);
  if (!step) return "none";
  const { origin, value, name } = step;
  expect(name).toBe(which === "clean" ? "clean limit" : "limit at change");
  const from = origin.by === "words" ? origin.from.map((one) => one.origin) : [origin];
  const places = from.map((one) => (one.by === "file" ? one.path : one.by === "formula" ? one.formula.id : one.by));
  return `${Math.round(value)} by ${origin.by} ${places.join(", ")}`;
}

test.each<[Partial<System>, clean: string, atChange: string]>([
  [
    { limits: { vacuumClean: 13e3, vacuumAtChange: 25e3 } },
    "13000 by file limits.vacuum clean",
    "25000 by file limits.vacuum at change",
  ],
  [{ limits: {} }, "20318 by formula guidance-limit", "40637 by formula guidance-limit"],
  [{ limits: { vacuumAtChange: 30e3 } }, "20318 by formula guidance-limit", "30000 by file limits.vacuum at change"],
  [
    { limits: { vacuumAtChange: 9e3 } },
    "9000 by words limits.vacuum at change",
    "9000 by file limits.vacuum at change",
  ],
  [{ limits: { vacuumClean: 13e3 } }, "13000 by file limits.vacuum clean", "40637 by formula guidance-limit"],
  [{ limits: { vacuumClean: 50e3 } }, "50000 by file limits.vacuum clean", "50000 by words limits.vacuum clean"],
  [
    { ...petrol, limits: { vacuumClean: 13e3 } },
    "13000 by file limits.vacuum clean",
    "13000 by words limits.vacuum clean",
  ],
  [{ ...petrol, limits: { vacuumAtChange: 9e3 } }, "none", "9000 by file limits.vacuum at change"],
  [{ ...petrol, limits: {} }, "none", "none"],
  [{ pump: { kind: "none" }, limits: {} }, "none", "none"],
])("vacuumLimit of %j is %s clean and %s at change", (change, clean, atChange) => {
  expect([told(change, "clean"), told(change, "at change")]).toEqual([clean, atChange]);
});

test("vacuumLimit by guidance is 6 conventional inches of mercury clean, and 12 at change", () => {
  const scene = sceneOf(bench({ limits: {} }), {});
  const inches = (which: "clean" | "at change") => (vacuumLimit(scene, which)?.value ?? 0) / INCH_OF_MERCURY;
  expect(inches("clean")).toBeCloseTo(6, 12);
  expect(inches("at change")).toBeCloseTo(12, 12);
});

test("feedLimit(scene) is the file's, and else that the engine need not suck", () => {
  const stated = feedLimit(sceneOf(bench({ limits: { feedPressure: 20e3 } }), {}));
  expect(stated).toMatchObject({ value: 20e3, origin: { by: "file", path: "limits.feed pressure" } });
  const none = feedLimit(sceneOf(bench({}), {}));
  expect(none).toMatchObject({ value: 0, unit: "Pa", kind: "pressure", origin: { by: "words" } });
});
