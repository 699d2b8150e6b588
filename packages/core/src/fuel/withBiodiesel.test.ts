import { expect, test } from "vitest";
import { fuels } from "./fuels.js";
import { withBiodiesel } from "./withBiodiesel.js";

test("withBiodiesel(winter diesel, 0.2) is the example", () => {
  expect(withBiodiesel(fuels.dieselWinter, 0.2).cloudPoint).toBeCloseTo(267.55, 9);
});

test("withBiodiesel(diesel, share, another) takes the other biodiesel", () => {
  expect(withBiodiesel(fuels.dieselWinter, 0.2, fuels.biodieselRapeseed).cloudPoint).toBeCloseTo(266.95, 9);
});

test("withBiodiesel refuses a share above 1", () => {
  expect(() => withBiodiesel(fuels.dieselWinter, 1.2)).toThrow("share to be between 0 and 1");
});
