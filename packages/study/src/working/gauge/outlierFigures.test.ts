import { expect, test } from "vitest";
import { EVENLY, oneGauge, plainBothSides, plainReadings, troubled } from "../../../../../tests/support/gaugeScenes.js";
import { outliersOf } from "../../gauge/outliersOf.js";
import { outlierFigures } from "./outlierFigures.js";

const group = "Reading that stands off";

test("outlierFigures(given, fits, outlier) come to the answer's, and say where the reading stands", () => {
  const { given, fits, fit } = oneGauge(troubled.outlier());
  const [outlier] = outliersOf("suction", fit);
  if (!outlier) throw new Error("none stands off");
  const all = outlierFigures(given, fits, outlier);
  expect(all.map((one) => [one.name, one.group, one.slow, one.make()?.value])).toEqual([
    ["pressure read", group, true, outlier.read],
    ["standard deviations off", group, true, outlier.deviations],
    ["pressure expected", group, true, expect.closeTo(outlier.expected, 6)],
    ["row", "Where it stands", undefined, 4],
    ["line of the file", "Where it stands", undefined, 5],
  ]);
  expect(all[0]?.make()).toMatchObject({
    name: "pressure read",
    kind: "vacuum",
    origin: { words: "noted: reading 4, line 5 of the readings" },
  });
});

test("outlierFigures(given, fits, outlier) of a feed pressure are as it is read, more of it being above zero", () => {
  const readings = plainReadings(EVENLY, (at) => ({ feedPressure: at === 2 ? 30e3 : 60e3 - 900 * at, line: null }));
  const { given, fits, fit } = oneGauge({
    system: plainBothSides,
    side: "delivery",
    readings,
    terms: [{ kind: "outlier", at: 2 }],
    sizes: [10],
  });
  const [outlier] = outliersOf("delivery", fit);
  if (!outlier) throw new Error("none stands off");
  expect(outlier.deviations).toBeLessThan(-5);
  const made = outlierFigures(given, fits, outlier).map((one) => one.make());
  expect(made.map((step) => step?.value)).toEqual([
    30e3,
    expect.closeTo(outlier.deviations, 9),
    expect.closeTo(outlier.expected, 5),
    3,
    undefined,
  ]);
  expect(made[0]).toMatchObject({ kind: "pressure", origin: { words: "noted: reading 3" } });
});

test("outlierFigures(given, fits, outlier) finds its own among several, and none where the gauge was not fitted", () => {
  const { given, fits, fit } = oneGauge({
    readings: plainReadings(EVENLY.map((read, at) => (at === 3 ? read + 6 : at === 5 ? read - 2 : read))),
    terms: [
      { kind: "step", at: 1 },
      { kind: "outlier", at: 3 },
      { kind: "outlier", at: 5 },
    ],
    sizes: [0, 8, -3],
  });
  const [, second] = outliersOf("suction", fit);
  if (!second) throw new Error("no second one");
  expect(second.row).toBe(6);
  const [read, deviations] = outlierFigures(given, fits, second);
  expect([read?.make()?.value, deviations?.make()?.value]).toEqual([second.read, second.deviations]);
  expect(outlierFigures(given, { ...fits, suction: null }, second)).toEqual([]);
  expect(outlierFigures(given, fits, { ...second, row: 99 })).toEqual([]);
});

test("outlierFigures(given, fits, outlier) are of what stands off, also where a step begins at the same reading", () => {
  const { given, fits, fit } = oneGauge({
    readings: plainReadings(EVENLY.map((read, at) => (at === 5 ? read + 6 : read))),
    terms: [
      { kind: "step", at: 5 },
      { kind: "outlier", at: 5 },
    ],
    sizes: [0, 8],
  });
  const [outlier] = outliersOf("suction", fit);
  const deviations = outlier && outlierFigures(given, fits, outlier)[1]?.make();
  expect(deviations?.value).toBe(outlier?.deviations);
  expect(outlier?.deviations).not.toBe(fit.explained.fits[0]?.fit.parameters[3]);
});
