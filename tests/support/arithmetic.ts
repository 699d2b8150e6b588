import type { Table } from "./table.js";

/**
 * The same table, reported as independent arithmetic. For columns worked out from a published one, and for figures the
 * library is merely handed: agreement there checks the code and says nothing about how well a law fits the world.
 */
export function asArithmetic(table: Table): Table {
  return { ...table, header: { ...table.header, kind: "independent arithmetic (checks the code, not the physics)" } };
}
