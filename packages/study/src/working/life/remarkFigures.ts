import { binCount, distributionFromMass, massOf, sizeEdges } from "@thirstline/core";
import { captureFor } from "../../life/captureFor.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/soil.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import { fromFile, inWords, worked } from "../worked.js";
import type { LifeScene } from "./lifeFacts.js";

const GROUP = "What to know of the life";

/** Figures that the cautions of a life carry. */
export function remarkFigures(life: LifeScene): FigureMaker[] {
  const { system, duty } = life.facts;
  const dirty = system.deliveredFuel?.dirtyDelivery;
  const file = (
    name: string,
    path: string,
    value: number,
    unit: string,
    kind: "running time" | "volume" | "temperature",
  ) => ({
    group: GROUP,
    name,
    make: () => fromFile(path, { name, value, unit, kind }),
  });
  const coldest = duty.points[0];
  const seasons = system.duty?.seasons ?? [];
  const placeOf = (temperature: number) => {
    const at = seasons.findIndex((one) => one.temperature === temperature);
    return at < 0 ? "fuel.temperature" : `duty.seasons[${at}].temperature`;
  };
  return [
    ...(dirty
      ? [
          file("dirty delivery after", "delivered fuel.dirty delivery.after", dirty.after, "s", "running time"),
          file("volume of the dirty delivery", "delivered fuel.dirty delivery.volume", dirty.volume, "m3", "volume"),
        ]
      : []),
    ...(coldest
      ? [file("coldest temperature judged", placeOf(coldest.temperature), coldest.temperature, "K", "temperature")]
      : []),
    ...seasons.map(({ name, temperature }) =>
      file(`temperature of ${name}`, placeOf(temperature), temperature, "K", "temperature"),
    ),
    file("temperature of the file's own", "fuel.temperature", life.facts.built.temperature, "K", "temperature"),
    { group: GROUP, name: "share beyond the counted sizes", make: () => beyond(life) },
    ...movedFigures(life),
  ];
}

/** Share of the delivered solids that the counts do not carry. */
function beyond({ facts }: LifeScene): Step | null {
  const { distribution, extrapolated } = facts.delivered;
  if (extrapolated === 0) return null;
  const stated = facts.system.deliveredFuel?.counts;
  const all = { at4: 4e-6, at6: 6e-6, at14: 14e-6 } as const;
  const sizes = (Object.keys(all) as (keyof typeof all)[])
    .filter((key) => !stated || stated[key] !== undefined)
    .map((key) => all[key]);
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const outside = Array.from({ length: binCount }, (_, bin) => bin).filter((bin) => {
    const low = sizeEdges[bin] ?? 0;
    return (low < least || low >= most) && (distribution.masses[bin] ?? 0) > 0;
  });
  const words = "the outer counts carried on at their slope, as spheres of 2650 kg/m³";
  const c = outside.map((bin) =>
    inWords(words, { name: "solids of one size", value: distribution.masses[bin] ?? 0, unit: "kg/m3", kind: "solids" }),
  );
  const C = inWords("all sizes added up", {
    name: "solids",
    value: massOf(distribution),
    unit: "kg/m3",
    kind: "solids",
  });
  return worked(formulas.beyondCounts, { c, C }, { name: "share beyond the counted sizes", value: extrapolated });
}

/** Betas that could not be held, since a size would have had to gain particles. */
function movedFigures({ scene }: LifeScene): FigureMaker[] {
  const { counts } = distributionFromMass({ mass: 1, dust: "A3 medium" });
  return filtersWithPlaces(scene).flatMap(({ part, path }): FigureMaker[] => {
    const capture = captureFor(part);
    if (!capture.known) return [];
    return capture.cautions.flatMap((caution): FigureMaker[] => {
      if (caution.code !== "beta moved") return [];
      const at = part.betas?.findIndex(({ size }) => size === caution.size) ?? -1;
      const of = `of ${part.name} at ${Number((caution.size * 1e6).toPrecision(4))} µm`;
      const own = (key: string, name: string, value: number, unit: string) =>
        ofPart({ scene, path }, `betas[${at}].${key}`, {
          name,
          value,
          unit,
          kind: unit === "m" ? "particle size" : "plain",
        });
      const held = (): Step => {
        const bins = Array.from({ length: binCount }, (_, bin) => bin).filter(
          (bin) => (sizeEdges[bin] ?? 0) >= caution.size && (counts[bin] ?? 0) > 0,
        );
        const n = bins.map((bin) =>
          inWords("ISO 12103-1 A3 medium dust", {
            name: "test dust of one size",
            value: counts[bin] ?? 0,
            unit: "1/m3",
          }),
        );
        const leak = part.leak ?? 0;
        const E = bins.map((bin) =>
          inWords("from the betas, held at 0 where a size would gain particles", {
            name: "share of that size caught",
            value: (capture.efficiency.middle[bin] ?? 0) / (1 - leak),
            unit: "1",
            kind: "ratio",
          }),
        );
        return worked(formulas.betaHeld, { n, E }, { name: `beta held ${of}`, value: caution.held });
      };
      return [
        {
          group: GROUP,
          name: `size of the beta ${of}`,
          make: () => own("size", `size of the beta ${of}`, caution.size, "m"),
        },
        { group: GROUP, name: `beta stated ${of}`, make: () => own("beta", `beta stated ${of}`, caution.stated, "1") },
        { group: GROUP, name: `beta held ${of}`, make: held },
      ];
    });
  });
}
