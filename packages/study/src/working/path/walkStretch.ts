import type { BankDescent, DescentEntry, Part, PartDescent } from "@thirstline/core";
import type { SystemBank, SystemPart } from "@thirstline/spec/system";
import { dropSum } from "../formulas/path.js";
import { reynoldsIn } from "../parts/boreSteps.js";
import { boresOf } from "../parts/boresOf.js";
import type { PartScene } from "../parts/PartScene.js";
import { partDrop } from "../parts/partDrop.js";
import type { PartPath, Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { known } from "./known.js";
import { once } from "./once.js";
import { opensFirst } from "./opensFirst.js";
import type { Start } from "./Start.js";
import type { Stop, Stretch } from "./Stop.js";
import { type Branch, splitStep, standsOnStep } from "./splitStep.js";
import { staticBehind } from "./staticBehind.js";

/** Follows parts and what core says of them, side by side, from a start. */
export function walkStretch(
  parts: readonly SystemPart[],
  entries: readonly DescentEntry[],
  place: PartPath,
  start: Start,
): Stretch {
  const stops: Stop[] = [];
  const costs: (() => Step | null)[] = [];
  let { bore } = start;
  parts.forEach((part, at) => {
    const entry = entries[at];
    if (entry === undefined) return;
    const path = [...place, at];
    const here = { ...start, bore, spent: [...start.spent, ...costs] };
    if (part.part === "bank" && entry.kind === "bank") {
      const found = bankStops(part, entry, path, here);
      stops.push(...found);
      costs.push(found[0]?.drop ?? (() => null));
      return;
    }
    if (entry.kind !== "part") return;
    const given = { scene: start.scene, part, path, flow: start.flow };
    bore = boresOf(given).behind ?? bore;
    const stop = partStop(given, entry, { ...here, bore });
    stops.push(stop);
    costs.push(stop.drop);
  });
  return { stops, costs, bore };
}

function partStop(given: PartScene, { profile, pressure }: PartDescent, start: Start): Stop {
  // As in `staticBehind`: on the main path a check valve is just opening, in a branch it may be held shut.
  const heldShut = profile.drop === null && start.depth > 0 && !start.alone;
  const drop = once(() => (heldShut || isShut(profile.part) ? null : partDrop(given, profile.part, profile.drop)));
  const { part } = given;
  const { throat } = boresOf(given);
  const { reynolds } = profile;
  return {
    name: nextName(start),
    kind: profile.part.kind,
    depth: start.depth,
    path: given.path,
    flow: given.flow,
    drop,
    pressure: () => staticBehind({ ...start, spent: [...start.spent, drop] }, pressure, part.name),
    reynolds: throat && reynolds !== null ? () => reynoldsIn(given, throat, reynolds) : null,
    regime: profile.regime,
  };
}

function isShut(part: Part): boolean {
  return part.kind === "filter" && (part.blocked || part.restriction === Infinity);
}

function bankStops(part: SystemBank, entry: BankDescent, path: PartPath, start: Start): Stop[] {
  // In a branch that is followed by itself there are no rows to be named after.
  const name = nextName(start) || `${part.branches.length} in parallel`;
  const { scene } = start;
  const inside = branchesOf(part, entry, path, start);
  const value = entry.profile.drop;
  const flowing = inside.filter(({ size }) => size !== 0);
  const first = flowing.find((branch) => !standsOnStep(scene, branch)) ?? flowing[0] ?? opensFirst(inside);
  const drop = once(() => {
    const costs = value === null ? null : first && known(first.alone.costs);
    if (!costs || value === null) return null;
    return worked(dropSum, { d: costs }, { name: `drop of ${name}`, value, part: path });
  });
  const bank: Stop = {
    name,
    kind: "bank",
    depth: start.depth,
    path,
    flow: start.flow,
    drop,
    pressure: () => staticBehind({ ...start, spent: [...start.spent, drop] }, entry.pressure, name),
    reynolds: null,
    regime: null,
  };
  const branches = inside.map((own, at) => {
    const flow = splitStep({ scene, path, name, total: start.flow }, inside, at);
    const rest = { ...start, flow, depth: start.depth + 1 };
    return walkStretch(part.branches[at] ?? [], entry.branches[at] ?? [], own.place, rest);
  });
  return [bank, ...branches.flatMap(({ stops }) => stops)];
}

function branchesOf(part: SystemBank, entry: BankDescent, path: PartPath, start: Start): Branch[] {
  return part.branches.map((branch, at) => {
    const entries = entry.branches[at] ?? [];
    const size = entries[0]?.profile.flow ?? 0;
    const place = [...path, "branches", at];
    const flow = inWords("as found", { name: "flow through the branch", value: size, unit: "m3/s", kind: "flow" });
    const quiet: Start = { ...start, flow, depth: start.depth + 1, alone: true, names: nameless() };
    return { place, size, alone: walkStretch(branch, entries, place, quiet) };
  });
}

function nextName({ names }: Start): string {
  const next = names.next();
  return next.done ? "" : next.value;
}

function* nameless(): Generator<string> {
  for (;;) yield "";
}
