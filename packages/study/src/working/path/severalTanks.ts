import * as formulas from "../formulas/path.js";
import { airPressure } from "../supply/air.js";
import { inWords, worked } from "../worked.js";
import { known } from "./known.js";
import { once } from "./once.js";
import { opensFirst } from "./opensFirst.js";
import type { Start } from "./Start.js";
import type { Stop, Stretch } from "./Stop.js";
import { type Branch, splitStep } from "./splitStep.js";
import type { TankGiven } from "./tankStop.js";
import { tankStop } from "./tankStop.js";
import { walkStretch } from "./walkStretch.js";

/** Several tanks stand like the branches of a bank, between the air on them and their joint. */
export function severalTanks({ scene, flow, names, descent, open }: TankGiven): Stretch {
  const { system, model } = scene;
  const name = names.next().value ?? "tanks";
  const branches = descent.tanks.map((share, place): Branch => {
    const at = open[place] ?? 0;
    const found = inWords("as found", { name: "flow from the tank", value: share.flow, unit: "m3/s", kind: "flow" });
    const head = tankStop(scene, at, { flow: found, depth: 1, name: share.tank.name ?? "tank" });
    const start: Start = {
      scene,
      pressure: () => airPressure(scene),
      flow: found,
      depth: 1,
      alone: true,
      bore: null,
      names: unnamed(),
      spent: [head.drop],
    };
    const way = walkStretch(system.tanks[at]?.path ?? [], share.descent, ["tanks", at, "path"], start);
    return { place: ["tanks", at], size: share.flow, alone: { ...way, costs: [head.drop, ...way.costs] } };
  });
  const flowing = branches.filter(({ size }) => size !== 0);
  const most = Math.max(...flowing.map(({ size }) => Math.abs(size)));
  const first = flowing.find(({ size }) => Math.abs(size) === most) ?? opensFirst(branches);
  const value = model.supply.ambientPressure - descent.joint;
  const drop = once(() => {
    const d = first && known(first.alone.costs);
    if (!Number.isFinite(value) || !d) return null;
    return worked(formulas.dropSum, { d }, { name: `drop of ${name}`, value, scale: model.supply.ambientPressure });
  });
  const joint: Stop = {
    name,
    kind: "bank",
    depth: 0,
    path: null,
    flow,
    drop,
    pressure: () => {
      const V = drop();
      return (
        V &&
        worked(
          formulas.pressureOfVacuum,
          { p_a: airPressure(scene), V },
          { name: `pressure behind ${name}`, value: descent.joint },
        )
      );
    },
    reynolds: null,
    regime: null,
  };
  const inside = branches.flatMap((_, place): Stop[] => {
    const at = open[place] ?? 0;
    const own = splitStep({ scene, path: null, name, total: flow }, branches, place);
    const head = tankStop(scene, at, { flow: own, depth: 1, name: names.next().value ?? "tank" });
    const start = {
      scene,
      pressure: () => airPressure(scene),
      flow: own,
      depth: 1,
      bore: null,
      names,
      spent: [head.drop],
    };
    const entries = descent.tanks[place]?.descent ?? [];
    return [head, ...walkStretch(system.tanks[at]?.path ?? [], entries, ["tanks", at, "path"], start).stops];
  });
  return { stops: [joint, ...inside], costs: [drop], bore: null };
}

function* unnamed(): Generator<string, undefined> {
  for (;;) yield "";
}
