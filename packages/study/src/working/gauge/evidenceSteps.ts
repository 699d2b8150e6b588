import { constantsOf } from "../../gauge/fitAll.js";
import type { SideFit, SoilFit } from "../../gauge/SideFit.js";
import * as formulas from "../formulas/gauge.js";
import type { Check, Step } from "../Step.js";
import { fromSource, inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { foundState, readingMisses } from "./fittedSteps.js";
import { number } from "./number.js";
import { countStep, priorWeight, scaleStep } from "./scatterSteps.js";

/** Akaike's weight of one law among all that were fitted. */
export function weightStep(law: number, laws: SoilFit["laws"], sceneOf: (fitted: SoilFit["best"]) => FitScene): Step {
  const scenes = laws.map(({ fitted }) => sceneOf(fitted));
  const best = scenes[0] as FitScene;
  const likelihoods = scenes.map((fit) =>
    worked(
      formulas.lawLikelihood,
      { a: devianceStep(best), b: costStep(best), D: devianceStep(fit), C: costStep(fit) },
      { name: `likelihood of ${fit.fitted.model.shape.law} over the best law's` },
    ),
  );
  return worked(formulas.akaikeWeight, { x: likelihoods[law] as Step, y: likelihoods });
}

/** Deviance of a law: how badly it explains the readings. */
function devianceStep(fit: FitScene): Step {
  return fit.step("deviance", () => {
    const state = foundState(fit);
    return worked(
      formulas.deviance,
      {
        n: countStep(fit),
        w: priorWeight(fit),
        c: inWords(
          "the same for all laws; the scatter shows how",
          number("scatter over the usual one", scaleStep(fit).value),
        ),
        S: worked(formulas.readingSquares, { m: readingMisses(fit) }),
        d: state.parameter(0),
        z: state.parameter(1),
      },
      { name: `deviance of ${fit.fitted.model.shape.law}` },
    );
  });
}

function costStep(fit: FitScene): Step {
  const { model } = fit.fitted;
  const words = model.shape.mix === null ? "counted" : "counted, the mix as one of them";
  const k = inWords(words, number("constants", constantsOf(model)));
  return worked(formulas.akaikeCorrection, { k, n: countStep(fit), w: priorWeight(fit) });
}

/** Why something besides soil was taken for more than scatter. */
export function evidenceCheck(fit: FitScene, { explained }: SideFit, place: number): Check[] {
  const evidence = explained.evidence[place];
  if (!evidence) return [];
  const { before, after, places, chance, free, deviations } = evidence;
  const deviance = (name: string, value: number) =>
    inWords("as the fits had it when it was found", number(name, value));
  const q = worked(formulas.chanceShare, {
    c: fromSource("common practice, no source", {
      name: "chance allowed of a false alarm",
      value: chance,
      unit: "1",
      kind: "ratio",
    }),
    k: inWords("counted", number("places and kinds looked at", places)),
  });
  const f = inWords(
    "readings, and those that the usual scatter counts as, less what is fitted",
    number("degrees of freedom", free),
  );
  const words = "so many standard errors lie beyond that chance, half of it on either side, in Student's distribution";
  const right = worked(formulas.evidenceNeeded, {
    n: countStep(fit),
    w: priorWeight(fit),
    t: inWords(words, number("standard errors", deviations), [q, f]),
    f,
  });
  const won = worked(formulas.evidenceWon, {
    a: deviance("least deviance without it", before),
    b: deviance("deviance with it", after),
  });
  return [{ words: "it wins more than scatter would in so many places", left: won, relation: ">=", right }];
}
