import { slopesOf } from "../../gauge/fit/slopesOf.js";
import * as formulas from "../formulas/gauge.js";
import type { Check, Step } from "../Step.js";
import { fromSource, inWords, searched, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { missStep } from "./missSteps.js";
import { number } from "./number.js";
import { StateSteps } from "./StateSteps.js";

/** What a search of few moves may leave to win, in squared standard deviations: half a standard error of what is fitted. */
const LEFT = 0.25;
/** Slopes are taken over moves of what is fitted that are small against 1, since all of it is counted in deviations and logarithms. */
const SIZE = 1e6;

/** A law's figures, what is fitted being shown with all that proves it. */
export function fittedState(fit: FitScene): StateSteps {
  return fit.kept("state", () => new StateSteps(fit, (place) => parameterStep(fit, place)));
}

/** The same, what is fitted being told as it was found. */
export function foundState(fit: FitScene): StateSteps {
  return fit.kept("found state", () => new StateSteps(fit, (place) => found(fit, place)));
}

function found(fit: FitScene, place: number): Step {
  const value = fit.fitted.fit.parameters[place] ?? Number.NaN;
  return fit.step(`found ${place}`, () => inWords("as found", number(fit.names[place] ?? "", value)));
}

/** Something fitted, with what proves it: nowhere near is the sum of squared misses less. */
function parameterStep(fit: FitScene, place: number): Step {
  return fit.step(`parameter ${place}`, () => {
    const value = fit.fitted.fit.parameters[place] ?? Number.NaN;
    const words =
      "searched together with all else that is fitted, by Levenberg and Marquardt's method, so that the squared misses of all " +
      "readings, each over its standard deviation, come to the least";
    return searched(words, number(fit.names[place] ?? "", value), checks(fit, place, value));
  });
}

function checks(fit: FitScene, place: number, value: number): Check[] {
  const { fit: own, model } = fit.fitted;
  const { lower = [], upper = [], misses } = model.problem(fit.weighed.sigmas, [own.parameters]);
  const error = Math.sqrt(own.covariance[place]?.[place] ?? 0);
  const least = sumStep(fit);
  const moved = (by: number) => {
    const parameters = own.parameters.map((one, at) => (at === place ? one + by : one));
    const sum = misses(parameters).reduce((total, one) => total + one * one, 0);
    return inWords("every miss worked out anew", number("sum of squared misses there", sum));
  };
  const inside = value > (lower[place] ?? -Infinity) && value < (upper[place] ?? Infinity);
  const sides = [error, -error].flatMap((by): Check[] => {
    const next = value + by;
    if (!(error > 0) || next < (lower[place] ?? -Infinity) || next > (upper[place] ?? Infinity)) return [];
    const words = `with ${by > 0 ? "more" : "less"} of it by one standard error, ${error.toPrecision(3)}, the sum is no less`;
    return [{ words, left: least, relation: "<=", right: moved(by) }];
  });
  return inside ? [slopeCheck(fit, place), ...sides] : sides;
}

/** The slope of the sum, which is next to nothing where the sum is least. */
function slopeCheck(fit: FitScene, place: number): Check {
  const { fit: own, model } = fit.fitted;
  const m = allMisses(fit);
  const { misses } = model.problem(fit.weighed.sigmas, [own.parameters]);
  const slopes = fit.kept("slopes", () =>
    slopesOf(
      misses,
      own.parameters,
      own.parameters.map(() => SIZE),
    ));
  const q = slopes.map((row, at) =>
    inWords("by a central difference", number(`slope of miss ${at + 1}`, row[place] ?? 0)),
  );
  const left = worked(formulas.normalEquation, { m, q });
  const right = fromSource("common practice, no source", number("what a search of few moves may leave", LEFT));
  return {
    words: "the sum of squared misses has next to no slope here: moving it alone wins next to nothing",
    left,
    relation: "<=",
    right,
  };
}

/** What the fit makes least, at what is reported. */
function sumStep(fit: FitScene): Step {
  return fit.step("sum", () => {
    const state = foundState(fit);
    return worked(formulas.sumOfSquares, { m: readingMisses(fit), d: state.parameter(0), z: state.parameter(1) });
  });
}

/** Misses of the readings, each worked out. */
export function readingMisses(fit: FitScene): readonly Step[] {
  return fit.kept("misses", () => fit.instants.map((_, at) => missStep(foundState(fit), at)));
}

function allMisses(fit: FitScene): readonly Step[] {
  const state = foundState(fit);
  return [...readingMisses(fit), state.parameter(0), state.parameter(1)];
}
