// Checks the demonstration system on the command line, then serves the page until interrupted.
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { createServer } from "vite";

/** @param {string} path */
const file = (path) => fileURLToPath(new URL(path, import.meta.url));

const cli = [file("../packages/cli/bin/thirstline.js"), "check", file("../packages/spec/demo/heron.yaml")];
const { status } = spawnSync(process.execPath, cli, { stdio: ["ignore", "inherit", "inherit"] });

// Any verdict is an answer; only input at fault, or no answer at all, is a reason to stop.
if (status === null || status === 2) process.exit(status ?? 1);

const server = await createServer({ root: file(".") });
await server.listen();
server.printUrls();
