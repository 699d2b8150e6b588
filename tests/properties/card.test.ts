import { readdirSync, readFileSync } from "node:fs";
import { settlingTime } from "@thirstline/core";
import { readSystem } from "@thirstline/spec";
import type { System, SystemPart } from "@thirstline/spec/system";
import {
  type CardAnswer,
  type CardOptions,
  card,
  cardHtml,
  cardNames,
  check,
  life,
  plain,
  primingStrokes,
} from "@thirstline/study";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const folder = new URL("../../packages/spec/demo/", import.meta.url);
const demos = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => [name, systemIn(readFileSync(new URL(name, folder), "utf8"))] as const);
const named = (name: string) => demos.find(([file]) => file === `${name}.yaml`)?.[1] as System;

function systemIn(text: string): System {
  const read = readSystem(text, { file: "card.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("\n"));
  return read.system;
}

const lines = ({ sections }: CardAnswer) => sections.flatMap(({ items }) => items.map(({ words }) => plain(words)));
const inSection = (answer: CardAnswer, name: string) =>
  (answer.sections.find((one) => one.name === name)?.items ?? []).map(({ words }) => plain(words)).join("\n");
const filtersIn = (parts: readonly SystemPart[]): string[] =>
  parts.flatMap((part) => {
    if (part.part === "bank") return part.branches.flatMap(filtersIn);
    return part.part === "filter" ? [part.name] : [];
  });

describe.each(demos)("card(%s)", (_, system) => {
  const options: CardOptions[] = [
    {},
    { units: "us" },
    { temperature: 250 },
    { prefill: "manual-allows", primer: 2e-5 },
  ];

  test("puts cautions first, whatever is asked, and they name what can hurt", () => {
    for (const asked of options) {
      const answer = card(system, asked);
      expect(answer.sections[0]?.name).toBe("cautions");
      const cautions = inSection(answer, "cautions");
      for (const word of [
        "manual",
        "local codes",
        "no flame",
        "licensed",
        "Relieve",
        "Gloves",
        "hot parts",
        "air the place",
      ])
        expect(cautions).toContain(word);
      expect(cautions).toContain(answer.fuel === "petrol" ? "Petrol vapour" : "pierces skin");
    }
  });

  test("names every filter of the system where it is got, taken off, fitted and written down", () => {
    const names = filtersIn([
      ...system.tanks.flatMap(({ path }) => path),
      ...system.suction,
      ...(system.delivery ?? []),
    ]);
    expect(names.length).toBeGreaterThan(0);
    const answer = card(system);
    for (const name of names) {
      for (const section of ["at hand", "take off", "fit", "log"]) {
        expect(inSection(answer, section).toLowerCase(), section).toContain(name.toLowerCase());
      }
    }
  });

  test("never has a torque, be it in newton metres, in pounds or in turns", () => {
    for (const asked of options) {
      const text = lines(card(system, asked)).join("\n");
      expect(text).not.toMatch(/\d\s*(N·?\s?m|Nm|lb\s?ft|ft\s?lb|in\s?lb|turns?)\b/i);
      expect(text).not.toMatch(/(quarter|half|three.quarter|full) (of a )?turn/i);
      expect(inSection(card(system, asked), "fit")).toContain("as the manual says");
    }
  });

  test("has no figure that is none", () => {
    for (const asked of options)
      expect(lines(card(system, asked)).join("\n")).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  test("expects the vacuum that check finds with clean elements, at full and at the least load of the duty", () => {
    const { readings } = card(system);
    const [full] = check(system).points;
    if (!full || readings.length === 0) return expect(full?.reasons.map(({ code }) => code)).toContain("shut");
    expect(readings.at(-1)?.vacuum).toEqual(full.vacuum);
    const least = Math.min(...(system.duty?.loads ?? []).map(({ load }) => load));
    expect(readings).toHaveLength(least < 1 ? 2 : 1);
    if (least >= 1) return;
    const [low] = check(system, { demand: least * full.demand.total }).points;
    expect(readings[0]?.vacuum).toEqual(low?.vacuum);
  });

  test("drains bowls as often as life says", () => {
    const { water } = card(system);
    const lasts = life(system).water;
    if (water.code !== "stages")
      return expect(lasts === null || lasts.free === 0 || lasts.stages.length === 0).toBe(true);
    const bowls = water.stages.filter(({ kind }) => kind === "bowl").map(({ every }) => every);
    const found = lasts?.stages.filter(({ kind }) => kind === "bowl").map(({ drainEvery }) => drainEvery) ?? [];
    expect(bowls).toHaveLength(found.length);
    for (const [at, every] of bowls.entries()) expect((every ?? 0) / (found[at] ?? 0)).toBeCloseTo(1, 3);
  });

  test("says the same in HTML, with nothing of the text taken for a tag and nothing fetched", () => {
    const odd = { ...system, name: `<script>alert("1")</script> & 'co'` };
    const html = cardHtml(card(odd));
    expect(html).not.toContain("<script");
    expect(html).toContain("&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;co&#39;");
    expect(html).not.toMatch(/https?:|url\(|@import|<link|<img|src=/);
    expect(html.match(/<section/g)).toHaveLength(card(odd).sections.length);
  });
});

test("card(system) primes twice the volume with twice the strokes, to one for rounding", () => {
  const heron = named("heron");
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e-4, noNaN: true }), fc.integer({ min: 2, max: 6 }), (stroke, times) => {
      const once = card(heron, { primer: stroke }).priming;
      const small = card(heron, { primer: stroke / times }).priming;
      expect(small.least).toBe(once.least);
      expect(Math.abs((small.strokes?.least ?? 0) - times * (once.strokes?.least ?? 0))).toBeLessThanOrEqual(times);
    }),
    { numRuns: 8 },
  );
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e-2, noNaN: true }),
      fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
      (volume, stroke) => {
        const one = primingStrokes({ volume, stroke, fill: 0.8 });
        const two = primingStrokes({ volume: 2 * volume, stroke, fill: 0.8 });
        expect(two).toBeGreaterThanOrEqual(2 * one - 1);
        expect(two).toBeLessThanOrEqual(2 * one);
      },
    ),
  );
});

