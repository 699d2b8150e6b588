import {
  ceilings,
  filter,
  fuelState,
  judge,
  line,
  parallel,
  pump,
  rise,
  type Supply,
  SupplyModel,
  series,
  tank,
} from "@thirstline/core";
import { expect, test } from "vitest";

const diesel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 0 });
const tested = (drop: number) => filter({ clean: { drop, flow: 200 / 3.6e6, dynamicViscosity: 830 * 3e-6 } });
const limits = { vacuumClean: 20e3, vacuumAtChange: 40e3, feedPressure: 25e3 };

// A ferry's engine, worked by hand. Burn 113 L/h and return 228 L/h make 341 L/h, 9.4722e-5 m3/s.
//   tank at its low level      830 x 9.80665 x 0.2                                = -1627.904 Pa
//   line 6 m of 19 mm          128 mu L Q/(pi D^4), Re 2116                       =   442.434 Pa
//   rise                       830 x 9.80665 x 0.9                                =  7325.568 Pa
//   two prefilters, 170.5 L/h each    2000 x 170.5/200                            =  1705.000 Pa
//   kinetic, factor 2          830 (Q/(pi/4 D^2))^2                               =    92.638 Pa
//   vacuum                                                                           7937.735 Pa
//   relief 80 kPa over the inlet, less the fine filter's 3000 x 341/200 = 5115       feed 66947.265 Pa
const ferry: Supply = {
  ambientPressure: 101325,
  tanks: [tank({ depth: 0.2 })],
  suction: series(
    line({ length: 6, bore: 0.019, roughness: 1.5e-6 }),
    rise({ height: 0.9 }),
    parallel(tested(2000), tested(2000)),
  ),
  pump: pump({ kind: "fixed", flow: 500 / 3.6e6, slip: null, relief: 80e3, reliefTo: "inlet" }),
  delivery: tested(3000),
};
const demand = 341 / 3.6e6;

test("SupplyModel.state(demand) of the ferry is what the sum by hand says", () => {
  const model = new SupplyModel(ferry, { fuel: diesel, passage: "smooth", end: "middle" });
  expect(model.state(demand)).toEqual({
    demand,
    suctionFlow: demand,
    vacuum: expect.closeTo(7937.7350012668, 6),
    pumpRise: 80e3,
    feedPressure: expect.closeTo(66947.264998733, 6),
    relief: expect.closeTo((500 - 341) / 3.6e6, 15),
  });
});

test("judge(ferry, …) holds, and its pump binds first: 500/341 - 1 in hand", () => {
  const { grade, middle } = judge(ferry, diesel, limits, demand);
  expect(grade).toBe("holds");
  expect(middle.atChange.limit).toBe("pump capacity");
  expect(middle.atChange.inHand).toBeCloseTo(500 / 341 - 1, 12);
  expect(middle.broken).toEqual([]);
});

test("judge(ferry, …) is tight below a fifth in hand, and starves beyond the pump", () => {
  expect(judge(ferry, diesel, limits, 420 / 3.6e6).grade).toBe("tight");
  const { grade, middle } = judge(ferry, diesel, limits, 501 / 3.6e6);
  expect(grade).toBe("starves");
  expect(middle.broken.map(({ limit }) => limit)).toEqual(["pump capacity"]);
});

test("judge(ferry, …) over the clean limit alone is tight: no room for soil", () => {
  const { grade, middle } = judge(ferry, diesel, { ...limits, vacuumClean: 7900 }, demand);
  expect([grade, middle.overCleanLimit]).toEqual(["tight", true]);
});

test("judge(ferry, …) takes the clean ceiling from clean elements when they are soiled", () => {
  const soiled = {
    ...ferry,
    suction: series(line({ length: 6, bore: 0.019, roughness: 1.5e-6 }), { ...tested(2000), restriction: 20 }),
  };
  const clean = { ...soiled, suction: series(line({ length: 6, bore: 0.019, roughness: 1.5e-6 }), tested(2000)) };
  const cleanOf = (supply: Supply) =>
    judge(supply, diesel, limits, demand).middle.ceilings.find(({ limit }) => limit === "vacuum clean");
  expect(cleanOf(soiled)).toEqual(cleanOf(clean));
});

// A day tank above a generator, worked by hand: 0.6 m of head, 6 m of 6 mm line, 4 mm2/s, nothing else.
//   head 830 x 9.80665 x 0.6 = 4883.7117 Pa; line 6.26245228e8 Q (Re 409); kinetic 1.03822941e12 Q^2
//   1.03822941e12 Q^2 + 6.26245228e8 Q = 4883.7117 at Q = 7.7001040e-6 m3/s, 27.72 L/h
test("ceilings(gravity, …) is the flow at which line and kinetic pressure have spent the head", () => {
  const fuel = fuelState({ density: 830, kinematicViscosity: 4e-6, vapourPressure: 0 });
  const dayTank: Supply = {
    ambientPressure: 101325,
    tanks: [tank({ depth: 0.1 })],
    suction: series(line({ length: 6, bore: 0.006, roughness: 0 }), rise({ height: -0.5 })),
    pump: { kind: "none" },
    delivery: null,
  };
  const feed = ceilings(dayTank, fuel, {}, 1e-6, "middle").find(({ limit }) => limit === "feed pressure");
  expect((feed?.flow ?? 0) / 7.700104047846467e-6).toBeCloseTo(1, 9);
});

