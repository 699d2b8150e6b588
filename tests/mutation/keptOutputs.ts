import { existsSync, readFileSync } from "node:fs";
import { PassThrough, Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { main } from "../../packages/cli/src/main.js";
import { keptText } from "../journeys/cli/keptText.js";

// The journeys run the command line as a process, where no planted mutant reaches it. Here the quick ones of its kept
// outputs are asked for in the tests' own process, and compared in the same way.

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const folders = [here("../../packages/spec/demo"), here("../journeys/cli/files")];

/** Left out: faults of arguments, which say nothing of the study, and what takes more than half a second. */
const kept: Readonly<Record<string, string>> = {
  expected:
    "check-holds check-holds-us check-tight check-starves check-below-cloud-point check-gravity check-gravity-soiled " +
    "check-two-tanks check-estimate check-limit-assumed check-petrol-pulse-pump check-boiling check-relief-to-tank " +
    "check-soiled check-shut check-no-limit curve-csv curve-csv-us curve-estimate curve-gravity curve-shut curve-us " +
    "curve life-petrol life-starves-soiled life-misseated life-no-interval check-spread-several fleet-within fleet-faulty",
  cardExpected:
    "card card-one-cold-us card-wax card-gravity card-soiled-elsewhere card-screen card-forbidden card-shut-vent " +
    "card-petrol card-in-tank card-no-such-filter card-two-pages",
  chooseExpected:
    "swap-coarser swap-with-care swap-cannot-say size-none no-such-place no-such-element " + "remedy-boils remedy-us",
  gaugeExpected: "high-when-new-us wax typed gravity loading jump air stated-error",
  whyExpected:
    "list list-us swap-list fleet-list-of-one remedy-markdown gauge vacuum vacuum-two-steps-us line line-down-to-the-file between-laminar-and-turbulent " +
    "ceiling-within-a-step two-tanks estimate life change markdown swap remedy card card-list fleet spread",
};

/** The command line that a kept output begins with, as words. */
function argsOf(text: string): string[] {
  const [line = ""] = text.split("\n");
  return [...line.slice("$ thirstline ".length).matchAll(/"([^"]*)"|(\S+)/g)].map(
    ([, quoted, plain]) => quoted ?? plain ?? "",
  );
}

/** What a command line does, with options that change nothing of it, in the form in which it is kept. */
async function outcome(args: readonly string[], options: readonly string[], cwd: string): Promise<string> {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const io = { stdin: Readable.from([]), stdout, stderr, cwd, columns: undefined, isTerminal: false, environment: {} };
  const code = await main([...args, ...options], io);
  const said = (stream: PassThrough) => (stream.read() as Buffer | null)?.toString() ?? "";
  return keptText(args, { stdout: said(stdout), stderr: said(stderr), code });
}

for (const [folder, names] of Object.entries(kept)) {
  for (const name of names.split(" ")) {
    const text = readFileSync(here(`../journeys/cli/${folder}/${name}.txt`), "utf8");
    const args = argsOf(text);
    const file = args[1] ?? "";
    const cwd = folders.find((one) => existsSync(`${one}/${file}`)) ?? "";
    // A thread would load sources without mutants; the figures are the same however many there are.
    const drawn = ["check", "curve", "life", "swap", "size", "fleet"].includes(args[0] ?? "") ? ["--workers", "1"] : [];
    test(`thirstline ${args.join(" ")} (${folder}/${name})`, async () => {
      expect(await outcome(args, drawn, cwd)).toBe(text);
    });
  }
}
