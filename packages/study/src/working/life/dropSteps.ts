import { elementRows } from "../../life/elementRows.js";
import { firstToGo } from "../../life/firstToGo.js";
import * as formulas from "../formulas/caught.js";
import { deliveryWay } from "../path/deliveryWay.js";
import { suctionWay } from "../path/suctionWay.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { suctionFlow } from "../supply/pump.js";
import { inWords, worked } from "../worked.js";
import { filledScene, type LifeScene } from "./lifeFacts.js";

/** Drop of an element at the worst duty point: clean, or filled as at the end. */
export function elementDrop(life: LifeScene, name: string, which: "clean" | "then"): Step {
  const scene = filledScene(life, which === "clean" ? null : life.last);
  const row = rowsOf(life).find((one) => one.name === name);
  const value = (which === "clean" ? row?.dropClean : row?.drop) ?? 0;
  const title = which === "clean" ? `drop of ${name}, clean` : `drop of ${name} at the end`;
  const step =
    stopsOf(scene)
      .find((stop) => stop.name === name)
      ?.drop() ?? null;
  if (step === null)
    return inWords("nothing is known to flow through it there", { name: title, value, unit: "Pa", kind: "pressure" });
  return { ...step, name: title, value };
}

/** An element's share of all the rise since clean. */
export function elementShare(life: LifeScene, name: string): Step {
  const names = life.facts.given.elements.map((one) => one.name);
  const value = rowsOf(life).find((one) => one.name === name)?.share ?? 0;
  const title = `share of the rise of ${name}`;
  const p = names.map((one) =>
    worked(
      formulas.riseOf,
      { d: elementDrop(life, one, "then"), d_0: elementDrop(life, one, "clean") },
      { name: `rise of ${one}` },
    ),
  );
  if (p.every((one) => one.value === 0))
    return inWords("no drop has risen", { name: title, value, unit: "1", kind: "ratio" });
  const d = elementDrop(life, name, "then");
  return worked(formulas.riseShare, { d, d_0: elementDrop(life, name, "clean"), p }, { name: title, value });
}

/** Names of the elements that go first, where several do. */
export function goingTogether(life: LifeScene): string[] {
  const names = firstToGo(rowsOf(life)).map(({ name }) => name);
  return names.length > 1 ? names : [];
}

function rowsOf(life: LifeScene) {
  const { facts, found, last, place, scene } = life;
  return scene.kept("element rows", () => {
    const [start] = found.moments;
    return start ? elementRows(facts.given, start, last, place) : [];
  });
}

/** Every stop of both sides. */
export function stopsOf(scene: Scene) {
  const delivery = scene.system.delivery === undefined ? [] : deliveryWay(scene).stops;
  return [...suctionWay(scene, suctionFlow(scene)).stops, ...delivery];
}

/** An element's share of the flow of some. */
export function shareOfFlow(
  scene: Scene,
  name: string,
  bank: readonly string[],
  more: { readonly name: string; readonly value: number },
): Step {
  const flows = new Map(stopsOf(scene).map((stop) => [stop.name, stop.flow]));
  const q = flows.get(name);
  const Q = bank.flatMap((one) => flows.get(one) ?? []);
  if (!q || Q.length === 0) return inWords("nothing flows", { ...more, unit: "1", kind: "ratio" });
  return worked(formulas.flowShare, { q, Q }, more);
}
