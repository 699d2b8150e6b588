import fc from "fast-check";
import { expect, test } from "vitest";
import { soundnessFaults } from "../support/soundness.js";
import { aSystem } from "../support/systems.js";
import { soak } from "./Soak.js";

const BLOCK = 100;
const SYSTEMS = Number(process.env.SOAK_SYSTEMS ?? 1_000_000);
const SEED = Number(process.env.SOAK_SEED ?? 1);

test(`check and life of ${SYSTEMS} random systems: no exception, no NaN, balances and inverses close`, async () => {
  const failures = await soak("systems", Math.ceil(SYSTEMS / BLOCK), (block) =>
    fc
      .sample(aSystem, { seed: SEED * 1_000_003 + block, numRuns: BLOCK })
      .flatMap((system, at) => soundnessFaults(system).map((fault) => `block ${block} system ${at}: ${fault}`)),
  );
  expect(failures).toEqual([]);
});
