import { readSystem, type System } from "@thirstline/spec";
import { describe, expect, test } from "vitest";
import { read } from "../../../../tests/support/repository.js";
import { lifeReasonWords } from "../say/lifeReasonWords.js";
import { plain } from "../say/words.js";
import { life } from "./life.js";

const HOUR = 3600;
const heron = read("packages/spec/demo/heron.yaml");
const lorry = read("packages/spec/demo/lorry.yaml");

function systemOf(text: string): System {
  const found = readSystem(text, { file: "a system" });
  if ("faults" in found) throw new Error(found.faults.map(({ message }) => message).join("; "));
  return found.system;
}

/** A text with a piece of it changed, which must be there. */
function changed(text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`"${from}" is not in the text`);
  return text.replace(from, to);
}

describe("life(system)", () => {
  test("gives hours, fuel, distance, date and meters that fit together", () => {
    const { end, year } = life(systemOf(lorry));
    const part = (end?.time ?? 0) / year;
    expect(year).toBe(6 * 220 * HOUR);
    expect(end?.distance).toBeCloseTo(part * 45e6, 3);
    expect(end?.distanceMeter).toBeCloseTo(212e6 + part * 45e6, 3);
    expect(end?.hourMeter).toBeCloseTo(6150 * HOUR + (end?.time ?? 0), 6);
    const days = (Date.parse(end?.date ?? "") - Date.parse("2026-01-12")) / 86_400_000;
    expect(Math.abs(days - part * 365.25)).toBeLessThan(1);
  });

  test("starts in the season of the last change", () => {
    const winterFirst = systemOf(lorry);
    // The year begins on 12 January with five months of winter; half a year on it is summer.
    const summerFirst = systemOf(changed(lorry, "last: { date: 2026-01-12", "last: { date: 2026-07-13"));
    const [winter, summer] = [life(winterFirst), life(summerFirst)];
    expect(summer.end?.date?.slice(0, 4)).toBe("2027");
    // Burn is stated by mass, so warm fuel brings more volume and with it more soil.
    expect(summer.end?.time).toBeLessThan(winter.end?.time ?? 0);
  });

  test("lets the elements that go first be those that add most of the rise", () => {
    const { elements } = life(systemOf(heron));
    expect(elements.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(elements.find(({ name }) => name === "fine filter")?.share).toBeGreaterThan(0.5);
  });

  test("gives a new element of a duplex more than its half of the flow, and its neighbour the rest", () => {
    const { partial } = life(systemOf(heron));
    const [own, other] = partial.find(({ element }) => element === "prefilter A")?.shares ?? [];
    expect(own?.before).toBeCloseTo(0.5, 9);
    expect(own?.after).toBeGreaterThan(0.5);
    expect((own?.after ?? 0) + (other?.after ?? 0)).toBeCloseTo(1, 9);
  });

  test("catches what it says: what the elements hold is what was burnt of the delivered soil, less what passed", () => {
    const { elements, end, cleanliness } = life(systemOf(heron));
    const delivered = cleanliness[0]?.solids ?? 0;
    const passed = cleanliness.at(-1)?.solids ?? 0;
    const caught = elements.reduce((sum, { soil }) => sum + soil, 0);
    // Seasons and fouling move the split a little; the balance itself is exact in core's properties.
    expect(caught / ((end?.burnt ?? 0) * (delivered - passed))).toBeCloseTo(1, 3);
  });

  test("keeps no code that is dirtier than asked for", () => {
    expect(life(systemOf(heron)).protection).toEqual({ code: "15/13/10", kept: true });
    expect(life(systemOf(changed(heron, "code: 15/13/10", "code: 12/10/7"))).protection?.kept).toBe(false);
  });

  test("is early where a limit is met before the interval, and where clean elements break one", () => {
    expect(life(systemOf(changed(heron, "interval: 250 h", "interval: 480 h"))).verdict).toBe("early");
    const starved = life(systemOf(read("packages/spec/demo/heron-finer.yaml")));
    expect([starved.verdict, starved.end?.time]).toEqual(["early", 0]);
  });

  test("cannot say early or not where estimates lie on both sides of the interval, and says from when to when", () => {
    const { verdict, reasons, range, end } = life(systemOf(read("packages/spec/demo/pickup-staged.yaml")));
    const [reason] = reasons;
    expect(verdict).toBe("cannot say");
    expect(reason).toEqual({ code: "unsettled", early: range?.early, late: range?.late });
    expect(range?.early).toBeLessThan(end?.time ?? 0);
    expect(range?.late ?? Number.POSITIVE_INFINITY).toBeGreaterThan(end?.time ?? 0);
  });

  test.each([
    ["no duty", /duty:\n(?: .*\n)+/, ""],
    ["no delivered fuel", /delivered fuel: .*\n/, ""],
    ["no service interval", /service:\n(?: .*\n)+/, ""],
  ])("says %s where the file leaves it out", (code, from, to) => {
    const { verdict, reasons } = life(systemOf(heron.replace(from, to)));
    expect(verdict).toBe("cannot say");
    expect(reasons.map((reason) => reason.code)).toEqual([code]);
  });

  test("of a system that lets nothing through says by what, and gives no figure", () => {
    const { verdict, reasons, end, elements } = life(systemOf(changed(heron, "vent: open", "vent: blocked")));
    expect([verdict, end, elements]).toEqual(["cannot say", null, []]);
    expect(reasons).toContainEqual({ code: "shut", by: "the tank vent" });
    const [first] = reasons.map((reason) => plain(lifeReasonWords(reason, "metric")));
    expect(first).toBe("the tank vent lets no fuel through, so no element fills; open it, then ask again");
  });

  test("says a nominal rating is not comparable, and so cannot say", () => {
    const { verdict, reasons, cautions } = life(systemOf(read("packages/spec/demo/dewatering.yaml")));
    expect([verdict, reasons.map(({ code }) => code)]).toEqual(["cannot say", ["no growing element"]]);
    expect(cautions).toContainEqual({ code: "capture unknown", element: "felt pick-up filter", why: "nominal rating" });
  });

  test("drains a bowl sooner for wetter fuel, and never where all water stays dissolved", () => {
    const every = (water: string) => {
      const { water: found } = life(systemOf(changed(heron, "water: 150 mg/L ± 30 %", `water: ${water}`)));
      return found?.stages[0]?.drainEvery ?? null;
    };
    expect(every("300 mg/L")).toBeLessThan(every("150 mg/L") ?? 0);
    expect(every("5 mg/L")).toBeNull();
  });

  test("ends sooner by a dirty delivery, and says it was counted", () => {
    const dirty = changed(
      heron,
      "delivered fuel: { code: 17/15/12, water: 150 mg/L ± 30 % }",
      "delivered fuel: { code: 17/15/12, dirty delivery: { code: 21/19/16, after: 50 h, volume: 2000 L } }",
    );
    const [before, after] = [life(systemOf(heron)), life(systemOf(dirty))];
    expect(after.end?.time).toBeLessThan(before.end?.time ?? 0);
    expect(after.cautions).toContainEqual({ code: "dirty delivery", after: 50 * HOUR, volume: expect.closeTo(2, 9) });
  });
});
