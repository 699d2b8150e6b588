import type { LeafRow } from "./Leaf.js";

type Block = Readonly<Record<string, unknown>>;

const left = (place: string): LeafRow[] => [
  [`${place}.middle`, "running time left"],
  [`${place}.pointTemperature`, "temperature where the limit is met"],
  [`${place}.hourMeter`, "hour meter at the limit"],
  [`${place}.sinceStart`, "running time so far"],
];

const place = (inside: string): LeafRow[] => [
  [`${inside}row`, "row"],
  [`${inside}line`, "line of the file"],
];

/** What a caution counts. */
const counted: Readonly<Record<string, string>> = {
  "earlier readings": "readings of elements changed since",
  "load taken": "readings without a load",
  "temperature taken": "readings without a temperature",
  "level taken": "readings without a level",
  "after the jump": "readings since",
};

/** Figures of an answer to `gauge`. */
export const gaugeLeaves: readonly LeafRow[] = [
  ["findings.*.by", "size"],
  ["findings.*.weakBy", "feed pressure short by"],
  ["findings.*.coldest", "coldest reading"],
  ...place("findings.*.from."),
  ["reasons.*.count", "readings at different times"],
  ["reasons.*.needed", "readings needed"],
  ["reasons.*.middle", "running time left"],
  ["cautions.*.count", ({ code }) => counted[String(code)] ?? ""],
  ["cautions.*.temperature", "temperature taken"],
  ["cautions.*.range", "what the level makes of the vacuum"],
  ["cautions.*.share", "demand over the file's, less one"],
  ...place("cautions.*.from."),
  ...place("outliers.*."),
  ["outliers.*.read", "pressure read"],
  ["outliers.*.expected", "pressure expected"],
  ["outliers.*.deviations", "standard deviations off"],
  ...left("left"),
  ...left("leftWithout"),
  ["sides.*.readings", "readings"],
  ["sides.*.elements.*.ratio.middle", (_, { name }) => `resistance over clean of ${name}`],
  ["sides.*.elements.*.dropClean", ({ name }) => `drop of ${name}, clean`],
  ["sides.*.elements.*.drop", ({ name }) => `drop of ${name}`],
  ["sides.*.elements.*.roomUsed", ({ name }) => `room used up of ${name}`],
  ["sides.*.scatter", "scatter of a reading"],
  ["sides.*.gaugeError", "error of the gauge"],
  ["sides.*.demand", "demand over the file's"],
  ["sides.*.zero", "what all readings are off by"],
  ["sides.*.laws.*.mix", ({ law }) => `mix of ${law}`],
  ["sides.*.laws.*.weight", ({ law }) => `weight of ${law}`],
  ["sides.*.trace.time", "running time at reading"],
  ["sides.*.trace.read", "pressure read at reading"],
  ["sides.*.trace.reckoned", "pressure reckoned at reading"],
  ["readings.all", "readings"],
  ["readings.used", "readings used"],
];

/**
 * What of the readings a figure belongs to: "suction" and "delivery", a gauge each; "finding 0" and "outlier 0" and on, in
 * the order of the answer; "left" and "left without", what is left with all readings and without those that stand off; and
 * "readings", all of them.
 */
export function gaugeOf([list, at, key]: readonly (string | number)[], answer: object): string {
  const { sides, cautions } = answer as { readonly sides: readonly Block[]; readonly cautions: readonly Block[] };
  if (list === "sides") return String(sides[Number(at)]?.side);
  if (list === "findings") return `finding ${at}`;
  if (list === "outliers") return `outlier ${at}`;
  if (list === "left") return "left";
  if (list === "leftWithout") return "left without";
  if (list === "reasons" && (key === "low" || key === "high" || key === "middle")) return "left";
  if (list !== "cautions") return "readings";
  const caution = cautions[Number(at)];
  if (caution?.code !== "after the jump") return "readings";
  // Every jump that is found has its caution, in the same order.
  const before = cautions.slice(0, Number(at)).filter(({ code }) => code === "after the jump").length;
  const { findings } = answer as { readonly findings: readonly Block[] };
  const jumps = findings.flatMap(({ code }, place) => (code === "jump" ? [place] : []));
  return `finding ${jumps[before]}`;
}
