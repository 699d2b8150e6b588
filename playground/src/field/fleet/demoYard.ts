import type { YardFile } from "./YardFile.js";
import { yardPaths } from "./yardPaths.js";

/** The day the invented yard is looked at: two days after the last row of its log. */
export const DEMO_DAY = "2026-11-25";

/** The invented yard's files. */
export async function demoYard(): Promise<readonly YardFile[]> {
  const { yard } = await import("virtual:field");
  const paths = yardPaths(yard.map(({ path }) => path));
  return yard.map(({ text }, at) => ({ path: paths[at] ?? "", bytes: new TextEncoder().encode(text) }));
}
