// npm run bench: cost of a life over the number of elements in series, and of draws over their number.
import { life } from "@thirstline/core";
import { readSystem } from "@thirstline/spec";
import { lifeDraws } from "@thirstline/study";
import { slopeOf } from "../../core/bench/slopes.mjs";
import { factsOf } from "../dist/life/factsOf.js";
import { fiveYears } from "./fiveYears.mjs";

/** @param {number} count */
function inSeries(count) {
  const part = (/** @type {number} */ at) =>
    `  - filter: { name: f${at}, style: cartridge, area: 1 m2, betas: [{ size: 10 um, beta: 2 }, { size: 25 um, beta: 75 }], flow test: [{ drop: 0.1 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }], capacity test: { soil: ${90 + at} g, rise: 35 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 } }`;
  const read = readSystem(
    [
      "format: thirstline/1",
      "name: growth",
      "fuel: { kind: diesel, grade: summer, temperature: 15 degC }",
      "demand: { burn: 60 L/h, return: 60 L/h }",
      "tank: { full depth: 1 m, low depth: 0.5 m, vent: open, volume: 500 L }",
      "suction:",
      ...Array.from({ length: count }, (_, at) => part(at)),
      "pump: { kind: fixed, flow: 500 L/h, relief: 80 kPa, relief to: inlet }",
      "limits: { vacuum clean: 20 kPa, vacuum at change: 40 kPa }",
      "duty: { hours a day: 8, days a year: 250 }",
      "delivered fuel: { code: 17/15/12 }",
    ].join("\n"),
    { file: "growth.yaml" },
  );
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("; "));
  const facts = factsOf(read.system);
  if (!("given" in facts)) throw new Error("the bench's system cannot be followed");
  return facts.given;
}

console.log("growth: slope of log time over log size");
slopeOf("life of n elements in series", [4, 8, 16, 32], (size) => {
  const given = inSeries(size);
  return () => life(given);
});
slopeOf("n draws of a life", [16, 32, 64, 128], (size) => {
  const system = fiveYears({ uneven: false });
  return () => lifeDraws(system, { from: 0, to: size, seed: 1 });
});
