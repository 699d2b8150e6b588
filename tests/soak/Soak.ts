import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";

/** How far a soak has come: kept after every block, so that one that is stopped goes on where it was. */
interface Kept {
  readonly seed: number;
  done: number;
  failures: string[];
}

/** Most failures that are kept with their words; more are only counted as what stopped the soak. */
const MOST_FAILURES = 200;

/**
 * Runs blocks of a soak from the first that was not done under this seed, with progress on a terminal.
 *
 * @param name under which it is kept in `reports/soak`
 * @param blocks how many blocks there are in all
 * @param run one block, by its number; what failed in it, one line each
 * @returns everything that failed so far under this seed
 */
export async function soak(
  name: string,
  blocks: number,
  run: (block: number) => string[] | Promise<string[]>,
): Promise<string[]> {
  const seed = Number(process.env.SOAK_SEED ?? 1);
  const file = `reports/soak/${name}-${seed}.json`;
  mkdirSync("reports/soak", { recursive: true });
  const kept = read(file, seed);
  const begun = performance.now();
  const from = kept.done;
  let shown = 0;
  while (kept.done < blocks && kept.failures.length < MOST_FAILURES) {
    kept.failures.push(...(await run(kept.done)));
    kept.done += 1;
    if (performance.now() - shown < 2000 && kept.done < blocks) continue;
    shown = performance.now();
    write(file, kept);
    const left = ((shown - begun) / (kept.done - from)) * (blocks - kept.done);
    console.log(
      `${name}: ${kept.done} of ${blocks} blocks, ${kept.failures.length} failures, ${Math.ceil(left / 60_000)} min left`,
    );
  }
  write(file, kept);
  return kept.failures;
}

function read(file: string, seed: number): Kept {
  try {
    const found = JSON.parse(readFileSync(file, "utf8")) as Kept;
    return found.seed === seed ? found : { seed, done: 0, failures: [] };
  } catch {
    return { seed, done: 0, failures: [] }; // none yet
  }
}

function write(file: string, kept: Kept): void {
  writeFileSync(`${file}.new`, `${JSON.stringify(kept, null, 2)}\n`);
  renameSync(`${file}.new`, file);
}
