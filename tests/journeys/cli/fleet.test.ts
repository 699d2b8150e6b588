import { spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { writeBigYard } from "../../support/bigYard.js";
import { calendarText, readCalendar } from "../../support/readCalendar.js";
import { BIN, FOLDERS, thirstline } from "./thirstline.js";

// Some tests start several processes, and each takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const ON = ["--on", "2026-11-25"];

let folder = "";
let log = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "yard-"));
  for (const name of readdirSync(FOLDERS.demo).filter((one) => one.endsWith(".yaml"))) {
    cpSync(join(FOLDERS.demo, name), join(folder, name));
  }
  cpSync(join(FOLDERS.demo, "yard"), join(folder, "yard"), { recursive: true });
  log = join(folder, "yard", "log.csv");
});

afterEach(() => rmSync(folder, { recursive: true }));

function run(...args: string[]): { stdout: string; stderr: string; code: number | null } {
  const { stdout, stderr, status } = spawnSync(process.execPath, [BIN, "fleet", ...args], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return { stdout, stderr, code: status };
}

interface FleetJson {
  readonly entries: readonly {
    readonly machine: string;
    readonly group: string;
    readonly due: { readonly date: string; readonly days: { readonly value: number; readonly unit: string } } | null;
    readonly chance: { readonly value: number | null };
    readonly reasons: readonly { readonly code: string }[];
  }[];
  readonly parts: readonly { readonly part: string; readonly count: number; readonly delivery: unknown }[];
  readonly faults: readonly { readonly file: string; readonly line: number; readonly code: string }[];
}

test("thirstline fleet shows every machine of the yard once, in its group", () => {
  const { stdout, code } = run("yard", ...ON, "--json");
  const { entries, faults, parts } = JSON.parse(stdout) as FleetJson;
  expect(entries.map(({ machine, group }) => `${group}: ${machine}`)).toEqual([
    "late: Heron, starboard engine",
    "now: Heron, port engine",
    "within: Depot lorry",
    "within: Yard crane",
    "left alone: Standby generator",
    "cannot say: Dewatering pump",
    "later: Workboat",
    "later: Yard pickup",
  ]);
  expect(entries[0]?.due).toMatchObject({ date: "2026-10-04", days: { value: -52, unit: "d" } });
  expect(parts[0]).toMatchObject({ part: "prefilter element P25", count: 12, delivery: { value: 864_000, unit: "s" } });
  expect(faults).toEqual([]);
  expect(code).toBe(1);
});

test.each([
  [0, "A,../heron.yaml,,2026-11-20\nB,../heron.yaml,a nuisance,"],
  [3, "A,../generator.yaml,,2025-01-10"],
  [4, "A,../generator.yaml,,2025-01-10\nB,../heron.yaml,,"],
  [1, "A,../heron.yaml,,2026-09-01\nB,../heron.yaml,,"],
] as const)("thirstline fleet exits with %d for %j", (code, rows) => {
  mkdirSync(join(folder, "small"));
  writeFileSync(join(folder, "small", "machines.csv"), `machine,system,stakes,changed\n${rows}\n`);
  expect(run("small", "--on", "2026-12-10", "--within", code === 0 ? "10 days" : "90 days").code).toBe(code);
});

test("thirstline fleet lists the others when files are at fault, with every fault", () => {
  writeFileSync(join(folder, "crane.yaml"), "format: thirstline/1\nname: Yard crane\n");
  writeFileSync(log, `${readFileSync(log, "utf8")}Workboat,2026-11-24,1,,,reading,\n`);
  const { stdout, stderr, code } = run("yard", ...ON, "--json");
  const { entries, faults } = JSON.parse(stdout) as FleetJson;
  expect(code).toBe(2);
  expect(stderr).toBe(""); // a program gets both in one answer
  expect(faults.some(({ file }) => file === "crane.yaml")).toBe(true);
  expect(faults.filter(({ file }) => file.endsWith("log.csv"))).toMatchObject([{ code: "runs backwards", line: 23 }]);
  const reasons = new Map(entries.map(({ machine, reasons }) => [machine, reasons.map(({ code }) => code)]));
  expect(reasons.get("Yard crane")).toEqual(["file at fault"]);
  expect(reasons.get("Workboat")).toEqual(["log at fault"]);
  expect(entries.find(({ machine }) => machine === "Depot lorry")?.group).toBe("within");
  expect(entries).toHaveLength(8);
});

test("thirstline fleet --draws tells a chance, the same for a seed", () => {
  const chances = () =>
    (JSON.parse(run("yard", ...ON, "--json", "--draws", "12").stdout) as FleetJson).entries.map(
      ({ chance }) => chance.value,
    );
  const first = chances();
  expect(first.filter((chance) => chance !== null).length).toBeGreaterThan(3);
  expect(first[0]).toBeGreaterThan(0.5); // some 620 h on elements that last 456 h
  expect(chances()).toEqual(first);
});

test("thirstline fleet --ics writes a calendar of what falls due, and says when it cannot", () => {
  expect(run("yard", ...ON, "--ics", "due.ics").code).toBe(1);
  const calendar = readCalendar(readFileSync(join(folder, "due.ics")));
  const titles = calendar.parts.map(({ lines }) =>
    calendarText(lines.find(({ name }) => name === "SUMMARY")?.value ?? ""),
  );
  expect(titles).toEqual([
    "Heron, starboard engine: change prefilter A, prefilter B and fine filter",
    "Heron, port engine: change prefilter A, prefilter B and fine filter",
    "Depot lorry: change prefilter P15 and fine filter F4",
    "Yard crane: change prefilter P30 and fine filter F5",
    "Standby generator: change bowl filter B10",
  ]);
  const { stderr, code } = run("yard", ...ON, "--ics", "no/such/due.ics");
  expect(stderr).toContain("no/such/due.ics: cannot be written: there is no such folder\n");
  expect(code).toBe(2);
});

describe("thirstline fleet --log", () => {
  const entry =
    "Heron, port engine, 2026-11-25, 13359 h, 19.5 kPa, changed prefilter A, changed prefilter B, note: bowl, wet";

  test("puts entries after the log's last, keeps the one before, and the list heeds them", () => {
    const before = readFileSync(log, "utf8");
    const { stdout, stderr, code } = run("yard", ...ON, "--log", entry, "--log", "Workboat, 2026-11-24, 676 h");
    expect({ stderr, code }).toEqual({ stderr: "", code: 0 });
    const added =
      '"Heron, port engine",2026-11-25,13359,,19.5,changed prefilter A,"bowl, wet"\n' +
      '"Heron, port engine",2026-11-25,,,,changed prefilter B,\n' +
      "Workboat,2026-11-24,676,,,reading,\n";
    expect(readFileSync(log, "utf8")).toBe(before + added);
    expect(readFileSync(`${log}.bak`, "utf8")).toBe(before);
    expect(stdout).toBe(added.replace(/^/gm, "yard/log.csv: ").replace(/yard\/log.csv: $/, ""));
    expect(readdirSync(join(folder, "yard")).sort()).toEqual(["log.csv", "log.csv.bak", "machines.csv", "shelf.csv"]);
    const { entries } = JSON.parse(run("yard", ...ON, "--json").stdout) as FleetJson;
    expect(entries.find(({ machine }) => machine === "Heron, port engine")?.due?.date).toBe("2026-11-23"); // its fine filter's
  });

  test("begins a log where there is none", () => {
    rmSync(log);
    expect(run("yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h, changed all", "--json")).toMatchObject({
      code: 0,
    });
    expect(readFileSync(log, "utf8")).toBe(
      "machine,date,hours (h),distance (km),gauge (kPa),event,note\nWorkboat,2026-11-25,690,,,changed all,\n",
    );
  });

  test("writes all or none, and says everything that is wrong", () => {
    const before = readFileSync(log, "utf8");
    const { stderr, code } = run(
      "yard",
      ...ON,
      "--log",
      "Workboat, 2026-11-24, 676 h",
      "--log",
      "Yard crane, 2026-11-25, 12 h",
    );
    expect(code).toBe(2);
    expect(stderr).toBe(
      'thirstline: --log Yard crane: the hour meter runs backwards, from 3398 h on 2026-11-23 to 12 h on 2026-11-25; correct the figure or, for a new meter, write the event "new hour meter"\n',
    );
    expect(readFileSync(log, "utf8")).toBe(before);
    expect(run("yard", ...ON, "--log", "Yard crane, 2026-11-25, 12 h, new hour meter").code).toBe(0);
  });

  test("refuses what cannot be, each with its reason", () => {
    const before = readFileSync(log, "utf8");
    const entries = [
      "Workboat, 2026-11-26, changed fine filter",
      "Standby generator, 2026-11-25, 400 h",
      "Depot lorry, 2025-01-01, 7300 h",
    ];
    const { stderr, code } = run("yard", ...ON, ...entries.flatMap((entry) => ["--log", entry]));
    const lines = stderr.split("\n").map((line) => line.replace("thirstline: --log ", ""));
    expect(lines).toEqual([
      "Workboat: the log has a row of it on 2026-11-26, after today; correct the day",
      'Workboat: the log says "changed fine filter", and it has no such element; it has water-separating filter W10',
      expect.stringContaining("Standby generator: the hour meter runs backwards, from 431 h on 2026-11-16 to 400 h"),
      expect.stringContaining("Depot lorry: the hour meter runs backwards, from 7300 h on 2025-01-01 to 6828 h"),
      "",
    ]);
    expect(code).toBe(2);
    expect(run("yard", ...ON, "--log", "Wrkboat, 2026-11-25, 700 h").stderr).toBe(
      'thirstline: --log "Wrkboat" is no machine here; did you mean "Workboat"?\n',
    );
    expect(readFileSync(log, "utf8")).toBe(before);
  });

  test("puts nothing after a torn last line, and takes nothing of it away", () => {
    const torn = `${readFileSync(log, "utf8")}Workboat,2026-11-2`;
    writeFileSync(log, torn);
    const { stderr, code } = run("yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h");
    expect(stderr).toContain("yard/log.csv:23 has to be put right first: the last line ends in its middle");
    expect(code).toBe(2);
    expect(readFileSync(log, "utf8")).toBe(torn);
  });

  test("names a reading the log has no column for", () => {
    const own = "date;machine;hours (h)\n2026-11-01;Workboat;668\n";
    writeFileSync(log, own);
    const { stderr } = run("yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h, 4 kPa");
    expect(stderr).toContain('yard/log.csv has no column "gauge"; add it to its head first');
    expect(run("yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h").code).toBe(0);
    expect(readFileSync(log, "utf8")).toBe(`${own}2026-11-25;Workboat;690\n`);
  });

  test("takes over a lock that a process left long ago, and waits for one that is held", () => {
    mkdirSync(`${log}.lock`);
    const longAgo = new Date(Date.now() - 60_000);
    utimesSync(`${log}.lock`, longAgo, longAgo);
    expect(run("yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h").code).toBe(0);
    expect(existsSync(`${log}.lock`)).toBe(false);
    mkdirSync(`${log}.lock`);
    const ahead = new Date(Date.now() + 60_000); // as its holder keeps it fresh
    utimesSync(`${log}.lock`, ahead, ahead);
    const { stderr, code } = run("yard", ...ON, "--log", "Workboat, 2026-11-25, 691 h");
    expect(stderr).toBe(
      "thirstline: --log yard/log.csv: someone else is writing to it; nothing was written, try again\n",
    );
    expect(code).toBe(2);
  });

  test("says in plain words that a folder is read-only, and leaves the log as it was", () => {
    const before = readFileSync(log, "utf8");
    chmodSync(folder, 0o755);
    chmodSync(join(folder, "yard"), 0o555);
    // Who may do all is held up by no right, so the process gives that up.
    const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const args = [BIN, "fleet", "yard", ...ON, "--log", "Workboat, 2026-11-25, 690 h"];
    const { stderr, status } = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8", ...nobody });
    chmodSync(join(folder, "yard"), 0o755);
    expect(stderr).toBe("thirstline: --log yard/log.csv: permission denied; nothing was written\n");
    expect(status).toBe(2);
    expect(readFileSync(log, "utf8")).toBe(before);
  });

  test("of several processes at once loses none", async () => {
    const count = 4;
    const codes = await Promise.all(
      Array.from({ length: count }, (_, at) => {
        const args = [BIN, "fleet", "yard", ...ON, "--log", `Workboat, 2026-11-25, note: writer ${at}`];
        return new Promise<number | null>((resolve) =>
          spawn(process.execPath, args, { cwd: folder }).on("close", resolve),
        );
      }),
    );
    expect(codes).toEqual(Array(count).fill(0));
    const notes = readFileSync(log, "utf8").match(/writer \d/g) ?? [];
    expect([...notes].sort()).toEqual(Array.from({ length: count }, (_, at) => `writer ${at}`));
  });
});

// Under 5 s, the whole process, on a machine that does nothing else; the ceiling leaves room for one that does.
test("thirstline fleet judges 10,000 machines over 200 systems, with 80,000 rows of log", { timeout: 90_000 }, () => {
  writeBigYard(join(folder, "big"), { machines: 10_000, systems: 200, rows: 8 });
  const begun = performance.now();
  const { stdout, code } = run("big", "--on", "2026-05-25", "--csv");
  expect(performance.now() - begun).toBeLessThan(40_000);
  expect(code).toBe(1);
  const lines = stdout.trimEnd().split("\n");
  expect(lines).toHaveLength(10_001);
  expect(new Set(lines.map((line) => line.split(",")[1])).size).toBe(10_001);
});

test("thirstline fleet reads a folder without a list, every system file a machine", () => {
  const { stdout } = thirstline(["fleet", ".", ...ON, "--json"], { folder: "demo" });
  const { entries } = JSON.parse(stdout) as FleetJson;
  const files = readdirSync(FOLDERS.demo).filter((name) => name.endsWith(".yaml"));
  expect(entries).toHaveLength(files.length);
});
