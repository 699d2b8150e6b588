import {
  binCount,
  distributionFromCode,
  distributionFromMass,
  massOf,
  type ParticleDistribution,
  parseCode,
  tankBalance,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { integrate } from "../../published/soil/integrate.js";
import { between, known, logBetween, someElement, someFuel } from "./some.js";

const someFlows = fc.record({
  volume: logBetween(0.01, 10),
  burn: logBetween(1e-7, 1e-4),
  returned: fc.oneof(fc.constant(0), logBetween(1e-7, 1e-4)),
  relief: fc.oneof(fc.constant(0), logBetween(1e-7, 1e-4)),
});

const someTank = fc
  .record({ flows: someFlows, delivered: someFuel, start: someFuel, suction: someElement, delivery: someElement })
  .map(({ flows, delivered, start, suction, delivery }) => ({
    ...flows,
    delivered,
    start,
    suction: suction.efficiency.middle,
    delivery: delivery.efficiency.middle,
  }));

const closeTo = (one: ParticleDistribution, other: ParticleDistribution, digits: number) => {
  const scale = Math.max(...other.counts);
  for (let bin = 0; bin < binCount; bin++) {
    expect((one.counts[bin] ?? 0) / scale).toBeCloseTo((other.counts[bin] ?? 0) / scale, digits);
  }
};

test("tankBalance(given): what was there and came is in the tank, caught or burnt", () => {
  fc.assert(
    fc.property(someTank, logBetween(1, 1e8), (given, time) => {
      const balance = tankBalance(given);
      const { delivered, caughtBySuction, caughtByDelivery, burnt } = balance.movedBy(time);
      const before = given.volume * massOf(given.start) + delivered;
      const after = given.volume * massOf(balance.tankAt(time)) + caughtBySuction + caughtByDelivery + burnt;
      expect(after / before).toBeCloseTo(1, 9);
      expect(delivered / (given.burn * time * massOf(given.delivered))).toBeCloseTo(1, 12);
    }),
  );
});

test.each([
  ["without return", { returned: 0, relief: 0 }],
  ["with return and relief", { returned: 6.3e-5, relief: 4e-5 }],
])("tankBalance(given) %s agrees with an integration of the balance, bin by bin", (_, flows) => {
  const [volume, burn, time] = [0.5, 3.1e-5, 20_000];
  const delivered = distributionFromMass({ mass: 5e-3 });
  const start = distributionFromMass({ mass: 1e-3, dust: "A2 fine" });
  const suction = known({ betas: [{ size: 25e-6, beta: 75 }] }).efficiency.middle;
  const delivery = known({ betas: [{ size: 4e-6, beta: 75 }] }).efficiency.middle;
  const given = { volume, burn, ...flows, delivered, start, suction, delivery };
  const balance = tankBalance(given);
  const tank = balance.tankAt(time);
  let [caughtBySuction, caughtByDelivery, burnt] = [0, 0, 0];
  for (let bin = 0; bin < binCount; bin += 1) {
    const [before, behind] = [suction[bin] ?? 0, delivery[bin] ?? 0];
    const path = 1 - (1 - before) * (1 - behind);
    const incoming = delivered.masses[bin] ?? 0;
    const found = integrate(
      (_at, [c = 0]) => [
        (burn * incoming - (burn + path * flows.returned + before * flows.relief) * c) / volume,
        before * (burn + flows.returned + flows.relief) * c,
        (1 - before) * behind * (burn + flows.returned) * c,
        (1 - path) * burn * c,
      ],
      [start.masses[bin] ?? 0, 0, 0, 0],
      time,
    );
    const [c = 0, bySuction = 0, byDelivery = 0, out = 0] = found;
    if (c > 0) expect((tank.masses[bin] ?? 0) / c).toBeCloseTo(1, 9);
    caughtBySuction += bySuction;
    caughtByDelivery += byDelivery;
    burnt += out;
  }
  const moved = balance.movedBy(time);
  expect(moved.caughtBySuction / caughtBySuction).toBeCloseTo(1, 9);
  expect(moved.caughtByDelivery / caughtByDelivery).toBeCloseTo(1, 9);
  expect(moved.burnt / burnt).toBeCloseTo(1, 9);
});

test("tankBalance(given).tankAt(time) begins at the start, ends at the steady value, and may be stepped", () => {
  fc.assert(
    fc.property(someTank, logBetween(1, 1e6), logBetween(1, 1e6), (given, one, other) => {
      const balance = tankBalance(given);
      closeTo(balance.tankAt(0), given.start, 14);
      closeTo(balance.tankAt((1e3 * given.volume) / given.burn), balance.steady, 9);
      const stepped = tankBalance({ ...given, start: balance.tankAt(one) }).tankAt(other);
      closeTo(stepped, balance.tankAt(one + other), 11);
    }),
  );
});

test("tankBalance(given) with more coming back is never dirtier", () => {
  fc.assert(
    fc.property(someTank, between(1, 10), logBetween(1, 1e7), (given, times, time) => {
      const more = tankBalance({ ...given, returned: given.returned * times, relief: given.relief * times });
      const [fewer, usual] = [more.tankAt(time), tankBalance(given).tankAt(time)];
      for (let bin = 0; bin < binCount; bin++) {
        expect(fewer.masses[bin]).toBeLessThanOrEqual((usual.masses[bin] ?? 0) * (1 + 1e-9));
      }
    }),
  );
});

test("tankBalance(given): in the long run a suction element catches what the burnt fuel brought, however much returns", () => {
  const delivered = distributionFromCode(parseCode("18/16/13"));
  if (!delivered.known) throw new Error(delivered.reason);
  const everything = new Float64Array(binCount).fill(1);
  const nothing = new Float64Array(binCount);
  const caughtInAnHour = (returned: number) => {
    const given = { volume: 2.4, burn: 3.1e-5, returned, delivered, suction: everything, delivery: nothing };
    const { steady } = tankBalance({ ...given, start: delivered });
    return tankBalance({ ...given, start: steady }).movedBy(3600).caughtBySuction;
  };
  const brought = 3.1e-5 * 3600 * massOf(delivered);
  expect(caughtInAnHour(0) / brought).toBeCloseTo(1, 12);
  expect(caughtInAnHour(6.3e-5) / brought).toBeCloseTo(1, 12);
  // Taking the delivered concentration times the whole flow would say three times as much.
  expect((3.1e-5 + 6.3e-5) / 3.1e-5).toBeGreaterThan(3);
});

test("tankBalance(given) with nothing burnt and nothing caught keeps the tank as it is", () => {
  const start = distributionFromMass({ mass: 1e-3 });
  const nothing = new Float64Array(binCount);
  const still = tankBalance({
    volume: 1,
    burn: 0,
    returned: 1e-5,
    delivered: start,
    start,
    suction: nothing,
    delivery: nothing,
  });
  expect(still.steady).toEqual(start);
  expect(still.tankAt(1e9)).toEqual(start);
  expect(still.movedBy(1e9)).toEqual({ delivered: 0, caughtBySuction: 0, caughtByDelivery: 0, burnt: 0 });
});
