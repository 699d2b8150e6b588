import type { LeafRow } from "./Leaf.js";
import { remarkRows } from "./remarkLeaves.js";

/** Rows of a side; `state` is what their figures' names end with. */
function rows(place: string, state = ""): LeafRow[] {
  const named = (key: string, what: string): LeafRow => [`${place}.*.${key}`, ({ name }) => `${what} ${name}${state}`];
  return [
    named("depth", "depth of"),
    named("flow", "flow in"),
    named("drop", "drop of"),
    named("share", "share of"),
    named("pressure", "pressure behind"),
    named("reynolds", "Reynolds number in"),
  ];
}

const shared: readonly LeafRow[] = [
  ["points.*.temperature", "temperature"],
  ...remarkRows("points.*.cautions"),
  ["points.*.vacuumLimits.clean", "clean limit"],
  ["points.*.vacuumLimits.atChange", "limit at change"],
  ["points.*.feedLimit", "feed limit"],
  ["points.*.ceilings.clean.flow.middle", "ceiling clean"],
  ["points.*.ceilings.atChange.flow.middle", "ceiling at change"],
];

/** Figures of an answer to `check`. */
export const checkLeaves: readonly LeafRow[] = [
  ...shared,
  ...remarkRows("points.*.reasons"),
  // A fuel's own remark stands inside the caution that carries it.
  ...remarkRows("points.*.cautions.*").map(([pattern, figure]): LeafRow => [pattern, figure]),
  ["points.*.fuel.density", "fuel density"],
  ["points.*.fuel.kinematicViscosity", "fuel viscosity"],
  ["points.*.fuel.vapourPressure", "vapour pressure"],
  ["points.*.fuel.cloudPoint", "cloud point"],
  ["points.*.fuel.coldFilterPluggingPoint", "CFPP"],
  ["points.*.demand.burn", "burn"],
  ["points.*.demand.return", "return"],
  ["points.*.demand.total", "demand"],
  ["points.*.suctionFlow", "suction flow"],
  ["points.*.vacuum.middle", "vacuum"],
  ["points.*.vacuumNow.middle", "vacuum now"],
  ["points.*.feedPressure.middle", "feed pressure"],
  ["points.*.lowest.pressure.middle", "lowest pressure"],
  ["points.*.velocityHead", "velocity head"],
  ["points.*.inHand.middle", "in hand"],
  ["points.*.riseFree.middle", "free for soil"],
  ["points.*.most.share", "largest share"],
  ["points.*.ambientPressure", "air pressure"],
  ...rows("points.*.suction"),
  ...rows("points.*.delivery"),
  ...rows("points.*.asTheyAre.suction", " as it is"),
  ...rows("points.*.asTheyAre.delivery", " as it is"),
  ["points.*.spread.vacuum.middle", "vacuum of draws"],
  ["points.*.spread.feedPressure.middle", "feed pressure of draws"],
  ["points.*.spread.inHand.middle", "in hand of draws"],
  ["points.*.spread.broken.chance", "chance that a limit is broken"],
  ["points.*.spread.broken.chanceError", "standard error of the chance that a limit is broken"],
  ["points.*.spread.draws", "draws"],
];

/** Figures of an answer to `curve`; those in columns are the same at each demand of it. */
export const curveLeaves: readonly LeafRow[] = [
  ...shared,
  ...remarkRows("points.*.unanswered"),
  ...remarkRows("points.*.cautions.*").map(([pattern, figure]): LeafRow => [pattern, figure]),
  ["atChange.temperature", "temperature"],
  ["points.*.demand", "demand at a point of the curve"],
  ["points.*.clean.vacuum.middle", "vacuum"],
  ["points.*.now.vacuum.middle", "vacuum now"],
  ["points.*.atChange.vacuum.middle", "vacuum at change"],
  ["points.*.clean.feedPressure.middle", "feed pressure clean"],
  ["points.*.now.feedPressure.middle", "feed pressure"],
  ["points.*.atChange.feedPressure.middle", "feed pressure at change"],
  ["points.*.duty.demand", "demand"],
  ["points.*.duty.suctionFlow", "suction flow"],
  ["points.*.duty.vacuum.middle", "vacuum"],
  ["points.*.duty.vacuumNow.middle", "vacuum now"],
  ["points.*.duty.vacuumAtChange.middle", "vacuum at change"],
  ["points.*.duty.feedPressure.middle", "feed pressure"],
  ["points.*.spread.vacuum.middle", "vacuum of draws"],
  ["points.*.spread.feedPressure.middle", "feed pressure of draws"],
];
