import { gaugeErrorOf } from "../../gauge/gaugeFacts.js";
import type { Instant } from "../../gauge/Instant.js";
import { usualNoise } from "../../gauge/noise.js";
import { FAR, type Weighing, weighings } from "../../gauge/weigh.js";
import * as formulas from "../formulas/gauge.js";
import { fuelDynamicViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { asked, fromSource, inWords, worked } from "../worked.js";
import { type FitScene, fitScene } from "./FitScene.js";
import { foundState } from "./fittedSteps.js";
import { number } from "./number.js";
import { timeStep } from "./readingSteps.js";
import { tableStep } from "./tableSteps.js";
import { toldWith } from "./toldWith.js";

const PRACTICE = "common practice, no source";
const share = (name: string, value: number) => ({ name, value, unit: "1", kind: "ratio" }) as const;

/** How far a reading may be off: gauge, demand and temperature together, scaled to how readings scatter. */
export function sigmaStep(fit: FitScene, at: number): Step {
  const instant = fit.instants[at] as Instant;
  const noted = instant.reading.load !== undefined || instant.reading.flow !== undefined;
  return worked(
    formulas.readingSigma,
    {
      c: scaleStep(fit),
      g: gaugeOf(fit, instant),
      P: perShare(fit, instant),
      n: fromSource(
        PRACTICE,
        share(noted ? "error of a demand that is noted" : "error of a demand that nobody noted", instant.noise.demand),
      ),
      u: viscosityOff(fit, instant),
    },
    { name: `standard deviation of reading ${instant.reading.row}` },
  );
}

/** What the gauge itself is taken to be off by. */
export function gaugeErrorStep({ facts }: Pick<FitScene, "facts">): Step {
  const { value, by } = gaugeErrorOf(facts);
  const shown = { name: "error of the gauge", value, unit: "Pa", kind: "pressure" } as const;
  return by === "stated" ? asked("gauge error", shown) : fromSource(PRACTICE, shown);
}

function gaugeOf(fit: FitScene, { reading }: Instant): Step {
  const g = gaugeErrorStep(fit);
  return fit.side === "delivery" && reading.vacuum !== undefined ? worked(formulas.twoGauges, { g }) : g;
}

/** Growth of what is read with demand, at the resistance the law of the last round has there. */
function perShare(fit: FitScene, instant: Instant): Step {
  const { before, best } = roundsOf(fit).at(-1) as Weighing;
  const last = fitScene(fit.given, { ...fit, weighed: before, fitted: best });
  const r = foundState(last).ratioAt(timeStep(last, instant));
  const at = (value: number) =>
    tableStep(
      fit,
      instant,
      inWords("a little beside the noted one", number("demand over the noted one", value)),
      r,
      "whole",
    );
  const s = inWords("the one less the other", number("difference of the demands", 0.1));
  return worked(formulas.pressureSlope, { a: at(1.05), b: at(0.95), s });
}

function viscosityOff({ given }: FitScene, { reading, temperature }: Instant): Step {
  const off = usualNoise.temperature[reading.temperature === undefined ? "taken" : "noted"];
  const at = (value: number, words: string) => {
    const T = inWords(words, { name: "temperature", value, unit: "K", kind: "temperature" });
    const mu = fuelDynamicViscosity(sceneOf(given.system, { temperature: value }));
    return toldWith(mu, { demand: mu, temperature: T, ratios: [] });
  };
  const words = reading.temperature === undefined ? "as the file states it" : "as noted";
  return worked(formulas.viscosityOff, {
    a: at(temperature + off, `${words}, and ${off} K more, by which it may be off: common practice, no source`),
    b: at(temperature, words),
  });
}

/** By how much readings scatter more than is usual, round by round. */
export function scaleStep(fit: FitScene): Step {
  return fit.step("scale", () => {
    const one = inWords("the usual scatter, in the first round", number("scatter over the usual one", 1));
    return roundsOf(fit).reduce((b, round) => scaledBy(fit, round, b), one);
  });
}

function scaledBy(fit: FitScene, { before, best }: Weighing, b: Step): Step {
  const own = fitScene(fit.given, { ...fit, weighed: before, fitted: best });
  const k = fromSource(PRACTICE, number("most that one reading counts", FAR));
  const h = own.instants.map(({ reading }, at) => {
    const law = best.model.shape.law === "none" ? "no growth" : `the ${best.model.shape.law} law`;
    const words = `what was reckoned less what was read, over the standard deviation it had in that round, by ${law}`;
    const m = inWords(words, number(`miss of reading ${reading.row}`, best.fit.misses[at] ?? Number.NaN));
    return worked(formulas.heldMiss, { k, m }, { name: `miss of reading ${reading.row}, held` });
  });
  const n = countStep(own);
  const g = inWords("counted", number("constants of the growth", best.model.growing));
  return worked(formulas.scatterScale, { b, w: priorWeight(fit), h, f: worked(formulas.freeReadings, { n, k: g }) });
}

/** Readings that the usual scatter counts as. */
export function priorWeight({ weighed, facts }: FitScene): Step {
  const words =
    facts.gaugeError === null ? "readings that the usual scatter counts as" : "readings that a stated error counts as";
  return fromSource(PRACTICE, number(words, weighed.prior.weight));
}

/** How many readings a fit has. */
export function countStep(fit: FitScene): Step {
  return inWords("counted", number("readings", fit.instants.length));
}

function roundsOf(fit: FitScene): readonly Weighing[] {
  return fit.kept("rounds", () => {
    const { run, zeroSpread, prior } = fit.weighed;
    return weighings(run, zeroSpread, prior.weight).rounds;
  });
}
