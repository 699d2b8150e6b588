import { estimateFactor } from "../formulas/estimates.js";
import { costShare } from "../formulas/path.js";
import { resistanceOf } from "../parts/mediumSteps.js";
import { deliveryWay } from "../path/deliveryWay.js";
import type { Stop } from "../path/Stop.js";
import { suctionWay } from "../path/suctionWay.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { outlet } from "../supply/pressures.js";
import { suctionFlow } from "../supply/pump.js";
import { inWords, worked } from "../worked.js";
import type { FigureMaker } from "./FigureMaker.js";
import { filterAt } from "./filterAt.js";

/** What each part from the tank on costs, and what else is said of it; with the elements as the scene has them. */
export function rowFigures(scene: Scene): FigureMaker[] {
  const suction = suctionWay(scene, suctionFlow(scene)).stops;
  const delivery = scene.model.state(scene.demand).pumpRise === null ? [] : deliveryStops(scene);
  return [
    ...suction.flatMap((stop) => ofStop(scene, stop, suction)),
    ...delivery.flatMap((stop) => ofStop(scene, stop, delivery)),
  ];
}

function deliveryStops(scene: Scene): readonly Stop[] {
  return scene.system.delivery === undefined ? [] : deliveryWay(scene, () => outlet(scene)).stops;
}

function ofStop(scene: Scene, stop: Stop, side: readonly Stop[]): FigureMaker[] {
  const { name, path, depth } = stop;
  const figure = (what: string, make: () => Step | null): FigureMaker => ({
    group: name,
    name: `${what} ${name}`,
    make: () => {
      const step = make();
      return step && { ...step, name: `${what} ${name}`, ...(path === null ? {} : { part: path }) };
    },
  });
  const filter = path === null ? null : filterAt(scene, path);
  return [
    figure("drop of", stop.drop),
    figure("share of", () => shareOf(stop, side)),
    figure("flow in", () => stop.flow),
    figure("pressure behind", stop.pressure),
    figure("depth of", () =>
      inWords("counted: the banks it stands inside", { name, value: depth, unit: "1", kind: "plain" }),
    ),
    ...(stop.reynolds ? [figure("Reynolds number in", stop.reynolds)] : []),
    ...(filter && filter.core.medium.linear.high > filter.core.medium.linear.low
      ? [
          figure("estimate factor of", () =>
            worked(estimateFactor, {
              a: resistanceOf(filter.given, filter.core.medium, "low"),
              b: resistanceOf(filter.given, filter.core.medium, "high"),
            }),
          ),
        ]
      : []),
    ...(stop.kind === "tank" && stop.flow.value < 0 ? [figure("flow back into", () => backflow(stop))] : []),
  ];
}

/** Share of all that costs on the main path of its side. */
function shareOf(stop: Stop, side: readonly Stop[]): Step | null {
  const drop = stop.drop();
  const c = side.filter(({ depth }) => depth === 0).flatMap((one) => one.drop() ?? []);
  const costing = c.filter(({ value }) => value > 0);
  if (!drop || costing.length === 0) {
    return inWords(drop ? "nothing costs on this side" : "nothing flows through it", {
      name: "share",
      value: 0,
      unit: "1",
      kind: "ratio",
    });
  }
  return worked(costShare, { d: drop, c: costing });
}

function backflow({ flow }: Stop): Step {
  return inWords(
    "the flow from this tank, turned round",
    { name: "flow back", value: -flow.value, unit: "m3/s", kind: "flow" },
    [flow],
  );
}

/** The largest share of the suction side with the elements as they are. */
export function largestShare(now: Scene): Step | null {
  const side = suctionWay(now, suctionFlow(now)).stops;
  const shares = side.filter(({ depth }) => depth === 0).flatMap((stop) => shareOf(stop, side) ?? []);
  const most = shares.reduce<Step | null>(
    (found, one) => (found === null || one.value > found.value ? one : found),
    null,
  );
  return most && most.value > 0 ? { ...most, name: "largest share" } : null;
}
