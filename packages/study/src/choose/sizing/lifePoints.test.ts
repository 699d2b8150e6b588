import { fuelState, type LimitName, marginsOf, SupplyModel } from "@thirstline/core";
import { build, type System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { heron, systems } from "../../../../../tests/properties/choose/cases.js";
import { elementOf, litresAnHour, plainSystem, viscosity, WARM } from "../../../../../tests/support/plainSystem.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { headOf } from "./headOf.js";
import { lifePoints } from "./lifePoints.js";
import { type Stack, stackOf, withParts } from "./stack.js";

const swept = 400 * litresAnHour;
const demand = 200 * litresAnHour;
const HEAD = 830 * 9.80665;
const VAPOUR = fuelState(build(plainSystem).fuel, { temperature: WARM }).vapourPressure;
const near = (pascal: number) => expect.closeTo(pascal, 2);
const flowOf = (flow: number) => expect.closeTo(flow / litresAnHour, 5);

/** The only duty point of a machine in round figures, its flows in L/h. */
function pointOf(more: Partial<System>) {
  const points = lifePoints(stackOf({ ...plainSystem, ...more }, "suction"), null);
  expect(points).toHaveLength(1);
  const [{ rooms, most, least, ...point }] = points as [(typeof points)[number]];
  expect(point).toMatchObject({ fuel: { density: 830 }, demand: expect.closeTo(demand, 12) });
  return {
    rooms: rooms.map(({ flow, ...room }) => ({ ...room, flow: flow / litresAnHour })),
    most: most / litresAnHour,
    least: least / litresAnHour,
  };
}

describe("lifePoints(stack, bore) of a machine in round figures", () => {
  test("has the room to each limit but the clean one, at the demand, with nothing in hand", () => {
    const suction = { ofSuction: true, ofDelivery: false, flow: flowOf(demand) };
    expect(pointOf({})).toEqual({
      rooms: [
        { ...suction, free: near(30e3 - HEAD) },
        { ...suction, free: near(101325 - HEAD - VAPOUR) },
        { ...suction, free: near(80e3 - HEAD) },
        { ofSuction: false, ofDelivery: false, free: Infinity, flow: flowOf(demand) },
      ],
      most: flowOf(demand),
      least: flowOf(demand),
    });
  });

  test("has the delivery side feel what stands behind the pump, whose drop is spent before", () => {
    const { rooms } = pointOf({ delivery: [elementOf("fine", { drop: 3e3 }).filter] });
    expect(rooms[2]).toEqual({
      ofSuction: true,
      ofDelivery: true,
      free: near(80e3 - HEAD - 3e3),
      flow: flowOf(demand),
    });
    expect(rooms.map(({ ofDelivery }) => ofDelivery)).toEqual([false, false, true, false]);
  });

  test("has what the pump moves for the flow, where relief goes to the tank; the suction side is then no matter to the feed", () => {
    const pump: System["pump"] = { kind: "fixed", flow: swept, relief: 80e3, reliefTo: "tank" };
    const { rooms, most, least } = pointOf({ pump, delivery: [elementOf("fine", { drop: 3e3 }).filter] });
    expect(rooms[0]).toMatchObject({ free: near(30e3 - HEAD), flow: flowOf(swept) });
    expect(rooms[2]).toEqual({ ofSuction: false, ofDelivery: true, free: near(77e3), flow: flowOf(swept) });
    expect([most, least]).toEqual([flowOf(swept), flowOf(swept)]);
  });

  describe("whose pump slips and relieves to the tank", () => {
    const slip = { flow: swept / 10, rise: 80e3, dynamicViscosity: viscosity };
    const pump: System["pump"] = { kind: "fixed", flow: swept, relief: 120e3, reliefTo: "tank", slip };
    const moved = (rise: number) => swept - (swept / 10 / 80e3) * rise;

    test("has for each limit the flow that is left with all of its room taken, and between most and least of them", () => {
      const { rooms, most, least } = pointOf({ pump });
      expect(rooms[0]).toEqual({
        ofSuction: true,
        ofDelivery: false,
        free: near(30e3 - HEAD),
        flow: flowOf(moved(120e3 + 30e3)),
      });
      expect(rooms[1]?.flow).toEqual(flowOf(moved(120e3 + 101325 - VAPOUR)));
      expect(most).toEqual(flowOf(moved(120e3 + HEAD)));
      // The first limit to be met comes with the most flow.
      expect(least).toEqual(flowOf(moved(120e3 + 30e3)));
    });

    test("asks what it can move at the demand: 200 L/h of slip against 400 kPa, of which the metre is spent", () => {
      const { rooms } = pointOf({ pump });
      expect(rooms[3]).toMatchObject({ ofSuction: true, free: near(400e3 - HEAD), flow: flowOf(demand) });
    });

    test("moves no less than the demand, and no more than with none in the way", () => {
      const worn = { ...pump, slip: { ...slip, flow: swept / 2 } };
      const { most, least, rooms } = pointOf({ pump: worn, limits: { vacuumClean: 60e3, vacuumAtChange: 60e3 } });
      expect(most).toEqual(flowOf(demand));
      expect(least).toEqual(flowOf(demand));
      expect(rooms.length).toBe(4);
      const broken = pointOf({ pump, limits: { vacuumClean: 1e3, vacuumAtChange: 1e3 } });
      expect(broken.rooms[0]?.free).toBe(-Infinity);
      expect(broken.least).toEqual(flowOf(moved(120e3 + 101325 - VAPOUR)));
    });
  });

  test("are one for each temperature of the duty at which the fuel is judged, coldest first, and none without a duty", () => {
    const seasons = [
      { name: "warm", share: 0.5, temperature: 300 },
      { name: "cold", share: 0.25, temperature: 270 },
      { name: "waxed", share: 0.25, temperature: 240 },
    ];
    const duty = { hoursADay: 4, daysAYear: 250, seasons };
    const points = lifePoints(stackOf({ ...plainSystem, duty }, "suction"), null);
    expect(points.map(({ fuel }) => fuel.temperature)).toEqual([270, WARM, 300]);
    const { duty: _, ...idle } = plainSystem;
    expect(lifePoints(stackOf(idle, "suction"), null)).toEqual([]);
  });
});

/** Margin to a limit at a point's demand with drops in the stack's place and behind all else on the delivery side. */
function marginWith(
  stack: Stack,
  fuel: SupplyModel["fuel"],
  limit: LimitName,
  at: number,
  suction: number,
  behind: number,
) {
  const system = withParts(stack, [headOf(suction, fuel)], null);
  const delivery = behind > 0 ? { delivery: [...(system.delivery ?? []), headOf(behind, fuel)] } : {};
  const built = build({ ...system, ...delivery });
  const model = new SupplyModel(supplyOf(built), { fuel, passage: "early", end: "middle" });
  return marginsOf(model, limitsOf(built).limits).get(limit)?.(at) ?? Number.NaN;
}

test.each(systems.map((one) => [one.name, one] as const))(
  "lifePoints(stack, bore) leaves no margin once a room is taken, on whichever side feels it: %s",
  (_, machine) => {
    const stack = stackOf(machine, "suction");
    const points = lifePoints(stack, null);
    expect(points.length).toBeGreaterThan(0);
    for (const { fuel, rooms, demand: at } of points.slice(0, 1)) {
      const built = build(withParts(stack, [], null));
      const model = new SupplyModel(supplyOf(built), { fuel, passage: "early", end: "middle" });
      const names = [...marginsOf(model, limitsOf(built).limits).keys()].filter((name) => name !== "vacuum clean");
      expect(rooms).toHaveLength(names.length);
      rooms.forEach(({ free, ofSuction, ofDelivery }, place) => {
        const limit = names[place] as LimitName;
        if (!Number.isFinite(free)) return;
        // The pump's capacity is a flow, and both sides share its room; all others are pressures.
        const capacity = limit === "pump capacity";
        const behind = capacity ? 0.01 * free : free;
        const digits = capacity ? 9 : 2;
        if (ofSuction) expect(marginWith(stack, fuel, limit, at, free, 0), limit).toBeCloseTo(0, digits);
        if (ofDelivery) expect(marginWith(stack, fuel, limit, at, free - behind, behind), limit).toBeCloseTo(0, digits);
        expect(ofSuction || ofDelivery).toBe(true);
      });
    }
  },
);

test("lifePoints(stack, bore) tries the bore", () => {
  const free = (bore: number | null) => lifePoints(stackOf(heron, "suction"), bore)[0]?.rooms[0]?.free ?? Number.NaN;
  expect(free(0.012)).toBeLessThan(free(null) - 1e3);
  expect(free(0.019)).toBe(free(null));
});
