import {
  type DescentEntry,
  FREE_FALL,
  type Part,
  type SupplyDescent,
  type SupplyModel,
  type Tank,
} from "@thirstline/core";
import type { PartRow } from "./CheckAnswer.js";

/** A row with the part behind it, for whoever looks for cautions. */
export interface Row extends PartRow {
  readonly part: Part | null;
}

/** The rows of both sides of the pump. */
export interface Rows {
  readonly suction: readonly Row[];
  readonly delivery: readonly Row[];
}

/** Every part of a supply in the order the fuel meets it, with what it costs and its share of its side. */
export function rowsOf(model: SupplyModel, descent: SupplyDescent, kinetic: number, flow: number): Rows {
  const namer = new Namer();
  const several = descent.tanks.length > 1;
  const depth = several ? 1 : 0;
  const tanks = descent.tanks.flatMap((share): Row[] => {
    const name = share.tank.name ?? "tank";
    const head = tankRow(name, share.tank, model, { depth, flow: share.flow, source: share.source });
    return [head, ...share.descent.flatMap((entry) => rowsOfEntry(entry, depth, namer))];
  });
  // Several tanks stand like the branches of a bank: between the air on them and their joint they cost one figure.
  const together = { drop: model.supply.ambientPressure - descent.joint, pressure: descent.joint };
  const joint: Row[] = several ? [{ ...blank(`${descent.tanks.length} tanks`, "bank", 0, flow), ...together }] : [];
  const line = descent.suction.flatMap((entry) => rowsOfEntry(entry, 0, namer));
  const motion: Row = {
    ...blank(`fuel's motion at the ${model.supply.pump.kind === "none" ? "engine" : "pump"}`, "velocity", 0, flow),
    drop: kinetic,
    pressure: model.intake.pressure(flow),
  };
  return {
    suction: withShares([...joint, ...tanks, ...line, ...(kinetic > 0 ? [motion] : [])]),
    delivery: withShares(descent.delivery.flatMap((entry) => rowsOfEntry(entry, 0, namer))),
  };
}

function rowsOfEntry(entry: DescentEntry, depth: number, namer: Namer): Row[] {
  if (entry.kind === "part") {
    const { part, flow, drop, reynolds, regime } = entry.profile;
    return [
      { ...blank(namer.name(part), part.kind, depth, flow), part, drop, pressure: entry.pressure, reynolds, regime },
    ];
  }
  const { flow, drop, branches } = entry.profile;
  const bank: Row = { ...blank(namer.bank(branches.length), "bank", depth, flow), drop, pressure: entry.pressure };
  return [bank, ...entry.branches.flatMap((branch) => branch.flatMap((inner) => rowsOfEntry(inner, depth + 1, namer)))];
}

function tankRow(
  name: string,
  tank: Tank,
  model: SupplyModel,
  at: { readonly depth: number; readonly flow: number; readonly source: number },
): Row {
  const vacuum = tank.vent.kind === "spring" ? tank.vent.opening : 0;
  const drop = vacuum - model.fuel.density * FREE_FALL * tank.depth;
  return { ...blank(name, "tank", at.depth, at.flow), drop, pressure: at.source };
}

function blank(name: string, kind: PartRow["kind"], depth: number, flow: number): Row {
  return { name, kind, depth, flow, part: null, drop: null, share: 0, pressure: null, reynolds: null, regime: null };
}

/** Each row's cost over all that costs on the main path; what helps has no share. */
function withShares(rows: readonly Row[]): Row[] {
  const costs = (row: Row) => Math.max(0, row.drop ?? 0);
  const all = rows.reduce((sum, row) => sum + (row.depth === 0 ? costs(row) : 0), 0);
  return rows.map((row) => ({ ...row, share: all > 0 ? costs(row) / all : 0 }));
}

/** Names for parts that have none: their kind, numbered when it has been used. */
class Namer {
  private readonly used = new Map<string, number>();

  name(part: Part): string {
    return this.numbered(part.name ?? part.kind);
  }

  bank(branches: number): string {
    return this.numbered(`${branches} in parallel`);
  }

  private numbered(name: string): string {
    const before = this.used.get(name) ?? 0;
    this.used.set(name, before + 1);
    return before === 0 ? name : `${name} (${before + 1})`;
  }
}
