import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { besselRatio } from "./besselRatio.mjs";

// Writes bessel-ratio.csv beside this file: `node references/fibre/generate.mjs`.

const values = ["1e-8", "1e-5", "1e-3", "1e-2", "0.03", "0.1", "0.2", "0.3", "0.5", "0.7", "0.8", "0.9"];
values.push("1", "1.2", "1.5", "2", "2.5", "3", "4", "5", "7", "8.9", "9", "9.1", "10", "15", "20", "30", "45", "60");

/**
 * One line of the table.
 * @param {string} x
 */
export function line(x) {
  return `${x},${besselRatio(x).toPrecision(17)}`;
}

const header = `# kind: independent arithmetic (checks the code, not the physics)
# source: K1(x)/K0(x) by power series in 120-digit decimal arithmetic, checked by the Wronskian; besselRatio.mjs beside this file
# status: computed
# obtained: 2026-11-25
# precision: 17 figures
# covers: nearly empty beds (small x) to dense ones (large x); both sides of x = 9, where the library narrows its steps
x,ratio
`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  writeFileSync(new URL("bessel-ratio.csv", import.meta.url), `${header}${values.map(line).join("\n")}\n`);
}
