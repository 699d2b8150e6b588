// npm run bench: every bench after the other, in one run on one machine. `--readme` also writes what they printed into README.
import { spawnSync } from "node:child_process";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { intoReadme } from "./intoReadme.mjs";

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
  const model = (cpus()[0]?.model ?? "a processor of no name").replace(/\((R|TM)\)/g, "");
  const head = `Measured ${new Date().toISOString().slice(0, 10)} on ${cpus().length} cores (${model}).`;
  intoReadme("speed", `${head}\n\n\`\`\`text\n${printed.join("\n\n")}\n\`\`\`\n`);
}
