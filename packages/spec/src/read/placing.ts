import { isScalar, type Node } from "yaml";
import type { Fault } from "./Fault.js";
import { locate } from "./locate.js";
import type { Parsed } from "./parse.js";
import type { Path, RawFault } from "./RawFault.js";

/** A fault with its offset into the text, before it has a line. */
export interface PlacedFault {
  readonly raw: RawFault;
  readonly path: Path;
  readonly offset: number;
  readonly node: Node | null;
}

/** Finds a fault's place in the text. */
export function place(raw: RawFault, parsed: Parsed): PlacedFault {
  if (parsed.root === null) {
    return { raw, path: raw.path, offset: typeof raw.at === "number" ? raw.at : 0, node: null };
  }
  const found = locate(parsed.root, raw.path, parsed.targets);
  const offset = typeof raw.at === "number" ? raw.at : startOf(raw.at ?? keyNamed(found.node, raw) ?? found.node);
  const node = raw.at === undefined && !found.missing ? found.node : null;
  return { raw, path: found.path, offset, node };
}

function startOf(node: Node): number {
  return node.range?.[0] ?? 0;
}

/** The key itself, where an unknown one is at fault. */
function keyNamed(block: Node, raw: RawFault): Node | undefined {
  if (raw.code !== "unknown key" || !("items" in block)) return undefined;
  const pairs = block.items as readonly { readonly key?: unknown }[];
  const pair = pairs.find(({ key }) => isScalar(key) && String(key.value) === raw.received);
  return pair?.key as Node | undefined;
}

/** A placed fault with file, line, column and a path as people read it. */
export function toFault({ raw, path, offset, node }: PlacedFault, parsed: Parsed, file: string): Fault {
  const received = raw.received ?? (isScalar(node) ? node.value : null);
  return {
    file,
    ...parsed.position(offset),
    path: pathText(path),
    code: raw.code,
    received: isPlain(received) ? received : null,
    message: raw.message,
  };
}

function isPlain(value: unknown): value is string | number | boolean | null {
  return value === null || typeof value === "string" || typeof value === "number" || typeof value === "boolean";
}

/** A path as people read it: "suction[0].line.bore". */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === "number") return `${text}[${step}]`;
    return text === "" ? step : `${text}.${step}`;
  }, "");
}
