import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const readme = fileURLToPath(new URL("../../README.md", import.meta.url));

/**
 * Writes a text that is measured, not written by hand, between README's marks for it.
 *
 * @param {"accuracy" | "speed"} name of the marks
 * @param {string} text ends with a line's end
 */
export function intoReadme(name, text) {
  const whole = readFileSync(readme, "utf8");
  const from = new RegExp(`<!-- ${name}: written by .*, not by hand -->\n`).exec(whole);
  const to = whole.indexOf(`<!-- /${name} -->`);
  if (from === null || to < from.index) throw new Error(`README has lost the marks of its ${name} table`);
  writeFileSync(readme, whole.slice(0, from.index + from[0].length) + text + whole.slice(to));
}
