import { figure, type LifeAnswer, PLUGGED, quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Paint } from "../io/paint.js";
import { costColumns } from "./costColumns.js";
import { type Column, numbers, titledTable } from "./table.js";

/** Every element at the end: what it holds, what it has grown to, and its part in both. */
export function elementTable(answer: LifeAnswer, units: UnitSystem, paint: Paint): string[] {
  const { elements, end, horizon } = answer;
  if (elements.every(({ soil, water }) => soil === 0 && water === 0)) return [];
  const caught = elements.reduce((sum, { soil, soilAtStart }) => sum + soil - soilAtStart, 0);
  const when = end ? end.time : horizon;
  const share = (value: number) => (caught > 0 || value > 0 ? quantity(value, "ratio", units) : "");
  const columns: Column[] = [
    {
      name: when === 0 ? "At once" : `After ${quantity(when, "running time", units)}`,
      unit: "",
      cells: elements.map(({ name }) => name),
      align: "left",
    },
    numbers(
      "soil",
      unitOf("soil", units).symbol,
      elements.map(({ soil }) => figure(soil, "soil", units)),
    ),
    numbers(
      "of all",
      "caught",
      elements.map(({ soil, soilAtStart }) => (caught > 0 ? share((soil - soilAtStart) / caught) : "")),
    ),
    ...(elements.some(({ water }) => water > 0)
      ? [
          numbers(
            "water",
            unitOf("soil", units).symbol,
            elements.map(({ water }) => figure(water, "soil", units)),
          ),
        ]
      : []),
    numbers(
      "resists",
      "x clean",
      elements.map(({ restriction }) => ratio(restriction)),
    ),
    ...costColumns(elements, "then", units),
    numbers(
      "of the",
      "rise",
      elements.map((one) => share(one.share)),
    ),
  ];
  return titledTable(columns, paint);
}

/** How clean the fuel is on its way. */
export function cleanlinessTable({ cleanliness, protection }: LifeAnswer, units: UnitSystem, paint: Paint): string[] {
  if (cleanliness.length === 0) return [];
  const asked = protection === null ? [] : [{ place: "asked for", code: protection.code }];
  const count = (at: 0 | 1 | 2) => cleanliness.map(({ counts }) => countText(counts[at]));
  const columns: Column[] = [
    { name: "Fuel on its way", unit: "", cells: [...cleanliness, ...asked].map(({ place }) => place), align: "left" },
    numbers(
      "code",
      "ISO 4406",
      [...cleanliness, ...asked].map(({ code }) => code),
    ),
    numbers(
      "solids",
      unitOf("solids", units).symbol,
      cleanliness.map(({ solids }) => figure(solids, "solids", units)),
    ),
    numbers("4 µm(c)", "a mL", count(0)),
    numbers("6 µm(c)", "a mL", count(1)),
    numbers("14 µm(c)", "a mL", count(2)),
  ];
  return titledTable(columns, paint);
}

function ratio(value: number): string {
  if (value >= PLUGGED) return "plugged";
  return value.toFixed(value < 9.95 ? 1 : 0);
}

/** Two digits: counters are not better than that. */
function countText(count: number): string {
  if (count < 0.0095) return "0";
  return count >= 9.95 ? String(Number(count.toPrecision(2))) : count.toFixed(count < 0.95 ? 2 : 1);
}