describe("card(heron)", () => {
  const heron = named("heron");
  const litres = (value: number) => value * 1e3;

  test("counts bodies, and the lines beside them up to what keeps fuel back", () => {
    const { volumes } = card(heron);
    expect(litres(volumes.bodies)).toBeCloseTo(3.1, 12);
    // 6 m and 2 m of 19 mm beside the bank, 1.5 m of 12 mm beside the fine filter.
    const lines = (Math.PI / 4) * (0.019 ** 2 * 8 + 0.012 ** 2 * 1.5);
    expect(volumes.lines).toBeCloseTo(lines, 15);
    // With one side shut by itself, the lines beyond the bank stay full.
    expect(card(heron, { at: ["prefilter A"] }).volumes).toEqual({ bodies: 1.1e-3, unknown: [], lines: 0 });
  });

  test("does not prefill unless somebody says the manual allows it; a file that forbids it stands", () => {
    expect(card(heron).priming).toMatchObject({ allowed: [], assumed: ["prefilter A", "prefilter B", "fine filter"] });
    expect(inSection(card(heron), "fit")).toContain("Do not prefill prefilter A, prefilter B and fine filter");
    const said = card(heron, { prefill: "manual-allows" });
    expect(said.priming.least).toBe(0);
    expect(inSection(said, "fit")).toContain("through the dirty side only");
    const lorry = card(named("lorry"), { prefill: "manual-allows" });
    expect(lorry.priming).toMatchObject({ allowed: [], forbidden: ["prefilter P15", "fine filter F4"] });
    expect(inSection(lorry, "fit")).toContain("the file says the manual forbids it, whatever was asked");
  });

  test("has the arrow by its neighbours, and bleeds from the tank to the injection pump", () => {
    expect(inSection(card(heron), "fit")).toContain("IN from elbows, OUT to pump line");
    const order = ["prefilter A", "prefilter B", "the lift pump's outlet", "fine filter", "the injection pump"];
    expect(card(heron).bleed).toEqual(order);
    expect(card(heron, { at: ["fine filter"] }).bleed).toEqual(["fine filter", "the injection pump"]);
  });

  test("shuts one side first where a bank allows it, only if the manual says so", () => {
    const { duplex, ...rest } = card(heron);
    expect(duplex).toMatchObject({ first: "prefilter A", through: ["prefilter B"], opened: false });
    const both = rest.readings.at(-1)?.vacuum.middle ?? Number.NaN;
    expect(duplex?.vacuum?.middle).toBeGreaterThan(both);
    expect(inSection(card(heron), "take off")).toContain("With the engine running only if the manual says so");
    expect(card(heron, { at: ["fine filter"] }).duplex).toBeNull();
  });

  test("counts elements that stay as soiled as the file has them", () => {
    const soiled = JSON.parse(JSON.stringify(heron)) as System;
    const bank = soiled.suction.find(({ part }) => part === "bank");
    if (bank?.part !== "bank") throw new Error("no bank");
    for (const branch of bank.branches) Object.assign(branch[0] as object, { restriction: 6 });
    const [full] = check(soiled).points;
    expect(card(soiled).readings.at(-1)?.vacuum).toEqual(full?.vacuum);
    const one = card(soiled, { at: ["prefilter A"] });
    expect(one.readings.at(-1)?.vacuum.middle).toBeGreaterThan(full?.vacuum.middle ?? 0);
    expect(one.readings.at(-1)?.vacuum.middle).toBeLessThan(full?.vacuumNow?.middle ?? 0);
    expect(inSection(one, "start")).toContain("These count the elements left in as the file has them.");
  });

  test("lets a tank stand as long as Stokes's law says, and not where water may be ice", () => {
    const { settling, temperature } = card(heron);
    if (settling.code !== "time") throw new Error(settling.code);
    const [point] = check(heron).points;
    const fuel = { density: point?.fuel.density ?? 0, kinematicViscosity: point?.fuel.kinematicViscosity ?? 0 };
    expect(temperature).toBeCloseTo(288.15, 10);
    // Water of 999.1 kg/m3 at 15 degC.
    const found = settlingTime({ depth: 1.1, size: 50e-6, density: 999.1, fuel });
    if (!found.known) throw new Error(found.reason);
    expect(settling.time / found.time).toBeCloseTo(1, 4);
    expect(card(heron, { temperature: 263.15 }).settling).toEqual({ code: "may be ice" });
  });

  test("refuses a name that is no filter, and a figure out of range", () => {
    expect(() => card(heron, { at: ["prefilter C"] })).toThrow(
      'card requires at to be a filter of Heron, port engine, one of "prefilter A", "prefilter B", "fine filter", got "prefilter C"',
    );
    expect(() => card(heron, { primer: 0 })).toThrow("card requires primer to be more than 0 m3, got 0");
    expect(() => card(heron, { temperature: Number.NaN })).toThrow(
      "card requires temperature to be more than 0 K, got NaN",
    );
  });
});

