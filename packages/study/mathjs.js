// What "#mathjs" is to a bundler: a default export like that of mathjs's single-file build, which Node takes, with only
// what the formulas of the workings are written with, so that nothing else of mathjs comes into a page.
import {
  absDependencies,
  addDependencies,
  create,
  divideDependencies,
  expDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  signDependencies,
  sqrtDependencies,
  subtractDependencies,
  unaryMinusDependencies,
  unitDependencies,
} from "mathjs";

export default {
  create: () =>
    create({
      absDependencies,
      addDependencies,
      divideDependencies,
      expDependencies,
      log10Dependencies,
      logDependencies,
      maxDependencies,
      minDependencies,
      multiplyDependencies,
      parseDependencies,
      piDependencies,
      powDependencies,
      signDependencies,
      sqrtDependencies,
      subtractDependencies,
      unaryMinusDependencies,
      unitDependencies,
    }),
};
