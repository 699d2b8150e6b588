import { type CheckPoint, type PartRow, type UnitSystem, unitOf } from "@thirstline/study";
import type { Columns } from "./Columns.js";

/** Every part with what it costs and the pressure behind it, clean and where soil is stated as it is now. */
export function partColumns({ suction, delivery, asTheyAre }: CheckPoint, units: UnitSystem): Columns {
  const flow = unitOf("flow", units);
  const pressure = unitOf("pressure", units);
  const absolute = unitOf("absolute pressure", units);
  const now = asTheyAre === null ? [] : [...asTheyAre.suction, ...asTheyAre.delivery];
  const figures = ({ drop, pressure: behind }: PartRow) => [
    drop === null ? null : drop / pressure.size,
    behind === null ? null : behind / absolute.size,
  ];
  const soiled =
    asTheyAre === null ? [] : [`costs now (${pressure.symbol})`, `pressure behind it now (${absolute.symbol})`];
  return {
    head: [
      "part",
      `flow (${flow.symbol})`,
      `costs clean (${pressure.symbol})`,
      `pressure behind it clean (${absolute.symbol})`,
      ...soiled,
    ],
    rows: [...suction, ...delivery].map((row, at) => {
      const as = now[at];
      return [row.name, row.flow / flow.size, ...figures(row), ...(as === undefined ? [] : figures(as))];
    }),
  };
}
