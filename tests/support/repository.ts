import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Text of a file of the repository, named from its root. */
export const read = (file: string): string => readFileSync(join(root, file), "utf8");

/** Names of the folders in a folder of the repository. */
export function foldersIn(folder: string): string[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
}

/** What is published and what the page is made of, without tests, and the manifests beside it; by path from the root. */
export function sources(): Map<string, string> {
  const homes = [...foldersIn("packages").map((name) => `packages/${name}`), "playground"];
  const files = homes.flatMap((home) => {
    const inside = readdirSync(join(root, home, "src"), { recursive: true, encoding: "utf8" });
    const own = inside.filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"));
    return [`${home}/package.json`, ...own.map((file) => `${home}/src/${file}`)];
  });
  return new Map(files.map((file) => [file, read(file)]));
}
