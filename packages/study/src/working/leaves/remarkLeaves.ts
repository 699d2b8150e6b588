import type { LeafRow } from "./Leaf.js";

type Block = Readonly<Record<string, unknown>>;

/** What a remark's figure is, by the remark's code and the figure's name in it. */
const figures: Readonly<Record<string, Readonly<Record<string, (block: Block) => string>>>> = {
  transitional: { reynolds: ({ part }) => `Reynolds number in ${part}` },
  "constant K in laminar flow": { reynolds: ({ part }) => `Reynolds number in ${part}` },
  "orifice at low Reynolds number": { reynolds: ({ part }) => `Reynolds number in ${part}` },
  "estimated medium": { factor: ({ part }) => `estimate factor of ${part}` },
  altitude: { altitude: () => "altitude", ambientPressure: () => "air pressure" },
  "vapour margin": { margin: () => "vapour margin" },
  "low point in the path": { pressure: () => "lowest pressure" },
  "freed air": { share: () => "air freed under suction", vacuum: () => "vacuum now" },
  "tank runs backwards": { flow: ({ tank }) => `flow back into ${tank}` },
  "past terminal drop": {
    drop: ({ part }) => `drop of ${part} as it is, at the file's own temperature`,
    terminalDrop: ({ part }) => `terminal drop of ${part}`,
  },
  "below cloud point": {
    temperature: () => "temperature",
    cloudPoint: () => "cloud point",
    coldFilterPluggingPoint: () => "CFPP",
  },
  "cloud point not known": { temperature: () => "temperature", limit: () => "highest cloud point of its kind" },
  "fuel out of range": {
    temperature: () => "temperature",
    // Above its data a remark says from 0 K on, for no bound.
    from: ({ from }) => ((from as { readonly value: number }).value > 0 ? "coldest fuel data" : "no bound below"),
    to: () => "warmest fuel data",
  },
  "below range": { temperature: () => "temperature", from: () => "coldest fuel data" },
  "above range": { temperature: () => "temperature", to: () => "warmest fuel data" },
  "beyond measured points": {
    temperature: () => "temperature",
    from: () => "coldest measured viscosity",
    to: () => "warmest measured viscosity",
  },
  "part outside range": {
    temperature: () => "temperature",
    share: ({ part }) => `share of ${part}`,
    from: ({ part }) => `coldest data of ${part}`,
    to: ({ part }) => `warmest data of ${part}`,
  },
  "water can freeze": { temperature: () => "temperature" },
};

/** Rows for the figures of remarks that stand at a place: `${place}.*.${field}`. */
export function remarkRows(place: string): LeafRow[] {
  const fields = new Set(Object.values(figures).flatMap((own) => Object.keys(own)));
  return [...fields].map((field): LeafRow => [`${place}.*.${field}`, (block) => nameOf(block, field)]);
}

function nameOf(block: Block, field: string): string {
  return figures[String(block.code)]?.[field]?.(block) ?? "";
}
