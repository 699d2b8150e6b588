import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { friction } from "./friction.mjs";

// Writes colebrook-17.csv beside this file: `node references/colebrook/generate.mjs`.

/** Seven steps a decade from Re 4000, where the equation begins, to 1e8, where the Moody chart ends. */
const reynolds = ["4e3", "5e3", "7e3", ...[4, 5, 6, 7].flatMap(decade), "1e8"];
const roughness = ["0", "1e-6", "1e-5", "1e-4", "5e-4", "1e-3", "5e-3", "1e-2", "2e-2", "5e-2"];

/** @param {number} power */
function decade(power) {
  return ["1", "1.5", "2", "3", "4", "5", "7"].map((digits) => `${digits}e${power}`);
}

/**
 * One line of the table.
 * @param {string} re
 * @param {string} rough
 */
export function line(re, rough) {
  return `${re},${rough},${friction(re, rough).toPrecision(17)}`;
}

const header = `# kind: independent arithmetic (checks the code, not the physics)
# source: Colebrook-White equation, C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; constants 3.7 and 2.51 as printed in D. Clamond, Ind. Eng. Chem. Res. 48 (2009) 3665, eq. 1; 64-digit decimal arithmetic, friction.mjs beside this file
# status: computed
# obtained: 2026-11-25
# precision: 17 figures
# covers: first turbulent Reynolds number to fully rough flow; smooth wall to the roughest of the Moody chart
reynolds,relative_roughness,friction_factor
`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const lines = reynolds.flatMap((re) => roughness.map((rough) => line(re, rough)));
  writeFileSync(new URL("colebrook-17.csv", import.meta.url), `${header}${lines.join("\n")}\n`);
}
