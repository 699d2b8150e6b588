import { type Alias, isAlias, isMap, isScalar, isSeq, type Node, type Pair } from "yaml";
import { isMergeKey } from "./isMergeKey.js";
import type { Path } from "./RawFault.js";

/** A node found by its path, and how much of the path the file really has. */
export interface Location {
  readonly node: Node;
  /** The path without steps that only the full form of a short one has. */
  readonly path: Path;
  /** Whether the last key is not in the file. */
  readonly missing: boolean;
}

/**
 * Finds what a path leads to. The schema sees short forms written out ("0.9 m" as { height: 0.9 m }, a part as a list of
 * one), so steps the file does not have are passed over; a key that is missing from a block leads to the block.
 */
export function locate(root: Node, path: Path, targets: ReadonlyMap<Alias, Node>): Location {
  const follow = (node: Node): Node => {
    let found = node;
    while (isAlias(found)) {
      const target = targets.get(found);
      if (target === undefined) return found;
      found = target;
    }
    return found;
  };
  let node = follow(root);
  const taken: (string | number)[] = [];
  for (const step of path) {
    if (isSeq(node) && typeof step === "number") {
      const item = node.items[step];
      taken.push(step);
      if (item === undefined || item === null) return { node, path: taken, missing: true };
      node = follow(item as Node);
    } else if (isMap(node) && typeof step === "string") {
      const value = entryOf(node.items as Pair[], step, follow);
      taken.push(step);
      if (value === undefined) return { node, path: taken, missing: true };
      node = follow(value);
    }
  }
  return { node, path: taken, missing: false };
}

function entryOf(pairs: readonly Pair[], key: string, follow: (node: Node) => Node): Node | undefined {
  for (const pair of pairs) {
    // A key with nothing after it stands for itself: that is where the value is missing.
    if (isScalar(pair.key) && String(pair.key.value) === key) return (pair.value as Node | null) ?? pair.key;
  }
  for (const pair of pairs.filter(isMergeKey)) {
    const source = follow(pair.value as Node);
    const blocks = isSeq(source) ? source.items.map((item) => follow(item as Node)) : [source];
    for (const block of blocks) {
      const found = isMap(block) ? entryOf(block.items as Pair[], key, follow) : undefined;
      if (found !== undefined) return found;
    }
  }
  return undefined;
}
