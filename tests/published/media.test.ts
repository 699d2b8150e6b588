import { filter, fuelState, type SolveOptions, solve } from "@thirstline/core";
import { expect, test } from "vitest";
import { measure, type Row, readTable, report } from "../support/table.js";

// Fuel of 2.5e-3 Pa s, the viscosity the tables are made with; no density enters a creeping drop.
const fuel = fuelState({ density: 830, kinematicViscosity: 2.5e-3 / 830 });

type FilterPart = ReturnType<typeof filter>;

/** Permeability over thickness, m, of one square metre of a medium, from the drop a solved circuit shows. */
function permeabilityOverThickness(part: FilterPart, options: SolveOptions = {}): number {
  const velocity = 1e-4;
  return (2.5e-3 * velocity) / solve(part, fuel, options).drop(velocity);
}

test("filter({ airTest }) has the published permeability over thickness", () => {
  const table = readTable("media/air-permeability.csv");
  const got = (row: Row) =>
    permeabilityOverThickness(
      filter({
        airTest: {
          flow: row.number("air_flow_m3_s"),
          sampleArea: row.number("sample_area_m2"),
          pressure: row.number("pressure_pa"),
          area: 1,
        },
      }),
    );
  const error = measure(table.rows, got, "permeability_over_thickness_m", "half steps");
  report("media/air-permeability", table, error);
  expect(table.rows).toHaveLength(3);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

const tubes = readTable("media/parallel-tubes.csv");

test("filter({ rating }) is parallel tubes: its open end has the published permeability, porosity for porosity", () => {
  // The open end of the estimate takes a pore of twice the rating, a porosity of 0.95 and straight tubes.
  const got = (row: Row) => {
    const rating = { size: (row.number("pore_um") * 1e-6) / 2, kind: "beta 75", area: 1, thickness: 1 } as const;
    return (permeabilityOverThickness(filter({ rating }), { end: "low" }) * row.number("porosity")) / 0.95;
  };
  const error = measure(tubes.rows, got, "permeability_m2", "half steps");
  report("media/parallel-tubes", tubes, error);
  expect(tubes.rows).toHaveLength(2);
  for (const row of tubes.rows) expect(row.number("tortuosity")).toBe(1);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});

test("filter({ media }) of the glass paper drops as published", () => {
  const [paper] = tubes.rows.filter((row) => row.has("drop_pa"));
  if (!paper) throw new Error("parallel-tubes.csv lacks the glass paper");
  const permeability = (paper.number("porosity") * (paper.number("pore_um") * 1e-6) ** 2) / 32;
  const sheet = filter({ media: { area: 1, thickness: paper.number("thickness_mm") / 1000, permeability } });
  const nu = paper.number("dynamic_viscosity_pa_s") / 800;
  const drop = solve(sheet, fuelState({ density: 800, kinematicViscosity: nu })).drop(paper.number("velocity_m_s"));
  expect(Math.abs(drop - paper.number("drop_pa"))).toBeLessThanOrEqual(paper.halfStep("drop_pa"));
});

test("filter({ media, pleats }) adds the published drop of its channels", () => {
  const table = readTable("media/pleat-channel.csv");
  const [velocity, area, depth] = [2e-4, 0.3, 0.015];
  const dropOf = (part: FilterPart) => solve(part, fuel).drop(velocity * area);
  // The sheet of the last row stands under every channel, and is taken off again.
  const last = table.rows[table.rows.length - 1];
  const media = { area, thickness: 1, permeability: last?.number("permeability_over_thickness_m") ?? Number.NaN };
  const sheet = dropOf(filter({ media }));
  const got = (row: Row) => {
    if (row.has("permeability_over_thickness_m")) return sheet;
    const pleats = { depth, gap: row.number("gap_mm") / 1000, area };
    return dropOf(filter({ media, pleats })) - sheet;
  };
  const error = measure(table.rows, got, "drop_pa", "half steps");
  report("media/pleat-channel", table, error);
  expect(table.rows).toHaveLength(4);
  expect(error.max, error.worst).toBeLessThanOrEqual(1);
});
