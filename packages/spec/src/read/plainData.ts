import { type Alias, type Document, isAlias, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from "yaml";
import { shown } from "../shown.js";
import { bounds } from "./bounds.js";
import { isMergeKey } from "./isMergeKey.js";
import type { Path, RawFault } from "./RawFault.js";
import { unknownAlias } from "./unknownAlias.js";

/** A file's data as plain values, with the faults of its form. */
export interface PlainData {
  readonly data: unknown;
  readonly faults: readonly RawFault[];
  /** what each alias stands for */
  readonly targets: ReadonlyMap<Alias, Node>;
  /** whether the reading was given up: too deep, or too many values */
  readonly stopped: boolean;
}

/** Ends the reading of a file that is past its bounds. */
class Stop extends Error {}

/**
 * Turns a YAML document into plain values: aliases followed, merge keys merged, no key twice, no tags, nothing that could
 * reach an object's prototype. Bounded in depth and count, whatever the file does with its aliases.
 */
export function plainData(document: Document.Parsed): PlainData {
  const reader = new Reader();
  try {
    return { data: reader.value(document.contents, []), ...reader.found(false) };
  } catch (stop) {
    if (!(stop instanceof Stop)) throw stop;
    return { data: undefined, ...reader.found(true) };
  }
}

class Reader {
  private readonly faults: RawFault[] = [];
  private readonly targets = new Map<Alias, Node>();
  private readonly anchors = new Map<string, Node>();
  private readonly open = new Set<Node>();
  private count = 0;

  found(stopped: boolean): Omit<PlainData, "data"> {
    return { faults: this.faults, targets: this.targets, stopped };
  }

  value(node: unknown, path: Path): unknown {
    if (isAlias(node)) return this.aliased(node, path);
    if (isScalar(node)) {
      this.enter(node, path);
      return node.value;
    }
    if (!isMap(node) && !isSeq(node)) return null;
    this.enter(node, path);
    this.open.add(node);
    const value = isMap(node)
      ? this.block(node, path)
      : node.items.map((item, index) => this.value(item, [...path, index]));
    this.open.delete(node);
    return value;
  }

  private enter(node: Node & { anchor?: string; tag?: string }, path: Path): void {
    this.count += 1;
    if (this.count > bounds.values) {
      const message = `more than ${bounds.values} values (an alias counts as often as it is used); shorten the file`;
      this.stop("too many values", message, node);
    }
    if (this.open.size >= bounds.depth) {
      this.stop("too deep", `more than ${bounds.depth} blocks inside one another; no system needs that`, node);
    }
    if (node.anchor !== undefined) this.anchors.set(node.anchor, node);
    if (node.tag !== undefined) {
      const message = `the tag ${shown(node.tag)} has no meaning here; leave it out`;
      this.faults.push({ code: "tag", path, message, at: node });
    }
  }

  private stop(code: string, message: string, at: Node): never {
    this.faults.push({ code, path: [], message, at });
    throw new Stop();
  }

  private aliased(alias: Alias, path: Path): unknown {
    const target = this.anchors.get(alias.source);
    if (target === undefined) {
      this.faults.push({ code: "unknown alias", path, message: unknownAlias(alias.source), at: alias });
      return undefined;
    }
    if (this.open.has(target)) {
      const message = `*${alias.source} stands inside the very block it repeats; write out what is meant`;
      this.faults.push({ code: "cyclic alias", path, message, at: alias });
      return undefined;
    }
    this.targets.set(alias, target);
    return this.value(target, path);
  }

  private block(map: YAMLMap, path: Path): Record<string, unknown> {
    const own = new Map<string, unknown>();
    const lines = new Set<string>();
    const merged: Record<string, unknown>[] = [];
    for (const pair of map.items) {
      if (isMergeKey(pair)) merged.push(...this.merges(pair, path));
      else this.entry(pair, path, own, lines, map);
    }
    // Own keys win over merged ones, and earlier merges over later ones.
    for (const source of merged) {
      for (const [key, value] of Object.entries(source)) if (!own.has(key)) own.set(key, value);
    }
    return Object.fromEntries(own);
  }

  private entry(pair: Pair, path: Path, own: Map<string, unknown>, seen: Set<string>, map: YAMLMap): void {
    if (!isScalar(pair.key)) {
      const message = "a key is one plain word or a few; write it as in bore: 10 mm";
      this.faults.push({ code: "not a key", path, message, at: (pair.key as Node | null) ?? map });
      return;
    }
    const key = typeof pair.key.value === "string" ? pair.key.value : (pair.key.source ?? String(pair.key.value));
    if (key === "__proto__") {
      const message = `${shown(key)} is no key of a system file; leave it out`;
      this.faults.push({ code: "unknown key", path, message, at: pair.key });
      return;
    }
    if (seen.has(key)) {
      const message = `${shown(key)} stands in this block already; keep one of the two`;
      this.faults.push({ code: "duplicate key", path, message, at: pair.key });
      return;
    }
    seen.add(key);
    own.set(key, this.value(pair.value, [...path, key]));
  }

  private merges(pair: Pair, path: Path): Record<string, unknown>[] {
    const given = this.value(pair.value, path);
    const blocks = Array.isArray(given) ? given : [given];
    if (blocks.every((one) => typeof one === "object" && one !== null && !Array.isArray(one))) return blocks;
    if (given !== undefined) {
      const message = "<< takes over the keys of a block marked above, as in <<: *pre";
      this.faults.push({ code: "bad merge", path, message, at: pair.key as Node });
    }
    return [];
  }
}
