// npm run bench: every bench after the other, in one run on one machine. `--readme` also writes what they printed into README.
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const benches = [
  "packages/core/bench/bench.mjs",
  "packages/core/bench/growth.bench.mjs",
  "packages/study/bench/life.bench.mjs",
  "packages/study/bench/growth.bench.mjs",
];

const printed = benches.map((bench) => {
  const { status, stdout } = spawnSync(process.execPath, ["--expose-gc", bench], {
    cwd: root,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  process.stdout.write(stdout);
  if (status !== 0) process.exit(status ?? 1);
  return stdout.trim();
});

if (process.argv.includes("--readme")) {
  const readme = `${root}README.md`;
  const text = readFileSync(readme, "utf8");
  const begin = "<!-- speed: written by `npm run bench -- --readme`, not by hand -->\n";
  const end = "<!-- /speed -->";
  const from = text.indexOf(begin);
  const to = text.indexOf(end);
  if (from < 0 || to < from) throw new Error("README has lost the marks of its speed table");
  const model = (cpus()[0]?.model ?? "a processor of no name").replace(/\((R|TM)\)/g, "");
  const head = `Measured ${new Date().toISOString().slice(0, 10)} on ${cpus().length} cores (${model}).`;
  const table = `${begin}${head}\n\n\`\`\`text\n${printed.join("\n\n")}\n\`\`\`\n`;
  writeFileSync(readme, text.slice(0, from) + table + text.slice(to));
}
