import { readFileSync } from "node:fs";
import { readReadings } from "@thirstline/spec";
import type { CatalogueElement, System } from "@thirstline/spec/system";
import { asFitted, card, fittedFrom, gauge, remedy } from "@thirstline/study";
import {
  type Asked,
  type Choice,
  cardChoice,
  choiceWorking,
  figuresOf,
  fleetChoice,
  fleetFigures,
  fleetWorking,
  gaugeChoice,
  gaugeFigures,
  gaugeWorking,
  remedyChoice,
  type Step,
  sizeChoice,
  swapChoice,
  workingOf,
} from "@thirstline/study/working";
import { demoElements, demoSystem, sized } from "../choose/arrangements.js";
import * as benches from "./benches.js";
import { fullYard } from "./fullYard.js";
import { systemsIn } from "./systems.js";

// Questions whose workings together meet nearly every kind of step there is, each answered in a fraction of a second.

const catalogue = demoElements("elements.csv");
const money = { labourRate: 60, stoppage: 2000 };

/** A question, and every step that its figures end in. */
export interface Scenario {
  readonly name: string;
  readonly steps: () => readonly Step[];
}

const stepOf = (working: { readonly step: Step } | null): Step[] => (working ? [working.step] : []);

/** Every figure of check and curve; of life too where that is asked for. */
function figures(system: System, { asked = {}, life = false }: { asked?: Asked; life?: boolean }): Step[] {
  return figuresOf(system, asked).flatMap(({ name, step }) =>
    step ? [step] : life ? stepOf(workingOf(system, name, asked)) : [],
  );
}

// Made anew for each question: steps are kept with the system they were made of, and a test must make its own.
const heron = () => demoSystem("heron");

const systems: readonly Scenario[] = [
  { name: "heron", steps: () => figures(heron(), { life: true }) },
  {
    name: "heron-asked",
    steps: () =>
      figures(heron(), {
        asked: { temperature: 278.15, demand: 8e-5, at: 5e-5, to: 2e-4, points: 5, moment: 2, draws: 4, seed: 3 },
      }),
  },
  ...["lorry", "pickup-staged", "generator-soiled", "workboat-winter-petrol"].map((name) => ({
    name,
    steps: () => figures(demoSystem(name), { life: true }),
  })),
  ...["crane-narrow-hose", "dewatering-paper", "dewatering"].map((name) => ({
    name,
    steps: () => figures(demoSystem(name), {}),
  })),
  ...systemsIn("files").map(({ name, system }) => ({
    name: name.replace(".yaml", ""),
    steps: () => figures(structuredClone(system), { life: name === "spread.yaml", asked: { draws: 4 } }),
  })),
];

/** Every figure that a choice has beside those of check and life. */
function ownFigures(choice: Choice): Step[] {
  return [...choice.variants].flatMap(([of, { own }]) =>
    own.flatMap(({ name }) => stepOf(choiceWorking(choice, { of, figure: name, asked: {} }))),
  );
}

function readings(file: string) {
  const read = readReadings(readFileSync(new URL(`../../../packages/spec/demo/readings/${file}`, import.meta.url)), {
    file,
  });
  if ("faults" in read) throw new Error(`${file} cannot be read`);
  return read.readings;
}

const choices: readonly Scenario[] = [
  ...["heron", "pickup-staged", "workboat"].map((name) => ({
    name: `card-${name}`,
    steps: () => {
      const system = demoSystem(name);
      return ownFigures(cardChoice(system, card(system)));
    },
  })),
  {
    name: "remedy",
    steps: () => {
      const system = demoSystem("pickup-staged");
      const costs = { "wider bore": 40, "warmer fuel": 300, "lower pump": 90 };
      return ownFigures(remedyChoice(system, remedy(system, { costs }), { costs }));
    },
  },
  {
    name: "swap",
    steps: () => {
      const at = "fine filter";
      const system = heron();
      const element = demoElements("elements/p10-larger-body.yaml")[0] as CatalogueElement;
      const options = {
        ...money,
        draws: 4,
        fitted: fittedFrom(asFitted(system, at).filter, catalogue),
        rating: { beta: 200, size: 4e-6 },
      };
      return ownFigures(swapChoice(system, { at, with: element }, options));
    },
  },
  {
    name: "size",
    steps: () => {
      const system = demoSystem("pickup-single");
      const elements = catalogue.filter((_, at) => at % 5 === 0);
      const options = {
        ...money,
        interval: 3600 * 100,
        rating: { beta: 1.5, size: 30e-6 },
        bores: [0.008, 0.012],
        parallel: 2,
        keep: 2,
      };
      return ownFigures(sizeChoice(system, elements, sized(system, elements, options), options));
    },
  },
  {
    name: "fleet",
    steps: () => {
      const choice = fleetChoice(...fullYard());
      return choice.members.names.flatMap((of) =>
        fleetFigures(choice, of).flatMap((figure) => stepOf(fleetWorking(choice, { of, figure, asked: {} }))),
      );
    },
  },
  ...["air", "high-when-new", "jump", "loading", "wax"].map((name) => ({
    name: `gauge-${name}`,
    steps: () => {
      const given = readings(`heron-${name}.csv`);
      const system = heron();
      const choice = gaugeChoice(system, given, gauge(system, given));
      return choice.members.names.flatMap((of) =>
        gaugeFigures(choice, of).flatMap((figure) => stepOf(gaugeWorking(choice, { of, figure, asked: {} }))),
      );
    },
  })),
];

/** Figures in which nothing of the path is met. */
const OF_FUEL = ["fuel density", "density at 15 °C", "fuel viscosity", "vapour pressure", "air freed under suction"];

const { everyPart, nested, twins, idle, valved, fedBackward, fuels, pumps, lives } = benches;
const several: Readonly<Record<string, readonly (readonly [System, Asked?])[]>> = {
  "every-part": [[everyPart]],
  banks: [[nested], [twins], [idle], [idle, { at: 0 }]],
  "fed-backward": [[fedBackward], [valved], [valved, { at: 0 }]],
  pumps: Object.values(pumps).map((system) => [system]),
};

const small: readonly Scenario[] = [
  {
    name: "fuels",
    steps: () =>
      Object.values(fuels).flatMap((system) => {
        const own = structuredClone(system);
        return OF_FUEL.flatMap((figure) => stepOf(workingOf(own, figure)));
      }),
  },
  ...Object.entries(several).map(([name, some]) => ({
    name,
    steps: () => some.flatMap(([system, asked = {}]) => figures(structuredClone(system), { asked })),
  })),
  ...Object.entries(lives).map(([name, system]) => ({
    name: `life-${name.replaceAll(/[^a-z]+/g, "-")}`,
    steps: () => figures(structuredClone(system), { life: true, asked: { draws: 4 } }),
  })),
];

export const toldScenarios: readonly Scenario[] = [...systems, ...choices, ...small];
