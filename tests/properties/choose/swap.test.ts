import type { CatalogueElement, System } from "@thirstline/spec/system";
import { asFitted, fittedFrom, plain, type SwapOptions, swap, swapReasonWords, swapSentence } from "@thirstline/study";
import { describe, expect, test } from "vitest";
import { demoElements, demoSystem } from "./arrangements.js";

const heron = demoSystem("heron");
const catalogue = demoElements("elements.csv");
const at = ["prefilter A", "prefilter B"];
const [same, larger, coarser] = ["p10-same-body", "p10-larger-body", "p30-coarser"].map(
  (name) => demoElements(`elements/${name}.yaml`)[0] as CatalogueElement,
) as [CatalogueElement, CatalogueElement, CatalogueElement];
const fitted = fittedFrom(asFitted(heron, "prefilter A").filter, catalogue);
const quick: SwapOptions = { fitted, draws: 20 };
const codes = (answer: ReturnType<typeof swap>) => answer.reasons.map(({ weight, code }) => `${weight}: ${code}`);
const ofCode = (answer: ReturnType<typeof swap>, code: string) => {
  const found = answer.reasons.find((reason) => reason.code === code);
  return found ? plain(swapReasonWords(found, answer, "metric")) : "";
};

describe("swap on the ferry", () => {
  test("a finer element in the same body is a no, with the temperature it starves below", () => {
    const answer = swap(heron, { at, with: same }, quick);
    expect(answer.verdict).toBe("no");
    expect(answer.broken).toEqual(["vacuum at change", "feed pressure"]);
    const { starves } = answer.changed;
    if (starves.code !== "below") throw new Error(starves.code);
    expect(plain(swapSentence(answer, "metric"))).toMatch(/^No: .*the engine starves below -1\.\d °C\.$/);
    // Either side of that temperature the whole check says so.
    const on = (kelvin: number) => swap(heron, { at, with: same }, { ...quick, draws: 0, temperatures: [kelvin] });
    expect(on(starves.temperature + 0.01).changed.cold.verdict).not.toBe("starves");
    expect(on(starves.temperature - 0.02).changed.cold.verdict).toBe("starves");
  });

  test("the same medium in a larger body is a yes, and being finer no reason to change", () => {
    const answer = swap(heron, { at, with: larger }, quick);
    expect(answer.verdict).toBe("yes");
    expect(codes(answer)).toEqual(["note: finer than asked", "note: lasts", "note: thread kept"]);
    expect(ofCode(answer, "finer than asked")).toContain("that is no reason to change");
  });

  test("a coarser element that keeps the code takes care; one that does not is a plain no with both codes", () => {
    expect(swap(heron, { at, with: coarser }, quick).verdict).toBe("with care");
    const screen = catalogue.find(({ name }) => name === "element N80") as CatalogueElement;
    const answer = swap(
      heron,
      { at: "fine filter", with: { ...screen, filter: { ...screen.filter, style: "cartridge" } } },
      quick,
    );
    expect(answer.verdict).toBe("no");
    expect(ofCode(answer, "coarser than asked")).toMatch(
      /^Fuel would come to the injection pump at \d+\/\d+\/\d+, dirtier at .* µm\(c\) than the 15\/13\/10 the manual asks for\.$/,
    );
  });

  test("an element of unknown catch cannot be said, and the maker is to be asked", () => {
    const { betas: _, ...filter } = larger.filter;
    const answer = swap(heron, { at: [...at, "fine filter"], with: { ...larger, filter } }, quick);
    expect(codes(answer)).toContain("cannot say: protection not known");
    const { style: __, ...anyStyle } = filter;
    const other = swap(heron, { at: [...at, "fine filter"], with: { ...larger, filter: anyStyle } }, quick);
    expect(other.verdict).toBe("cannot say");
    expect(ofCode(other, "protection not known")).toContain("ask its maker");
  });

  test("what does not fit is a no: build, thread, direction, flow", () => {
    const answer = swap(
      heron,
      {
        at,
        with: {
          ...larger,
          mostFlow: 1e-5,
          filter: { ...larger.filter, style: "cartridge", thread: "M20x1.5", direction: "inside out" },
        },
      },
      quick,
    );
    expect(codes(answer).slice(0, 4).sort()).toEqual(["no: direction", "no: style", "no: thread", "no: too much flow"]);
    const spelt = swap(heron, { at, with: { ...larger, filter: { ...larger.filter, thread: "m24 × 1.5" } } }, quick);
    expect(spelt.verdict).toBe("yes");
  });

  test("the file's own word on thread and flow direction comes before the catalogue's", () => {
    const stated = (fields: object): System => ({
      ...heron,
      suction: heron.suction.map((part) =>
        part.part === "bank"
          ? { ...part, branches: part.branches.map((branch) => branch.map((one) => ({ ...one, ...fields }))) }
          : part,
      ),
    });
    const kept = swap(stated({ thread: "M24 x 1.5", direction: "outside in" }), { at, with: larger }, { draws: 0 });
    expect(ofCode(kept, "thread kept")).toBe("Its thread or port is M24x1.5, as at the place it is for.");
    const other = swap(stated({ thread: "M22x1.5" }), { at, with: larger }, { ...quick, draws: 0 });
    expect(other.verdict).toBe("no");
    expect(ofCode(other, "thread")).toBe("Its thread or port is M24x1.5, and the one fitted has M22x1.5.");
    const way = swap(stated({ direction: "inside out" }), { at, with: larger }, { draws: 0 });
    expect(ofCode(way, "direction")).toBe("Fuel goes through it outside in, and through the one fitted inside out.");
    expect(codes(swap(heron, { at, with: larger }, { draws: 0 }))).toContain("note: thread not known");
  });

  test("one of two side by side takes care: fuel takes the easier way", () => {
    const answer = swap(heron, { at: "prefilter A", with: larger }, quick);
    expect(ofCode(answer, "neighbour stays")).toBe(
      "Prefilter B, beside prefilter A, stays as it is: fuel takes the easier way, so change both or neither.",
    );
  });

  test("a fineness the manual asks for is kept by some element on the way, or it is a no", () => {
    const asked = (size: number) =>
      swap(heron, { at, with: larger }, { ...quick, rating: { beta: 200, size } }).verdict;
    expect(asked(10e-6)).toBe("yes"); // the fine filter is tested to 200 at 10 um
    expect(asked(4e-6)).toBe("no");
  });

  test("a year costs elements and work at every change, and a stoppage at its chance", () => {
    const answer = swap(heron, { at, with: larger }, { ...quick, labourRate: 60, stoppage: 2000 });
    // 9 h x 300 days, changed every 250 h: 10.8 times two of 75, with a quarter of an hour of work at 60 each.
    const { chance = Number.NaN } = answer.changed.spread ?? {};
    expect(answer.changed.cost).toEqual({
      changes: expect.closeTo(10.8, 9),
      elements: expect.closeTo(10.8 * 2 * 75, 6),
      labour: expect.closeTo(10.8 * 2 * 15, 6),
      stoppages: expect.closeTo(10.8 * chance * 2000, 6),
      total: expect.closeTo(10.8 * (2 * 90 + chance * 2000), 6),
    });
    expect(answer.now.cost.elements).toBeCloseTo(10.8 * 2 * 25, 6);
  });
});

