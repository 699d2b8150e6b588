import { isScalar } from "yaml";
import { fileBlock } from "../schema/file.js";
import { toSystem } from "../schema/toSystem.js";
import type { System } from "../system/index.js";
import { bounds } from "./bounds.js";
import { buildFaults } from "./buildFaults.js";
import { cautionsOf } from "./cautionsOf.js";
import { decode } from "./decode.js";
import type { Caution, Fault } from "./Fault.js";
import { type Parsed, parse } from "./parse.js";
import { pathText, place, toFault } from "./placing.js";
import type { RawFault } from "./RawFault.js";
import { isAbsence, schemaFaults } from "./schemaFaults.js";
import { spreadsOf } from "./spreads/spreadsOf.js";

/** A system with what its file leaves open, or everything that is wrong with the file. */
export type ReadResult =
  | { readonly system: System; readonly cautions: readonly Caution[] }
  | { readonly faults: readonly Fault[] };

/**
 * Reads a system file: YAML 1.2 or JSON, values with units. A bad file never yields a figure: all its faults come at
 * once, each with line, path, what is wrong and what would be right.
 *
 * Where YAML itself is broken, what follows may have been misread: there only the break is told.
 *
 * @param given the file's text, or its bytes, which must be UTF-8
 * @param options file: what faults call it
 * @returns the system in SI and what was taken for granted, or the faults, at least one; it never throws
 * @see bounds for what a file may hold at most
 * @example
 * const read = readSystem(bytes, { file: "heron.yaml" });
 * if ("faults" in read) for (const fault of read.faults) console.error(formatFault(fault));
 * else build(read.system);
 */
export function readSystem(given: string | Uint8Array, options: { readonly file: string }): ReadResult {
  const { file } = options;
  const decoded = decode(given);
  if ("fault" in decoded) {
    const { code, line, message } = decoded.fault;
    return { faults: [{ file, line, column: 1, path: "", code, received: null, message }] };
  }
  const parsed = parse(decoded.text);
  if (parsed.root === null && parsed.faults.length === 0) {
    const message = "nothing in the file; a system file begins with format: thirstline/1";
    return { faults: [{ file, line: 1, column: 1, path: "", code: "empty", received: null, message }] };
  }
  if (parsed.stopped) return { faults: told(parsed.faults, parsed, file) };

  const checked = fileBlock.safeParse(parsed.data);
  const found = checked.success ? [] : schemaFaults(checked.error.issues).filter((fault) => isSure(fault, parsed));
  const faults = [...parsed.faults, ...found];
  if (faults.length > 0 || !checked.success) return { faults: told(faults, parsed, file) };

  const system = toSystem(checked.data);
  const refused = buildFaults(system);
  if (refused.length > 0) return { faults: told(refused, parsed, file) };
  const spread = spreadsOf(parsed, system);
  if ("faults" in spread) return { faults: told(spread.faults, parsed, file) };
  const { spreads } = spread;
  return { system: spreads.length === 0 ? system : { ...system, spreads }, cautions: cautionsOf(checked.data) };
}

/**
 * Whether a schema fault can be trusted beside a fault of the file's form: the value it judges could be read, and where
 * the YAML broke it stands before the break and says more than "missing".
 */
function isSure(fault: RawFault, parsed: Parsed): boolean {
  const same = (other: RawFault) => other.path.length > 0 && pathText(other.path) === pathText(fault.path);
  if (parsed.faults.some((other) => same(other) && other.code !== "duplicate key")) return false;
  const { node, offset } = place(fault, parsed);
  const end = node?.range?.[1] ?? 0;
  const inside = (at: unknown) => typeof at === "number" && at >= offset - 2 && at <= end + 1;
  if (isScalar(node) && parsed.faults.some(({ at }) => inside(at))) return false;
  if (parsed.sureUpTo === Number.POSITIVE_INFINITY) return true;
  return !isAbsence(fault.code) && parsed.position(offset).line < parsed.position(parsed.sureUpTo).line;
}

/** Faults as they are told: in the order of the text, each place and message once, at most a hundred. */
function told(raw: readonly RawFault[], parsed: Parsed, file: string): Fault[] {
  const placed = raw.map((fault) => place(fault, parsed)).sort((left, right) => left.offset - right.offset);
  const seen = new Set<string>();
  const faults: Fault[] = [];
  for (const one of placed) {
    // A block that several aliases repeat is wrong once.
    const key = `${one.offset} ${one.raw.message}`;
    if (seen.has(key)) continue;
    seen.add(key);
    faults.push(toFault(one, parsed, file));
  }
  if (faults.length <= bounds.faults) return faults;
  const message = "more faults follow; put right the ones above first";
  const last = faults[bounds.faults];
  const { line, column } = last ?? { line: 1, column: 1 };
  return [
    ...faults.slice(0, bounds.faults),
    { file, line, column, path: "", code: "more faults", received: null, message },
  ];
}
