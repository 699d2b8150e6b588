import { filter, fitting, marginsOf, parallel, rise, series, tank, valve } from "@thirstline/core";
import { expect, test } from "vitest";
import { hose, modelOf } from "../../../../tests/support/plainSupply.js";

const clean = { drop: 2000, flow: 5e-5, dynamicViscosity: 830 * 3e-6 };
const head = 830 * 9.80665;

test("SupplyModel.descent(demand) counts velocity in the last bore, of a fitting as of a line", () => {
  // (1e-4 / (pi/4 0.012^2))^2 x 830 = 648.893383
  const [entry] = modelOf({ suction: fitting({ bore: 0.012, k: 0 }) }).descent(1e-4).suction;
  expect(entry?.kind).toBe("part");
  expect((entry?.total ?? 0) - (entry?.pressure ?? 0)).toBeCloseTo(648.893383, 6);
});

test("SupplyModel.descent(demand) has no pressure from a shut element on", () => {
  const suction = series(hose, filter({ clean, blocked: true }), hose);
  const entries = modelOf({ suction }).descent(0).suction;
  expect(entries.map(({ pressure, total }) => [pressure === null, total === null])).toEqual([
    [false, false],
    [true, true],
    [true, true],
  ]);
});

test("SupplyModel.descent(demand).lowest names the part behind which pressure is lowest, the first of equals", () => {
  const hump = modelOf({ suction: series(rise({ height: 1 }), rise({ height: 0 }), rise({ height: -1 })) });
  const { lowest } = hump.descent(1e-5);
  expect(lowest?.pressure).toBeCloseTo(101325 - 0.8 * head, 6);
  expect(lowest?.after?.path).toEqual([0]);
  expect(hump.intake.lowest(1e-5)).toBe(lowest?.pressure);
  // In a branch of a bank, and behind a bank as a whole.
  const branch = series(hose, rise({ height: 2 }), rise({ height: -2 }));
  expect(modelOf({ suction: parallel(branch, hose) }).descent(1e-5).lowest?.after?.path).toEqual([0, 1]);
  expect(modelOf({ suction: parallel(filter({ clean }), filter({ clean })) }).descent(5e-5).lowest?.pressure).toBe(
    modelOf({ suction: parallel(filter({ clean }), filter({ clean })) }).intake.lowest(5e-5),
  );
});

test("SupplyModel.descent(demand) of a path at the tank is that of the same path in the suction", () => {
  const path = series(hose, rise({ height: 1 }), rise({ height: -1 }));
  const [atTank, inSuction] = [
    modelOf({ tanks: [tank({ depth: 0.2, path })], suction: filter({ clean }) }),
    modelOf({ suction: series(path, filter({ clean })) }),
  ];
  const [split, whole] = [atTank.descent(1e-4), inSuction.descent(1e-4)];
  expect(split.tanks.map(({ flow }) => flow)).toEqual([1e-4]);
  const pressures = [...(split.tanks[0]?.descent ?? []), ...split.suction].map(({ pressure }) => pressure);
  expect(pressures).toEqual(whole.suction.map(({ pressure }) => pressure));
  expect(split.joint).toBe(split.tanks[0]?.descent.at(-1)?.total);
  expect(atTank.vacuum(1e-4)).toBe(inSuction.vacuum(1e-4));
  expect(atTank.intake.lowest(1e-4)).toBe(inSuction.intake.lowest(1e-4));
  expect(atTank.intake.lowest(1e-4)).toBe(split.lowest?.pressure);
});

test("SupplyModel.intake.lowest(0) of one tank counts what its check valve holds, as flow begins", () => {
  const path = valve({ opening: 2000, kv: 1e-3 });
  const { intake } = modelOf({ tanks: [tank({ depth: 0.2, path })] });
  expect(intake.lowest(0)).toBeCloseTo(101325 + 0.2 * head - 2000, 8);
});

test("SupplyModel.descent(demand) goes on behind the pump, from its outlet, where a delivery is stated", () => {
  const model = modelOf({ delivery: filter({ clean }) });
  const [entry] = model.descent(5e-5).delivery;
  expect(entry?.pressure).toBeCloseTo(101325 - model.vacuum(5e-5) + 80e3 - 2000, 8);
  expect(modelOf({}).descent(5e-5).delivery).toEqual([]);
});

test("marginsOf(model, limits) of a tank that cannot breathe are all -Infinity but the pump's", () => {
  const model = modelOf({ tanks: [tank({ depth: 0.2, vent: { kind: "blocked" } })] });
  expect(model.intake.lowest(1e-5)).toBe(-Infinity);
  const margins = [...marginsOf(model, { vacuumClean: 1e4 })].map(([limit, margin]) => [limit, margin(1e-5)]);
  expect(margins).toEqual([
    ["vacuum clean", -Infinity],
    ["vapour", -Infinity],
    ["feed pressure", -Infinity],
    ["pump capacity", 2e-4 - 1e-5],
  ]);
});
