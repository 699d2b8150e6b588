import { type LoadingLaw, type LoadingLawName, type SingleLawName, singleLawNames } from "./LoadingLawKinds.js";

/** A law with each constant there is: those it has none of are 0. Not checked; `loadingLaw` checks. */
export function lawOfConstants(name: LoadingLawName, constantOf: (one: SingleLawName) => number): LoadingLaw {
  const constants = Object.fromEntries(singleLawNames.map((one) => [one, constantOf(one)]));
  return { name, ...(constants as Record<SingleLawName, number>) };
}