test("card(crane) has its screen cleaned, not changed", () => {
  const answer = card(named("crane"));
  expect(cardNames(named("crane"))).toEqual(["pick-up screen", "prefilter P30", "fine filter F5"]);
  expect(inSection(answer, "take off")).toContain("pick-up screen: take out");
  expect(inSection(answer, "at hand")).toContain("pick-up screen, which is cleaned and used again");
  expect(answer.volumes.unknown).toEqual(["prefilter P30", "fine filter F5"]);
});

test("card(system) turns an element that is fitted backwards, and copes with one of no style", () => {
  const crane = named("crane");
  const suction = crane.suction.map((part) => {
    if (part.part !== "filter") return part;
    const { style: _, ...bare } = part;
    return { ...bare, reversed: true };
  });
  const answer = card({ ...crane, suction }, { at: ["prefilter P30"] });
  expect(inSection(answer, "fit")).toContain("It is backwards now: turn it.");
  expect(inSection(answer, "take off")).toContain("the file does not say how it is built");
  expect(answer.elements[0]?.style).toBeNull();
});

test("card(system) has nothing to change where there is no filter, and still the cautions", () => {
  const crane = named("crane");
  const { delivery: _, spreads: __, ...rest } = crane;
  const answer = card({ ...rest, suction: crane.suction.filter(({ part }) => part === "line") });
  expect(answer.verdict).toBe("cannot say");
  expect(answer.sections.map(({ name }) => name)).toEqual(["cautions"]);
  expect(inSection(answer, "cautions")).toContain("there is nothing to change");
});
