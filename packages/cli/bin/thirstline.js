#!/usr/bin/env node
import { main } from "../dist/main.js";

const { stdout, stderr, env } = process;
process.exitCode = await main(process.argv.slice(2), {
  get stdin() {
    return process.stdin; // opened only by who reads it
  },
  stdout,
  stderr,
  cwd: process.cwd(),
  columns: stdout.columns,
  isTerminal: stdout.isTTY === true,
  errorIsTerminal: stderr.isTTY === true,
  environment: env,
});
