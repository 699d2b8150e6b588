import type { LeafRow } from "./Leaf.js";

type Block = Readonly<Record<string, unknown>>;

const measures = (place: string, of: string): LeafRow[] => [
  [`${place}.time`, of],
  [`${place}.burnt`, `fuel burnt at the ${of}`],
  [`${place}.distance`, `distance at the ${of}`],
  [`${place}.years`, `years of duty at the ${of}`],
  [`${place}.hourMeter`, `hour meter at the ${of}`],
  [`${place}.distanceMeter`, `distance meter at the ${of}`],
];

const element = (pattern: string, name: (element: string) => string): LeafRow => [
  pattern,
  (block: Block) => name(String(block.name ?? block.element)),
];

/** A beta is told by its filter, in the block around it, and its size, in its own. */
function moved(what: string): (block: Block, around: Block) => string {
  return ({ size }, { element: own }) => {
    const { value } = size as { readonly value: number };
    return `${what} of ${own} at ${Number((value * 1e6).toPrecision(4))} µm`;
  };
}

/** Figures of an answer to `life`. */
export const lifeLeaves: readonly LeafRow[] = [
  ["horizon", "horizon"],
  ["year", "year of duty"],
  ...measures("end", "end of life"),
  ["end.pointTemperature", "temperature it is judged at"],
  ["range.early", "early end"],
  ["range.late", "late end"],
  ["reasons.*.early", "early end"],
  ["reasons.*.late", "late end"],
  ["interval.time", "service interval"],
  ["interval.atMost", "longest interval"],
  ...measures("change", "change"),
  ["spread.middle", "life of draws"],
  ["spread.chance", "chance of an end before the service interval"],
  ["spread.chanceError", "standard error of the chance of an end before the service interval"],
  ["spread.atMost.chance", "chance of an end before the longest interval"],
  ["spread.atMost.chanceError", "standard error of the chance of an end before the longest interval"],
  ["spread.draws", "draws of the life"],
  element("elements.*.soilAtStart", (name) => `soil at start on ${name}`),
  element("elements.*.soil", (name) => `soil on ${name}`),
  element("elements.*.water", (name) => `water in ${name}`),
  element("elements.*.restriction", (name) => `resistance over clean of ${name}`),
  element("elements.*.dropClean", (name) => `drop of ${name}, clean`),
  element("elements.*.drop", (name) => `drop of ${name} at the end`),
  element("elements.*.share", (name) => `share of the rise of ${name}`),
  element("partial.*.time", (name) => `next end with ${name} alone new`),
  [
    "partial.*.shares.*.before",
    ({ element: own }, { element: changed }) => `share of flow of ${own} before ${changed} is changed`,
  ],
  [
    "partial.*.shares.*.after",
    ({ element: own }, { element: changed }) => `share of flow of ${own} with ${changed} new`,
  ],
  ["cleanliness.*.solids", ({ place }) => `solids ${place}`],
  ["cleanliness.*.counts.at4", (_, { place }) => `particles from 4 µm ${place}`],
  ["cleanliness.*.counts.at6", (_, { place }) => `particles from 6 µm ${place}`],
  ["cleanliness.*.counts.at14", (_, { place }) => `particles from 14 µm ${place}`],
  ["water.temperature", "coldest season"],
  ["water.total", "water in the fuel"],
  ["water.dissolved", "water dissolved"],
  ["water.free", "free water"],
  ["water.carriedOn", "free water carried on"],
  element("water.stages.*.efficiency", (name) => `share of free water kept by ${name}`),
  element("water.stages.*.rate", (name) => `water kept in a time by ${name}`),
  element("water.stages.*.drainEvery", (name) => `draining of ${name}`),
  element("water.stages.*.shutAfter", (name) => `shutting of ${name} by water`),
  ["trace.time", "running time at a moment"],
  ["trace.vacuum", "vacuum at a moment"],
  ["trace.feed", "feed pressure at a moment"],
  ["cautions.*.after", "dirty delivery after"],
  ["cautions.*.volume", "volume of the dirty delivery"],
  ["cautions.*.share", "share beyond the counted sizes"],
  ["cautions.*.coldest", "coldest temperature judged"],
  ["cautions.*.temperature", ({ season }) => `temperature of ${season}`],
  ["cautions.*.caution.size", moved("size of the beta")],
  ["cautions.*.caution.stated", moved("beta stated")],
  ["cautions.*.caution.held", moved("beta held")],
];
