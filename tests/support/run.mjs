import { spawn } from "node:child_process";

/**
 * Runs a command line, to be called from a package script, whose path to the installed tools it inherits. Says how it
 * went in one line; what the command wrote is shown only when it fails.
 *
 * @param {string} name what the line calls it
 * @param {string} command
 * @param {{ show?: boolean, quiet?: boolean, cwd?: string }} [options] show: pass its output on as it comes; quiet: no
 *   line for a success; cwd: the folder it runs in
 * @returns {Promise<boolean>} whether it succeeded
 */
export function run(name, command, { show = false, quiet = false, cwd } = {}) {
  const begun = performance.now();
  return new Promise((resolve) => {
    const output = show ? "inherit" : "pipe";
    const child = spawn(command, { shell: true, cwd, stdio: ["ignore", output, output] });
    let written = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding("utf8").on("data", (text) => {
        written += text;
      });
    }
    child.on("close", (code) => {
      const seconds = ((performance.now() - begun) / 1000).toFixed(1);
      if (code !== 0) process.stdout.write(written);
      if (code !== 0 || !quiet) process.stdout.write(`${code === 0 ? "ok    " : "FAILED"} ${name} (${seconds} s)\n`);
      resolve(code === 0);
    });
  });
}
