// Puts numbered records into a log, one after another, and says each on standard output once it is in; for as long as it lives.
import { writeSync } from "node:fs";
import { appendToLog } from "../../packages/cli/dist/log/appendToLog.js";
import { diskFiles } from "../../packages/cli/dist/log/diskFiles.js";

const [, , path = "", writer = ""] = process.argv;
writeSync(1, "ready\n");
for (let at = 0; ; at++) {
  const done = await appendToLog(path, diskFiles, () => [
    `"${writer}, with a name in quotes",2026-11-25,${at},reading`,
  ]);
  if (!("written" in done)) throw new Error(done.refused);
  writeSync(1, `${at}\n`);
}
