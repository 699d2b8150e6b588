import {
  filter,
  filtersAt,
  fitting,
  line,
  marginsOf,
  type Pump,
  parallel,
  pump,
  rise,
  type Supply,
  series,
  tank,
  valve,
} from "@thirstline/core";
import { expect, test } from "vitest";
import { hose, modelOf, plain } from "../../../../tests/support/plainSupply.js";

const toTank = (slip: { flow: number; rise: number; dynamicViscosity: number } | null) =>
  pump({ kind: "fixed", flow: 2e-4, slip, relief: 80e3, reliefTo: "tank" });

test("SupplyModel.state(demand) of two tanks 0.6 m apart lets the high one fill the low one at no demand", () => {
  // Equal laminar paths: the joint stands half-way between the heads, and 0.3 m of head drives each.
  const path = line({ length: 3, bore: 0.006, roughness: 0 });
  const { tanks, joint } = modelOf({ tanks: [tank({ depth: 0.2, path }), tank({ depth: 0.8, path })] }).intake.descent(
    0,
  );
  const head = 830 * 9.80665;
  const perFlow = (128 * 830 * 3e-6 * 3) / (Math.PI * 0.006 ** 4);
  expect(joint).toBeCloseTo(101325 + head * 0.5, 6);
  expect(tanks.map(({ flow }) => flow)).toEqual([
    expect.closeTo((-head * 0.3) / perFlow, 12),
    expect.closeTo((head * 0.3) / perFlow, 12),
  ]);
});

test("SupplyModel.intake.lowest(flow) leaves out what stands behind a valve that holds a low tank shut", () => {
  const path = series(hose, valve({ opening: 300, kv: 1e-3 }));
  const { intake } = modelOf({ tanks: [tank({ depth: 0.2, path }), tank({ depth: 0.8, path })] });
  const { tanks, lowest } = intake.descent(1e-9);
  expect(tanks[0]?.flow).toBe(0);
  expect(intake.lowest(1e-9)).toBe(lowest?.pressure);
  expect(lowest?.pressure).toBeCloseTo(101325 + 830 * 9.80665 * 0.2, 6);
});

test("SupplyModel.state(demand) of a pump that slips carries all it moves against its relief back to the tank", () => {
  // No friction: inlet 101325 + 1627.9039, rise 80000 - 1627.9039; slip 1e-5 per 1e5 Pa at this viscosity
  const slip = { flow: 1e-5, rise: 1e5, dynamicViscosity: 830 * 3e-6 };
  const model = modelOf({ suction: series(), pump: toTank(slip) });
  const moved = 2e-4 - 1e-10 * (80e3 - 1627.9039);
  expect(model.state(5e-5)).toMatchObject({
    suctionFlow: expect.closeTo(moved, 16),
    pumpRise: expect.closeTo(80e3 - 1627.9039, 6),
    relief: expect.closeTo(moved - 5e-5, 16),
    feedPressure: expect.closeTo(80e3, 6),
  });
});

test("SupplyModel.state(demand) slips twice as much in fuel half as thick as the one slip was measured in", () => {
  const slip = { flow: 1e-5, rise: 1e5, dynamicViscosity: 2 * 830 * 3e-6 };
  const model = modelOf({ suction: series(), pump: toTank(slip) });
  expect(model.state(5e-5).suctionFlow).toBeCloseTo(2e-4 - 2e-10 * (80e3 - 1627.9039), 16);
});

test("SupplyModel.state(demand) has no feed pressure, -Infinity, when nothing reaches a pump relieved to the tank", () => {
  const { vacuum, feedPressure } = modelOf({
    tanks: [tank({ depth: 0.2, vent: { kind: "blocked" } })],
    pump: toTank(null),
  }).state(5e-5);
  expect([vacuum, feedPressure]).toEqual([Infinity, -Infinity]);
});

test("marginsOf(model, limits) reckons the slip of a pump relieved to the tank with its whole rise, vacuum included", () => {
  // Inlet 20 kPa under the air, relief at 80 kPa gauge: the rise is 100 kPa before the valve opens. To feed 79 kPa it is 99.
  const slip = { flow: 1e-5, rise: 1e5, dynamicViscosity: 830 * 3e-6 };
  const suction = rise({ height: 0.2 + 20e3 / (830 * 9.80665) });
  const capacity = marginsOf(modelOf({ suction, pump: toTank(slip) }), { feedPressure: 79e3 }).get("pump capacity");
  expect(capacity?.(1e-4)).toBeCloseTo(2e-4 - 1e-10 * 99e3 - 1e-4, 15);
});

test("SupplyModel.state(demand) counts the kinetic pressure, twice the dynamic one, in the last bore before the pump", () => {
  // (1e-4 / (pi/4 0.012^2))^2 x 830 = 648.893383
  const wide = modelOf({ suction: fitting({ bore: 0.012, k: 0 }) });
  expect(wide.state(1e-4).vacuum - wide.state(0).vacuum).toBeCloseTo(648.893383, 6);
});

test("SupplyModel.state(demand) of a fixed pump has no rise beyond what it moves, and relieves what is over", () => {
  const slip = { flow: 1e-5, rise: 1e5, dynamicViscosity: 830 * 3e-6 };
  const { pumpRise, relief } = modelOf({ pump: pump({ ...plain.pump, slip } as Pump) }).state(5e-5);
  expect([pumpRise, relief]).toEqual([80e3, expect.closeTo(2e-4 - 1e-10 * 80e3 - 5e-5, 16)]);
  const model = modelOf({});
  expect([2e-4, 2.1e-4].map((demand) => model.state(demand).pumpRise)).toEqual([80e3, 0]);
});

