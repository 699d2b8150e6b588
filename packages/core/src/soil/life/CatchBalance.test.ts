import { describe, expect, test } from "vitest";
import { parallel, series } from "../../circuit/index.js";
import { fuelState } from "../../fuel/index.js";
import { filter, line, orifice } from "../../parts/index.js";
import { type Supply, SupplyModel, tank } from "../../supply/index.js";
import { distributionFromMass } from "../distribution/distributionFromMass.js";
import { binCount } from "../distribution/sizeEdges.js";
import { CatchBalance } from "./CatchBalance.js";

const fuel = fuelState({ density: 830, kinematicViscosity: 3e-6, vapourPressure: 0 });
const delivered = distributionFromMass({ mass: 1e-3 });
const element = (name: string) => filter({ name, clean: { drop: 2000, flow: 5e-5, dynamicViscosity: 2.49e-3 } });
const hose = line({ length: 1, bore: 0.012, roughness: 1e-5 });
/** Shares caught, more of the large than of the small. */
const catches = (least: number) => Float64Array.from({ length: binCount }, (_, bin) => least + (0.3 * bin) / binCount);
const efficiencies = new Map([
  ["left", catches(0.5)],
  ["right", catches(0.4)],
  ["one", catches(0.2)],
  ["other", catches(0.6)],
  ["fine", catches(0.65)],
]);

/** Two tanks, the right one a metre higher, so that it fills the left one through the joint as well. */
const supply: Supply = {
  ambientPressure: 101325,
  tanks: [
    tank({ name: "left tank", depth: 0, path: series(hose, element("left")) }),
    tank({ name: "right tank", depth: 1, path: series(hose, element("right")) }),
  ],
  // A branch that is not linear, so that another demand splits otherwise.
  suction: parallel(element("one"), series(orifice({ diameter: 0.003, dischargeCoefficient: 0.6 }), element("other"))),
  pump: { kind: "fixed", flow: 9e-5, slip: null, relief: 1e5, reliefTo: "tank" },
  delivery: element("fine"),
};
const model = () => new SupplyModel(supply, { fuel, passage: "early", end: "middle" });
const DEMANDS = [
  { burn: 1e-5, return: 4e-5 },
  { burn: 3e-5, return: 0 },
] as const;

const caught = (balance: CatchBalance) => [...efficiencies.keys()].map((name) => balance.rate(name));
const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

describe("CatchBalance of tanks of which one is fed backward, with relief to the tank", () => {
  test("has one tank give and the other take", () => {
    const flows = model()
      .intake.ways(model().suctionFlow(5e-5))
      .tanks.map(({ flow }) => flow);
    expect(flows[0]).toBeLessThan(-1e-6);
    expect(flows[1]).toBeGreaterThan(9e-5);
  });

  test.each(DEMANDS)("catches what is delivered less what is burnt, kg for kg: %j", (demand) => {
    const balance = new CatchBalance(delivered, efficiencies, "delivered fuel");
    balance.update(model(), demand);
    const into = sum([...delivered.masses]) * demand.burn;
    const burnt = sum(
      [...delivered.masses].map(
        (mass, bin) => mass * (balance.tankShare[bin] as number) * (balance.pathShare[bin] as number) * demand.burn,
      ),
    );
    expect(sum(caught(balance)) / (into - burnt)).toBeCloseTo(1, 9);
    expect(balance.rate("left")).toBe(0);
    expect(balance.rate("nobody")).toBe(0);
  });

  test("catches of a tank held as it is what the path takes out of it", () => {
    const balance = new CatchBalance(delivered, efficiencies, "tank");
    const [demand] = DEMANDS;
    balance.update(model(), demand);
    expect([...balance.tankShare]).toEqual(Array.from({ length: binCount }, () => 1));
    const total = demand.burn + demand.return;
    // The fine filter catches of what the suction side passes on.
    const fine = sum(
      [...delivered.masses].map((mass, bin) => {
        const [suction, path] = [balance.suctionShare[bin] as number, balance.pathShare[bin] as number];
        return mass * (suction - path) * total;
      }),
    );
    expect(balance.rate("fine") / fine).toBeCloseTo(1, 9);
  });

  test("comes to the same whatever was asked before", () => {
    const fresh = DEMANDS.map((demand) => {
      const balance = new CatchBalance(delivered, efficiencies, "delivered fuel");
      balance.update(model(), demand);
      return caught(balance);
    });
    expect(fresh[0]).not.toEqual(fresh[1]);
    const balance = new CatchBalance(delivered, efficiencies, "delivered fuel");
    for (const load of [0, 1, 0, 1, 1, 0]) {
      balance.update(model(), DEMANDS[load] as (typeof DEMANDS)[number], load);
      expect(caught(balance)).toEqual(fresh[load]);
    }
  });

  test("catches of a pulse, in the end, all that is not burnt of it", () => {
    const balance = new CatchBalance(delivered, efficiencies, "delivered fuel");
    const [demand] = DEMANDS;
    balance.update(model(), demand);
    const pulse = Float64Array.from({ length: binCount }, (_, bin) => bin + 1);
    const inAll = sum([...efficiencies.keys()].map((name) => balance.ofPulse(name, pulse)));
    // What is burnt of each size is its burn over all that frees tank and path of it; steady shares tell both.
    const burnt = sum(
      [...pulse].map((mass, bin) => mass * (balance.tankShare[bin] as number) * (balance.pathShare[bin] as number)),
    );
    expect(inAll / (sum([...pulse]) - burnt)).toBeCloseTo(1, 9);
    expect(balance.ofPulse("nobody", pulse)).toBe(0);
  });
});
