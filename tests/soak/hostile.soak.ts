import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { fragmentOf } from "../../playground/src/file/link.js";
import { type Draw, drawFrom, spoilt, spoiltBytes } from "../support/hostile.js";
import { catalogueFaults, linkFaults, slowest, systemFaults } from "../support/hostileFaults.js";
import { soak } from "./Soak.js";

const BLOCK = 100;
const INPUTS = Number(process.env.SOAK_HOSTILE ?? 10_000);
const SEED = Number(process.env.SOAK_SEED ?? 1);

const systems = textsIn("packages/spec/demo", ".yaml").concat(textsIn("tests/journeys/spec/bad", ".yaml"));
const catalogues = textsIn("packages/spec/demo", ".csv").concat(textsIn("packages/spec/demo/yard", ".csv"));

test(`${INPUTS} spoilt system files, catalogues and links: an answer or one clear list of faults, soon`, async () => {
  const links = await Promise.all(textsIn("packages/spec/demo", ".yaml").map(linkOf));
  // The first readings also load what is needed only then.
  for (const text of systems.slice(0, 20)) systemFaults(text);
  for (const text of catalogues) catalogueFaults(text);
  const failures = await soak("hostile", Math.ceil(INPUTS / BLOCK), async (block) => {
    const draw = drawFrom(SEED * 1_000_003 + block);
    const found: string[] = [];
    for (let at = 0; at < BLOCK; at++) {
      const faults = await one(draw, at, links);
      found.push(...faults.map((fault) => `block ${block} input ${at}: ${fault}`));
    }
    return found;
  });
  console.log(`slowest: ${slowest.what}, ${slowest.milliseconds.toFixed(0)} ms`);
  expect(failures).toEqual([]);
});

function one(draw: Draw, at: number, links: readonly string[]): string[] | Promise<string[]> {
  const pick = (from: readonly string[]) => from[Math.floor(draw() * from.length)] as string;
  if (at % 5 === 3)
    return catalogueFaults(draw() < 0.5 ? spoilt(pick(catalogues), draw) : spoiltBytes(pick(catalogues), draw));
  if (at % 5 === 4) return linkFaults(spoilt(pick(links), draw));
  return systemFaults(draw() < 0.5 ? spoilt(pick(systems), draw) : spoiltBytes(pick(systems), draw));
}

async function linkOf(text: string): Promise<string> {
  try {
    return await fragmentOf(text);
  } catch {
    return "#s="; // too large for a link
  }
}

function textsIn(folder: string, ending: string): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8"));
}