test("SupplyModel.state(demand) takes the rise of a curve between its points, and holds the last", () => {
  const points = [
    { flow: 1e-4, rise: 30e3 },
    { flow: 2e-4, rise: 20e3 },
    { flow: 4e-4, rise: 5e3 },
  ];
  const model = modelOf({ pump: pump({ kind: "curve", points }) });
  const rises = [0, 1e-4, 1.5e-4, 3e-4, 4e-4, 5e-4].map((demand) => model.state(demand).pumpRise);
  expect(rises).toEqual([30e3, 30e3, expect.closeTo(25e3, 9), expect.closeTo(12.5e3, 9), 5e3, 5e3]);
});

test("SupplyModel.restrict(restrictions) sets named elements and takes others back to their own", () => {
  const fine = filter({ name: "fine", clean: { drop: 2000, flow: 5e-5, dynamicViscosity: 830 * 3e-6 } });
  const model = modelOf({ delivery: fine });
  const clean = model.state(5e-5).feedPressure ?? Number.NaN;
  model.restrict(new Map([["fine", 3]]));
  expect(model.state(5e-5).feedPressure).toBeCloseTo(clean - 4000, 8);
  model.restrict(new Map());
  expect(model.state(5e-5).feedPressure).toBe(clean);
});

test("filtersAt(model, demand) finds elements in branches, and none behind a pump whose delivery is shut", () => {
  const element = (name: string, blocked = false) =>
    filter({ name, clean: { drop: 2000, flow: 5e-5, dynamicViscosity: 830 * 3e-6 }, blocked });
  const names = (delivery: Supply["delivery"]) =>
    filtersAt(modelOf({ suction: parallel(element("a"), series(hose, element("b"))), delivery }), 5e-5).map(
      ({ part }) => part.name,
    );
  expect(names(element("c"))).toEqual(["a", "b", "c"]);
  expect(names(element("c", true))).toEqual(["a", "b"]);
});

const bare = "to be a circuit that resists flow, as several tanks join, got";

test.each<[string, Partial<Supply>, string]>([
  ["no tank", { tanks: [] }, "SupplyModel requires tanks to be one or more, got 0"],
  ["no air", { ambientPressure: 0 }, "SupplyModel requires ambientPressure to be more than 0 Pa, got 0"],
  [
    "two tanks of which one has no path",
    { tanks: [tank({ depth: 0, path: hose }), tank({ depth: 0 })] },
    `SupplyModel requires tanks[1].path ${bare} null`,
  ],
  [
    "two tanks with nothing but a rise between them",
    { tanks: [tank({ depth: 0, path: rise({ height: 1 }) }), tank({ depth: 0, path: hose })] },
    `SupplyModel requires tanks[0].path ${bare} an object`,
  ],
])("SupplyModel refuses %s", (_, supply, message) => {
  expect(() => modelOf(supply)).toThrow(message);
});

test.each([Number.NaN, -1e-5, Infinity])("SupplyModel.state(%d) is refused, and so is its descent", (demand) => {
  const model = modelOf({ delivery: filter({ clean: { drop: 1, flow: 1, dynamicViscosity: 1 } }) });
  const message = `state requires demand to be at least 0 m3/s, got ${demand}`;
  expect(() => model.state(demand)).toThrow(message);
  expect(() => model.descent(demand)).toThrow(message);
});

test("SupplyModel.intake.descent(q) of tanks whose paths cost next to nothing keeps mass, as tiny as drops are beside the air's pressure", () => {
  const wide = line({ length: 1, bore: 0.05, roughness: 0 });
  const tanks = [
    tank({ depth: 0.2, path: series(wide, valve({ opening: 4000, kv: 0.01 })) }),
    tank({ depth: 0.2, path: wide }),
  ];
  const flow = 1.4e-6;
  const shares = modelOf({ tanks })
    .intake.descent(flow)
    .tanks.map((share) => share.flow);
  expect(shares[0]).toBe(0);
  expect((shares[0] ?? 0) + (shares[1] ?? 0)).toBe(flow);
});

test("SupplyModel.suctionFlow(0) of a pump that slips with its relief to the tank is the swept flow less what its rise lets back", () => {
  const slip = { flow: 4e-5, rise: 1e5, dynamicViscosity: 830 * 3e-6 };
  const model = modelOf({ pump: pump({ kind: "fixed", flow: 2e-4, slip, relief: 80e3, reliefTo: "tank" }) });
  const moved = model.suctionFlow(0);
  const rise = 101325 + 80e3 - model.intake.pressure(moved);
  expect((2e-4 - (4e-5 * rise) / 1e5) / moved).toBeCloseTo(1, 13);
});

test("filtersAt(model, demand) has the filters behind a pulse pump, whose pressure nobody states", () => {
  const inLine = filter({ name: "in-line", clean: { drop: 2000, flow: 1e-5, dynamicViscosity: 830 * 3e-6 } });
  const model = modelOf({ pump: pump({ kind: "pulse", flow: 2e-5, suction: 2e4 }), delivery: inLine });
  expect(filtersAt(model, 1e-5).map(({ part, flow }) => [part.name, flow])).toEqual([["in-line", 1e-5]]);
  expect(filtersAt(model, 1e-5)[0]?.drop).toBeCloseTo(2000, 9);
});
