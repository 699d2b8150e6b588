import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { settlingFor } from "./settlingFor.js";

const ICE = 273.15;
const heron = demoSystem("heron");
const lorry = demoSystem("lorry");

test("settlingFor(system, temperature) may find ice under 0 °C, and knows nothing over 40 °C", () => {
  expect(settlingFor(heron, ICE - 0.01)).toEqual({ code: "may be ice" });
  expect(settlingFor(heron, ICE + 40.01)).toEqual({ code: "not known" });
  expect([settlingFor(heron, ICE).code, settlingFor(heron, ICE + 40).code]).toEqual(["time", "time"]);
});

test("settlingFor(system, temperature) is for drops of 50 µm to fall through the deepest tank when full", () => {
  const deeper = { ...lorry, tanks: lorry.tanks.map((tank, at) => ({ ...tank, fullDepth: at === 0 ? 0.5 : 1 })) };
  const found = settlingFor(deeper, ICE + 15);
  expect(found).toMatchObject({ code: "time", size: 50e-6, depth: 1 });
  const half = settlingFor({ ...deeper, tanks: deeper.tanks.slice(0, 1) }, ICE + 15);
  expect("time" in half && "time" in found && found.time / half.time).toBeCloseTo(2, 6);
});

test("settlingFor(system, temperature) takes longer in the cold, where fuel is thicker", () => {
  const [warm, cold] = [ICE + 30, ICE + 2].map((at) => settlingFor(heron, at));
  expect(cold && warm && "time" in cold && "time" in warm && cold.time > warm.time).toBe(true);
});

test("settlingFor(system, temperature) does not know of fuel that water does not sink in, or sinks through too fast", () => {
  const measured = (density: number, kinematicViscosity: number) =>
    ({
      ...heron,
      fuel: {
        kind: "measured",
        like: "petrol",
        measured: {
          density: [{ temperature: ICE + 15, density }],
          viscosity: [{ temperature: ICE + 40, kinematicViscosity }],
        },
      },
    }) as const;
  expect(settlingFor(measured(740, 0.6e-6), ICE + 15).code).toBe("time");
  expect(settlingFor(measured(1010, 0.6e-6), ICE + 15)).toEqual({ code: "not known" });
  // Some 580 kg/m3 at 40 degC: by Stokes' law a drop of 50 um sinks at 4.6 mm/s, at a Reynolds number of 1.1, which is too
  // fast for that law.
  expect(settlingFor(measured(612, 2.1e-7), ICE + 40)).toEqual({ code: "not known" });
});
