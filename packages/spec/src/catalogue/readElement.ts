import { InputError } from "@thirstline/core";
import { toFilter } from "../build/toFilter.js";
import type { Path, RawFault } from "../read/RawFault.js";
import { schemaFaults } from "../read/schemaFaults.js";
import { figuresOf } from "../read/spreads/figuresOf.js";
import type { SystemSpread } from "../system/index.js";
import { spreadEnds } from "../units/spreadEnds.js";
import type { CatalogueElement } from "./CatalogueElement.js";
import { elementBlock, toElement } from "./elementBlock.js";

/** Reads an element's data, as YAML or a row of a table gives it; its faults have paths inside the element. */
export function readElement(data: unknown): { element: CatalogueElement } | { faults: readonly RawFault[] } {
  const read = readOnce(data);
  if ("faults" in read) return read;
  const written = spreadsIn(data);
  if (written.length === 0) return { element: { ...read.element, spreads: [] } };
  const middle = figuresOf(read.element.filter);
  const faults: RawFault[] = [];
  const spreads: SystemSpread[] = [];
  for (const { path, low, high } of written) {
    const ends = [low, high].map((end) => readOnce(put(data, path, end)));
    faults.push(...ends.flatMap((end) => ("faults" in end ? end.faults : [])));
    const [from, to] = ends.map((end) => figuresOf("element" in end ? end.element.filter : null));
    const group = spreads.length;
    for (const [key, figure] of middle) {
      const [least, most] = [from?.get(key)?.value, to?.get(key)?.value];
      if (least === undefined || most === undefined || (least === figure.value && most === figure.value)) continue;
      const taken = spreads.some((spread) => JSON.stringify(spread.path) === key);
      if (taken)
        faults.push({ code: "spreads meet", path, message: "two spreads meet in one figure; keep one of them" });
      const ordered = { path: figure.path, low: Math.min(least, most), high: Math.max(least, most) };
      if (!taken) spreads.push(spreads.length > group ? { ...ordered, group } : ordered);
    }
  }
  return faults.length > 0 ? { faults } : { element: { ...read.element, spreads: led(spreads) } };
}

/** The first of a group carries its own place, as the others do. */
function led(spreads: readonly SystemSpread[]): SystemSpread[] {
  return spreads.map((one, at) => (spreads.some(({ group }) => group === at) ? { ...one, group: at } : one));
}

function readOnce(data: unknown): { element: Omit<CatalogueElement, "spreads"> } | { faults: readonly RawFault[] } {
  const checked = elementBlock.safeParse(data);
  if (!checked.success) return { faults: schemaFaults(checked.error.issues) };
  const element = toElement(checked.data);
  try {
    toFilter(element.filter);
    return { element };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const message = `these figures cannot be together: ${error.message}; check the figures it names`;
    return { faults: [{ code: "impossible together", path: [], message }] };
  }
}

interface Written {
  readonly path: Path;
  readonly low: string;
  readonly high: string;
}

/** Every text with a spread. */
function spreadsIn(data: unknown, path: Path = []): Written[] {
  if (typeof data === "string") {
    // A quick look first: most cells of a large table have no spread.
    if (!/±|\+\/-| to /.test(data)) return [];
    const ends = endsOf(data);
    return ends === undefined ? [] : [{ path, ...ends }];
  }
  if (typeof data !== "object" || data === null) return [];
  return Object.entries(data).flatMap(([key, inner]) =>
    key === "name" || key === "thread" ? [] : spreadsIn(inner, [...path, Array.isArray(data) ? Number(key) : key]),
  );
}

/** Cells of a table repeat each other, and a spread's measure is found by trying. */
const known = new Map<string, ReturnType<typeof spreadEnds>>();

/** Texts remembered at most. */
const MOST_KNOWN = 1000;

function endsOf(text: string): ReturnType<typeof spreadEnds> {
  if (known.has(text)) return known.get(text);
  if (known.size >= MOST_KNOWN) known.clear();
  const ends = spreadEnds(text);
  known.set(text, ends);
  return ends;
}

function put(data: unknown, path: Path, value: string): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  copy[step] = put(copy[step], rest, value);
  return copy;
}
