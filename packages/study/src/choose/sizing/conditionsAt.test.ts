import { type BandEnd, fuelState, judge, LEAST_IN_HAND, type LimitName } from "@thirstline/core";
import { build, type System, type SystemPart } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { heron, systems } from "../../../../../tests/properties/choose/cases.js";
import { elementOf, litresAnHour, plainSystem, viscosity, WARM } from "../../../../../tests/support/plainSystem.js";
import { demandAt } from "../../check/demandAt.js";
import { limitsOf } from "../../check/limitsOf.js";
import { supplyOf } from "../../check/supplyOf.js";
import { type Condition, conditionsAt } from "./conditionsAt.js";
import { headOf } from "./headOf.js";
import { slipsToTank } from "./OrderFacts.js";
import { type Side, type Stack, stackOf, withParts } from "./stack.js";

const swept = 400 * litresAnHour;
const HEAD = 830 * 9.80665;
const VAPOUR = fuelState(build(plainSystem).fuel, { temperature: WARM }).vapourPressure;
const toTank: System["pump"] = { kind: "fixed", flow: swept, relief: 80e3, reliefTo: "tank" };
const { filter: fine } = elementOf("fine", { drop: 3e3 });

/** Flows, L/h, and room, Pa, by limit, of a machine in round figures. */
function roomsOf(more: Partial<System>, side: Side = "suction"): [flow: number, rooms: Record<string, number>][] {
  const stack = stackOf({ ...plainSystem, ...more }, side);
  return conditionsAt(stack, null, WARM, "middle").map(({ flow, free, temperature, end }) => {
    expect([temperature, end]).toEqual([WARM, "middle"]);
    return [Math.round((flow / litresAnHour) * 1e6) / 1e6, Object.fromEntries(free)];
  });
}
const near = (pascal: number) => expect.closeTo(pascal, 2);

describe("conditionsAt(stack, bore, temperature, end) of a machine in round figures", () => {
  const suction = { "vacuum at change": near(30e3 - HEAD), vapour: near(101325 - HEAD - VAPOUR) };
  const clean = { "vacuum clean": near(15e3 - HEAD) };

  test("has the clean limit at the demand, and the others with a fifth more", () => {
    expect(roomsOf({})).toEqual([
      [200, clean],
      [240, suction],
      [240, { "feed pressure": near(80e3 - HEAD), "pump capacity": Infinity }],
    ]);
  });

  test("takes what the pump moves for the suction line's flow, where relief goes to the tank", () => {
    expect(roomsOf({ pump: toTank })).toEqual([
      [400, clean],
      [480, suction],
      // The pump has then the air's own pressure and its relief behind it, whatever it draws against.
      [240, { "feed pressure": Infinity, "pump capacity": Infinity }],
    ]);
  });

  test("leaves out the suction side's limits where the pump slips and relieves to the tank: its flow hangs on the stack", () => {
    const pump = { ...toTank, slip: { flow: swept / 10, rise: 80e3, dynamicViscosity: viscosity } } as System["pump"];
    expect(roomsOf({ pump }).map(([flow, rooms]) => [flow, Object.keys(rooms)])).toEqual([
      [240, ["feed pressure", "pump capacity"]],
    ]);
    expect(roomsOf({ pump, delivery: [] }, "delivery")).toHaveLength(3);
  });

  test("has no clean limit where none is stated", () => {
    const pump = { kind: "curve", points: [{ flow: swept, rise: 80e3 }] } as const;
    expect(roomsOf({ pump, limits: { vacuumAtChange: 30e3 } }).map(([flow]) => flow)).toEqual([240, 240]);
  });

  test("has the demand for the flow behind the pump, where nothing on the suction side feels a stack", () => {
    const onDelivery = (pump: System["pump"]) =>
      roomsOf({ pump, suction: plainSystem.suction.slice(0, 1), delivery: [fine] }, "delivery");
    const free = { "vacuum clean": Infinity };
    const others = { "vacuum at change": Infinity, vapour: Infinity };
    expect(onDelivery(plainSystem.pump)).toEqual([
      [200, free],
      [240, others],
      [240, { "feed pressure": near(80e3 - HEAD), "pump capacity": Infinity }],
    ]);
    expect(onDelivery(toTank)).toEqual([
      [200, free],
      [240, others],
      [240, { "feed pressure": near(80e3), "pump capacity": Infinity }],
    ]);
  });

  test("has no room at all where a limit is broken without any stack", () => {
    const pump = { ...plainSystem.pump, flow: 239 * litresAnHour } as System["pump"];
    expect(roomsOf({ pump })[2]?.[1]).toMatchObject({ "pump capacity": -Infinity });
    expect(roomsOf({ limits: { vacuumClean: 8e3, vacuumAtChange: 30e3 } })[0]?.[1]).toEqual({
      "vacuum clean": -Infinity,
    });
  });
});

/** What the whole model has in hand to a limit, with a drop in the stack's place. */
function inHand(stack: Stack, condition: Condition, limit: LimitName, drop: number): number {
  const { temperature, fuel, end } = condition;
  const built = build(withParts(stack, drop === 0 ? [] : [headOf(drop, fuel)], null));
  const judged = judge(supplyOf(built), fuel, limitsOf(built).limits, demandAt(built, fuel, null).total);
  const of = { low: judged.lowEnd, middle: judged.middle, high: judged.highEnd }[end];
  expect(temperature).toBe(fuel.temperature);
  return of.ceilings.find((one) => one.limit === limit)?.inHand ?? Number.NaN;
}

const screen: SystemPart = { part: "strainer", name: "screen", aperture: 1e-4, wire: 6e-5, area: 2e-4 };
const machines: readonly (readonly [string, System, Side, BandEnd])[] = [
  ...systems.map((one) => [one.name, one, "suction", "middle"] as const),
  ["heron behind its pump", heron, "delivery", "middle"],
  ["relief to the tank, behind its pump", systems[2] as System, "delivery", "middle"],
  ["heron with a screen, at the kind end", { ...heron, suction: [...heron.suction, screen] }, "suction", "low"],
  ["heron with a screen, at the bad end", { ...heron, suction: [...heron.suction, screen] }, "suction", "high"],
];

test.each(machines)(
  "conditionsAt leaves just 20 %% in hand, of the clean limit none, once its room is taken: %s",
  (_, machine, side, end) => {
    const stack = stackOf(machine, side);
    const conditions = conditionsAt(stack, null, machine.temperature, end);
    for (const condition of conditions) {
      for (const [limit, free] of condition.free) {
        const least = limit === "vacuum clean" ? 0 : LEAST_IN_HAND;
        if (free === -Infinity) expect(inHand(stack, condition, limit, 0), limit).toBeLessThan(least);
        else if (free === Infinity) expect(inHand(stack, condition, limit, 40e3), limit).toBeGreaterThanOrEqual(least);
        else expect(inHand(stack, condition, limit, free), limit).toBeCloseTo(least, 5);
      }
    }
    const built = build(withParts(stack, [], null));
    const fuel = fuelState(built.fuel, { temperature: machine.temperature });
    const judged = judge(supplyOf(built), fuel, limitsOf(built).limits, demandAt(built, fuel, null).total);
    const names = conditions.flatMap(({ free }) => [...free.keys()]).sort();
    const all = judged.middle.ceilings.map(({ limit }) => limit).sort();
    const elsewhere = ["vacuum clean", "vacuum at change", "vapour"];
    expect(names).toEqual(
      slipsToTank(machine) && side === "suction" ? all.filter((one) => !elsewhere.includes(one)) : all,
    );
  },
);
