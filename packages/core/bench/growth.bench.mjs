// npm run bench: cost of a drop over the number of parts in series, and of branches side by side.
import { filter, line, parallel, series, solve } from "@thirstline/core";
import { fuel } from "./circuit.mjs";
import { slopeOf } from "./slopes.mjs";

/** @param {number} at */
const pipe = (at) => line({ length: 1 + (at % 7), bore: 0.008 + (at % 5) * 0.001, roughness: 1.5e-6 });
/** @param {number} at */
const element = (at) => filter({ clean: { drop: 1500 + 100 * (at % 9), flow: 5e-5, dynamicViscosity: 0.0025 } });

/** Many at once, so that the clock's own grain does not count. @param {() => unknown} call */
const often = (call) => () => {
  for (let at = 0; at < 50; at++) call();
};

const sizes = [32, 64, 128, 256, 512];
console.log("growth: slope of log time over log size");
slopeOf("drop of n lines in series", sizes, (size) => {
  const solved = solve(series(...Array.from({ length: size }, (_, at) => pipe(at))), fuel);
  return often(() => solved.drop(9e-5));
});
slopeOf("drop of n branches", sizes, (size) => {
  const solved = solve(parallel(...Array.from({ length: size }, (_, at) => series(pipe(at), element(at)))), fuel);
  return often(() => solved.drop(2e-5 * size));
});
slopeOf("flow of n branches", sizes, (size) => {
  const solved = solve(parallel(...Array.from({ length: size }, (_, at) => series(pipe(at), element(at)))), fuel);
  const drop = solved.drop(2e-5 * size);
  return often(() => solved.flow(drop));
});