test.each<[string, readonly string[]]>([
  ["heron", at],
  ["heron", ["fine filter"]],
  ["crane", ["prefilter P30"]],
  ["generator", ["bowl filter B10"]],
  ["lorry", ["prefilter P15"]],
])("swap(%s, %j with itself) changes no figure", (name, places) => {
  const system: System = demoSystem(name);
  const own = asFitted(system, places[0] as string);
  const { now, changed, fineness } = swap(system, { at: places, with: own }, { draws: 30, fitted: own });
  expect(changed).toEqual(now);
  expect(fineness).toBe("same");
});

test("swap keeps a yard's spreads apart: the element's own is one unknown at both of its places", () => {
  const answer = swap(heron, { at, with: larger }, { ...quick, draws: 40 });
  const again = swap(heron, { at, with: larger }, { ...quick, draws: 40 });
  expect(answer.changed.spread).toEqual(again.changed.spread);
  expect(answer.changed.spread?.low).toBeLessThan(answer.changed.spread?.high ?? 0);
});

test("swap refuses a place that is no filter, and names those there are", () => {
  expect(() => swap(heron, { at: "prefilter C", with: larger })).toThrow(
    'swap requires at to be a filter of Heron, port engine, one of "prefilter A", "prefilter B", "fine filter", got "prefilter C"',
  );
});
