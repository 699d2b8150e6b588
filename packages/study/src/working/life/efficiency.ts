import { binCount, distributionFromMass, sizeEdges } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";
import * as formulas from "../formulas/soil.js";
import { ofPart } from "../parts/PartScene.js";
import type { PartPath, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { inWords, worked } from "../worked.js";

/** Test dust of each edge and up, 1/m3 for a kilogram in a cubic metre; the dust betas are taken on. */
const dust = (() => {
  const { counts } = distributionFromMass({ mass: 1, dust: "A3 medium" });
  const from = new Float64Array(binCount + 1);
  for (let bin = binCount - 1; bin >= 0; bin--) from[bin] = (from[bin + 1] ?? 0) + (counts[bin] ?? 0);
  return from;
})();

/** Share of the particles of one size that a filter catches, by its betas. */
export function binEfficiency(
  scene: Scene,
  { part, path }: { readonly part: SystemFilter; readonly path: PartPath },
  bin: number,
  value: number,
): Step {
  const size = `${micrometres(sizeEdges[bin] ?? 0)} to ${micrometres(sizeEdges[bin + 1] ?? 0)} µm`;
  const name = `share caught of ${size}`;
  const plain = { name, value, unit: "1", kind: "ratio", part: path } as const;
  const betas = betasOf(part);
  const [N_1 = 0, N_2 = 0] = [dust[bin], dust[bin + 1]];
  if (betas === null) return inWords("by its rating, whose one beta leaves a band", plain);
  if (value === 0) return inWords("held at 0: the betas say nothing is caught here", plain);
  const beta = (edge: number, own: string) =>
    inWords(
      "log beta straight in size between the points stated; below the first to beta 1, above the last held",
      { name: own, value: betaAt(betas, sizeEdges[edge] ?? 0), unit: "1", kind: "plain" },
      betas.map(({ beta: stated }, at) =>
        ofPart({ scene, path }, `betas[${at}].beta`, { name: "beta stated", value: stated, unit: "1", kind: "plain" }),
      ),
    );
  if (!(N_1 > N_2)) return inWords("beta at the lower edge, where the test dust has no particles to count", plain);
  const count = (own: string, counted: number) =>
    inWords("ISO 12103-1 A3 medium dust, a kilogram in a cubic metre", { name: own, value: counted, unit: "1/m3" });
  const leak = { name: "share that slips past the seal", value: part.leak ?? 0, unit: "1", kind: "ratio" } as const;
  return worked(
    formulas.fractional,
    {
      N_1: count("test dust of the lower edge and up", N_1),
      b_1: beta(bin, "beta at the lower edge"),
      N_2: count("test dust of the upper edge and up", N_2),
      b_2: beta(bin + 1, "beta at the upper edge"),
      k: part.leak === undefined ? inWords("no leak is stated", leak) : ofPart({ scene, path }, "leak", leak),
    },
    { name, value, part: path },
  );
}

type Betas = NonNullable<SystemFilter["betas"]>;

/** The betas a filter's catch follows; null where it is a rating's. */
function betasOf(part: SystemFilter): Betas | null {
  if (part.betas) return part.betas;
  const rating = part.statedRating ?? (part.medium.by === "rating" ? part.medium : undefined);
  const betas: Readonly<Record<string, number>> = { absolute: 75, "beta 75": 75, "beta 200": 200, "beta 1000": 1000 };
  const beta = rating && betas[rating.kind];
  return rating && beta !== undefined ? [{ size: rating.size, beta }] : null;
}

function betaAt(points: Betas, size: number): number {
  const [first, second] = points as [Betas[number], Betas[number] | undefined];
  const last = points.at(-1) ?? first;
  if (size >= last.size) return last.beta;
  const slope = second ? Math.log(second.beta / first.beta) / (second.size - first.size) : 0;
  if (size <= first.size) {
    const own = Math.max(slope, Math.log(first.beta) / first.size);
    return Math.exp(Math.max(0, Math.log(first.beta) - own * (first.size - size)));
  }
  const at = points.findIndex((point) => point.size >= size);
  const [from, to] = [points[at - 1] ?? first, points[at] ?? last];
  return from.beta * (to.beta / from.beta) ** ((size - from.size) / (to.size - from.size));
}

function micrometres(size: number): number {
  return Number((size * 1e6).toPrecision(3));
}
