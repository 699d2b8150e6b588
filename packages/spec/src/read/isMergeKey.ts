import { isScalar, type Pair } from "yaml";

/** Whether a pair is YAML's merge key, which takes over another block's keys. */
export function isMergeKey(pair: Pair): boolean {
  return isScalar(pair.key) && pair.key.value === "<<" && pair.key.type === "PLAIN";
}
