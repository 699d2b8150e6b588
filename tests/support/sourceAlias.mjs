import { fileURLToPath } from "node:url";

/** @param {string} file */
const source = (file) => fileURLToPath(new URL(`../../packages/${file}`, import.meta.url));

/** Points our packages at their sources, so that neither tests nor the page need a build first. */
export const sourceAlias = [
  { find: /^@thirstline\/(core|spec|study)$/, replacement: source("$1/src/index.ts") },
  { find: /^@thirstline\/study\/working$/, replacement: source("study/src/working/index.ts") },
  { find: /^@thirstline\/spec\/system$/, replacement: source("spec/src/system.ts") },
];
