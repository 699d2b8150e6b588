import {
  type Band,
  bandFigure,
  type CheckAnswer,
  type CheckPoint,
  limitName,
  type QuantityKind,
  quantity,
  sideWords,
  type UnitSystem,
  unitOf,
} from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { type Column, tableLines } from "./table.js";
import { wrap } from "./wrap.js";

/** A line for every temperature, and under them what is the same for all. */
export function temperatureTable(answer: CheckAnswer, units: UnitSystem, paint: Paint): string[] {
  const [header = "", ...rows] = tableLines(columnsOf(answer, units));
  return [paint("strong", header), ...rows, ...limitLines(answer, units)];
}

function columnsOf({ pump, points }: CheckAnswer, units: UnitSystem): Column[] {
  const numbers = (name: string, kind: QuantityKind, of: (point: CheckPoint) => Band | null, state = ""): Column[] => {
    const cells = points.map((point) => {
      const band = of(point);
      return band === null ? "" : bandFigure(band, kind, units);
    });
    if (cells.every((cell) => cell === "")) return [];
    return [{ name, unit: state + unitOf(kind, units).symbol, cells, align: "right" }];
  };
  const soiled = points.some(({ vacuumNow }) => vacuumNow !== null);
  const vacuum =
    pump === "none"
      ? []
      : [
          ...numbers("vacuum", "vacuum", (point) => point.vacuum, soiled ? "clean " : ""),
          ...numbers("vacuum", "vacuum", (point) => point.vacuumNow, "now "),
          ...numbers("free for", "vacuum", (point) => point.riseFree, "soil "),
        ];
  return [
    {
      name: "at",
      unit: "",
      cells: points.map((point) => quantity(point.temperature, "temperature", units)),
      align: "right",
    },
    { name: "verdict", unit: "", cells: points.map(({ verdict }) => verdict), align: "left" },
    ...vacuum,
    ...numbers(pump === "none" ? "at the engine" : "feed", "pressure", (point) => point.feedPressure),
    ...numbers("demand", "flow", ({ demand: { total } }) => ({ low: total, middle: total, high: total })),
    ...numbers("ceiling", "flow", (point) => point.ceilings.atChange.flow),
    ...numbers("in hand", "ratio", (point) => point.inHand),
  ];
}

/** The limits, which are the same at every temperature, and what binds the ceiling where. */
function limitLines({ pump, limitSource, points }: CheckAnswer, units: UnitSystem): string[] {
  const [first] = points;
  if (first === undefined) return [];
  const { clean, atChange } = first.vacuumLimits;
  const shown = (value: number | null) => quantity(value ?? 0, "vacuum", units);
  const vacuum = [
    ...(clean === null ? [] : [`vacuum ${shown(clean)} clean`]),
    ...(atChange === null ? [] : [`${clean === null ? "vacuum " : ""}${shown(atChange)} at change`]),
  ];
  const feed =
    first.feedLimit > 0 ? [`at least ${quantity(first.feedLimit, "pressure", units)} ${sideWords(pump).feed}`] : [];
  const limits = [...vacuum, ...feed];
  const binding = [...new Set(points.map(({ ceilings }) => limitName(ceilings.atChange.limit, pump)))];
  const source = limitSource === null ? "" : ` (${limitSource})`;
  const given = limits.length === 0 ? "" : `Limits${source}: ${limits.join(", ")}. `;
  return wrap(`${given}The ceiling is where ${binding.join(" or ")} binds.`, "", 78).map((line) => `  ${line}`);
}
