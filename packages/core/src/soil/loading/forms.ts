import { closeBracket } from "../../closeBracket.js";
import type { LoadingLaw, LoadingLawName, SingleLawName } from "./LoadingLawKinds.js";
import { cake, complete, intermediate, type SingleLaw, standard } from "./single.js";

/** What can be asked of a law at once; see `SingleLaw` for each. */
export interface LawForm {
  ratio(law: LoadingLaw, load: number): number;
  slope(law: LoadingLaw, load: number): number;
  effort(law: LoadingLaw, load: number): number;
  filtrate(law: LoadingLaw, effort: number): number;
  load(law: LoadingLaw, ratio: number): number;
  plugsAt(law: LoadingLaw): number;
}

/** Every law of one constant by name. */
export const singles: Readonly<Record<SingleLawName, SingleLaw>> = { cake, intermediate, standard, complete };

/** Every law's form by name. */
export const forms: Readonly<Record<LoadingLawName, LawForm>> = {
  cake: alone("cake"),
  intermediate: alone("intermediate"),
  standard: alone("standard"),
  complete: alone("complete"),
  "cake-complete": behind("cake", "complete"),
  "cake-intermediate": behind("cake", "intermediate"),
  "complete-standard": behind("standard", "complete"),
  "intermediate-standard": behind("standard", "intermediate"),
  "cake-standard": onTop(),
};

function alone(name: SingleLawName): LawForm {
  const one = singles[name];
  return {
    ratio: (law, load) => one.ratio(law[name], load),
    slope: (law, load) => one.slope(law[name], load),
    effort: (law, load) => one.effort(law[name], load),
    filtrate: (law, effort) => one.filtrate(law[name], effort),
    load: (law, ratio) => one.load(law[name], ratio),
    plugsAt: (law) => one.plugsAt(law[name]),
  };
}

/**
 * A cake on, or narrowing in, the pores that are still open while others close. What passes the open ones goes through
 * them as if they were the whole medium, so the closing law's effort is the inner law's load: all five published closed
 * forms of this kind come from these lines, and none subtracts nearly equal numbers when a constant is small.
 */
function behind(innerName: "cake" | "standard", outerName: "intermediate" | "complete"): LawForm {
  const inner = singles[innerName];
  const outer = singles[outerName];
  const form: LawForm = {
    ratio: (law, load) => {
      const through = outer.effort(law[outerName], load);
      return inner.ratio(law[innerName], through) * outer.ratio(law[outerName], load);
    },
    slope: (law, load) => {
      const through = outer.effort(law[outerName], load);
      const closing = outer.ratio(law[outerName], load);
      return (
        inner.slope(law[innerName], through) * closing * closing +
        inner.ratio(law[innerName], through) * outer.slope(law[outerName], load)
      );
    },
    effort: (law, load) => inner.effort(law[innerName], outer.effort(law[outerName], load)),
    filtrate: (law, effort) => outer.filtrate(law[outerName], inner.filtrate(law[innerName], effort)),
    load: (law, ratio) => {
      const most = Math.min(inner.load(law[innerName], ratio), outer.load(law[outerName], ratio));
      return loadWhere(form, law, ratio, most);
    },
    plugsAt: (law) => {
      const innerEnd = inner.plugsAt(law[innerName]);
      if (law[outerName] === 0) return innerEnd;
      return innerEnd === Infinity ? outer.plugsAt(law[outerName]) : outer.filtrate(law[outerName], innerEnd);
    },
  };
  return form;
}

/** A cake on a medium whose pores narrow: the resistances add up. */
function onTop(): LawForm {
  const form: LawForm = {
    ratio: (law, load) => cake.ratio(law.cake, load) - 1 + standard.ratio(law.standard, load),
    slope: (law, load) => cake.slope(law.cake, load) + standard.slope(law.standard, load),
    effort: (law, load) => cake.effort(law.cake, load) - load + standard.effort(law.standard, load),
    filtrate: (law, effort) => {
      const most = Math.min(cake.filtrate(law.cake, effort), standard.filtrate(law.standard, effort));
      return rootOf((load) => form.effort(law, load), effort, most);
    },
    load: (law, ratio) =>
      loadWhere(form, law, ratio, Math.min(cake.load(law.cake, ratio), standard.load(law.standard, ratio))),
    plugsAt: (law) => standard.plugsAt(law.standard),
  };
  return form;
}

/** `most` is where either law alone would be: both together get there sooner. */
function loadWhere(form: LawForm, law: LoadingLaw, ratio: number, most: number): number {
  if (most === 0 || most === Infinity) return most;
  return rootOf((load) => form.ratio(law, load) - 1, ratio - 1, most);
}

/** The load below `most` at which a rising value meets a target. */
function rootOf(value: (load: number) => number, target: number, most: number): number {
  if (target === 0) return 0;
  const left = (load: number) => target - value(load);
  const last = left(most);
  if (last >= 0) return most;
  return closeBracket(left, { at: 0, value: target }, { at: most, value: last }, 2 ** -52).low;
}
