import {
  type Ceiling,
  ceilings,
  type Filter,
  filter,
  line,
  parallel,
  rise,
  type Supply,
  series,
  tank,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { aFrictionPart } from "../support/arbitraries.js";
import { aFilter } from "../support/filters.js";
import { logUniform } from "../support/random.js";
import { aDemand, anEngineFuel, aSupply, someLimits } from "../support/supplies.js";
import { runs } from "./runs.js";
import { expectNoneRose, fedBackward } from "./supplyLaws.js";

// Two exceptions, both of the vapour limit, which looks at places on the way and not at its end. Inside a bank (or on one
// of several tanks' paths) more restriction sends flow another way, and a hump on the branch it leaves is relieved. And a
// pump that slips moves less through a relief to the tank when the inlet is harder to draw from, which relieves a hump
// before the filter. So the law for vapour is one of the suction path itself, with a pump that does not do that.
test("ceilings(supply, …) never rise when a filter on the suction path restricts more", () => {
  fc.assert(
    fc.property(
      aSupply,
      aFilter,
      anEngineFuel,
      someLimits,
      aDemand,
      logUniform(1, 1e3),
      (supply, element, fuel, limits, demand, times) => {
        const before = ceilings(
          { ...supply, suction: series(supply.suction, element) },
          fuel,
          limits,
          demand,
          "middle",
        );
        const plugged = restricted(element, times);
        const after = ceilings({ ...supply, suction: series(supply.suction, plugged) }, fuel, limits, demand, "middle");
        const { pump } = supply;
        const slipsToTank = pump.kind === "fixed" && pump.reliefTo === "tank" && pump.slip !== null;
        expectNoneRose(before, after, slipsToTank || fedBackward(supply, fuel) ? ["vapour"] : []);
      },
    ),
    runs(300),
  );
});

test("ceilings(supply, …), vapour apart, never rise when a filter inside a bank restricts more", () => {
  fc.assert(
    fc.property(
      aSupply,
      aFilter,
      aFrictionPart,
      anEngineFuel,
      someLimits,
      aDemand,
      logUniform(1, 1e3),
      (supply, element, beside, fuel, limits, demand, times) => {
        const ceilingsWith = (one: Filter) =>
          ceilings(
            { ...supply, suction: series(parallel(one, beside), supply.suction) },
            fuel,
            limits,
            demand,
            "middle",
          );
        expectNoneRose(ceilingsWith(element), ceilingsWith(restricted(element, times)), ["vapour"]);
      },
    ),
    runs(300),
  );
});

test("ceilings(supply, …) of vapour may rise when a filter behind a hump in one branch restricts more", () => {
  const fuel = { density: 700, kinematicViscosity: 5e-7, vapourPressure: 60e3, cautions: [] };
  const up = line({ length: 2, bore: 0.003, roughness: 0 });
  const element = (restriction: number) =>
    filter({ media: { area: 0.1, thickness: 5e-4, permeability: 1e-12 }, restriction });
  const ceilingWith = (restriction: number) => {
    const over = series(rise({ height: 4 }), up, rise({ height: -4 }), element(restriction));
    const supply: Supply = {
      ambientPressure: 101325,
      tanks: [tank({ depth: 0 })],
      suction: parallel(over, line({ length: 10, bore: 0.01, roughness: 0 })),
      pump: { kind: "none" },
      delivery: null,
    };
    return ceilings(supply, fuel, {}, 1e-5, "middle").find(({ limit }) => limit === "vapour")?.flow ?? Number.NaN;
  };
  expect(ceilingWith(1e5)).toBeGreaterThan(1.05 * ceilingWith(1));
});

// Nor with fuel running back into a low tank: more resistance on that tank's path keeps more fuel for the engine.
test("ceilings(supply, fuel, limits, demand, low) are never below those of the high end, vapour apart", () => {
  fc.assert(
    fc.property(aSupply, anEngineFuel, someLimits, aDemand, (supply, fuel, limits, demand) => {
      fc.pre(!fedBackward(supply, fuel));
      const [low, middle, high] = (["low", "middle", "high"] as const).map((end) =>
        ceilings(supply, fuel, limits, demand, end),
      ) as [Ceiling[], Ceiling[], Ceiling[]];
      expectNoneRose(low, middle, ["vapour"]);
      expectNoneRose(middle, high, ["vapour"]);
    }),
    runs(200),
  );
});

/** The filter with its medium so many times harder to pass. */
function restricted(element: Filter, times: number): Filter {
  return { ...element, restriction: element.restriction * times };
}