test("judge(supply, …) answers for a pump whose slip eats all it would send back to the tank", () => {
  // At 80 kPa it would slip 3.2e-5 m3/s of the 1e-5 it sweeps; asked for 5e-6 it moves that against a rise of 12.5 kPa.
  const slip = { flow: 2e-5, rise: 50e3, dynamicViscosity: 830 * 3e-6 };
  const weak: Supply = {
    ...ferry,
    pump: pump({ kind: "fixed", flow: 1e-5, slip, relief: 80e3, reliefTo: "tank" }),
    delivery: null,
  };
  const model = new SupplyModel(weak, { fuel: diesel, passage: "smooth", end: "middle" });
  expect(model.suctionFlow(0)).toBe(0);
  expect(model.state(5e-6).pumpRise).toBeCloseTo(12.5e3, 6);
  // To bring fuel from 5.7 kPa under the air to 0 gauge costs 4e-10 x 5.7e3 of it: 7.7e-6 are left, half as much again.
  expect(judge(weak, diesel, {}, 5e-6).grade).toBe("holds");
  expect(judge(weak, diesel, { feedPressure: 20e3 }, 5e-6).grade).toBe("starves");
});

test("judge(supply, …) is unsettled when the low end starves: an element may help by holding back", () => {
  // Hot petrol over a hump in one of two branches, an element behind it known by its rating only.
  const petrol = fuelState({ density: 700, kinematicViscosity: 5e-7, vapourPressure: 60e3 });
  const element = filter({ rating: { size: 1e-5, kind: "beta 75", area: 1e-4, thickness: 6e-4 } });
  const over = series(
    rise({ height: 4 }),
    line({ length: 2, bore: 0.003, roughness: 0 }),
    rise({ height: -4 }),
    element,
  );
  const humped: Supply = {
    ambientPressure: 101325,
    tanks: [tank({ depth: 0 })],
    suction: parallel(over, line({ length: 10, bore: 0.01, roughness: 0 })),
    pump: pump({ kind: "fixed", flow: 1, slip: null, relief: 80e3, reliefTo: "inlet" }),
    delivery: null,
  };
  const { grade, lowEnd, highEnd, worse } = judge(humped, petrol, {}, 1.3e-4);
  expect([lowEnd.grade, highEnd.grade, grade]).toEqual(["starves", "holds", "unsettled"]);
  expect(worse).toBe(lowEnd);
});

test("judge(ferry, …) at all its pump can move is tight and breaks nothing", () => {
  const { grade, middle } = judge(ferry, diesel, limits, 500 / 3.6e6);
  expect([grade, middle.broken]).toEqual(["tight", []]);
});

test("judge(ferry, …) lists ceilings the lowest first, and keeps the limit at change out of the clean ones", () => {
  const { clean, ceilings: found } = judge(ferry, diesel, { ...limits, vacuumAtChange: 8e3 }, demand).middle;
  const inHand = found.map((one) => one.inHand);
  expect(inHand).toEqual([...inHand].sort((a, b) => a - b));
  expect(found[0]?.limit).toBe("vacuum at change");
  expect(clean?.limit).toBe("pump capacity");
  expect(judge(ferry, diesel, { ...limits, vacuumClean: 8e3 }, demand).middle.clean?.limit).toBe("vacuum clean");
});

test("judge(ferry, …) with one soiled element takes all but the clean ceiling from it as it is", () => {
  const soiled = { ...ferry, delivery: { ...tested(3000), restriction: 4 } };
  const of = (supply: Supply) => judge(supply, diesel, limits, demand).middle;
  const feed = (found: readonly { limit: string; flow: number }[]) =>
    found.find(({ limit }) => limit === "feed pressure")?.flow ?? Number.NaN;
  expect(feed(of(soiled).ceilings)).toBeLessThan(0.9 * feed(of(ferry).ceilings));
  expect(feed(of(soiled).cleanCeilings)).toBe(feed(of(ferry).ceilings));
});

test("judge(ferry, …) with one element known by its rating only is kinder at the low end, and worse at the high one", () => {
  const rated = filter({ rating: { size: 1e-5, kind: "beta 75", area: 0.02, thickness: 6e-4 } });
  const { lowEnd, middle, highEnd, worse } = judge({ ...ferry, delivery: rated }, diesel, limits, demand);
  const feed = [lowEnd, middle, highEnd].map(
    (one) => one.ceilings.find(({ limit }) => limit === "feed pressure")?.flow ?? Number.NaN,
  );
  expect(feed[0]).toBeGreaterThan(feed[1] ?? Number.NaN);
  expect(feed[1]).toBeGreaterThan(feed[2] ?? Number.NaN);
  expect(worse).toBe(highEnd);
});

test.each([0, -1, Number.NaN, Infinity])("judge(…, %d) is refused, and ceilings too", (asked) => {
  expect(() => judge(ferry, diesel, limits, asked)).toThrow(
    `judge requires demand to be more than 0 m3/s, got ${asked}`,
  );
  expect(() => ceilings(ferry, diesel, limits, asked, "middle")).toThrow(
    `ceilings requires demand to be more than 0 m3/s, got ${asked}`,
  );
});

test("judge refuses a limit that is no number, and ceilings too", () => {
  const wrong = { ...limits, vacuumAtChange: Number.NaN };
  const message = "requires limits.vacuumAtChange to be a finite number of Pa, got NaN";
  expect(() => judge(ferry, diesel, wrong, demand)).toThrow(`judge ${message}`);
  expect(() => ceilings(ferry, diesel, wrong, demand, "middle")).toThrow(`ceilings ${message}`);
});
