import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

/** Every package a source pulls in when it runs; what is imported as a type only leaves no trace. */
function packagesOf(file: URL, seen = new Set<string>()): string[] {
  if (seen.has(file.href)) return [];
  seen.add(file.href);
  const statements = readFileSync(file, "utf8").matchAll(/^(?:import|export) (?!type\b)[^;]*?from "([^"]+)";/gm);
  return [...statements].flatMap(([, name = ""]) =>
    name.startsWith(".") ? packagesOf(new URL(name.replace(/\.js$/, ".ts"), file), seen) : [name],
  );
}

test("the entry system.ts runs with the core alone: a page can take a ready-made system without zod, yaml and mathjs", () => {
  expect(new Set(packagesOf(new URL("system.ts", import.meta.url)))).toEqual(new Set(["@thirstline/core"]));
  expect(packagesOf(new URL("index.ts", import.meta.url))).toEqual(expect.arrayContaining(["zod", "yaml", "#mathjs"]));
});
