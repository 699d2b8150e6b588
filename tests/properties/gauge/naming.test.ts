import { type LoadingLawName, lawConstants } from "@thirstline/core";
import { gauge } from "@thirstline/study";
import { expect, test } from "vitest";
import { seeded } from "../../support/random.js";
import { heron, heronUnknown, historyOf, lawGrowth, type Trouble } from "./histories.js";

// Whether what is the matter is named rightly: histories of 20 readings with vacuum and feed pressure, each trouble in turn
// with each law of growth. "cannot tell" is honest, and counted apart.

const LONG = process.env.THIRSTLINE_LONG === "1";
const EACH = LONG ? 125 : 9;

/** What each trouble is rightly called. */
const right: Readonly<Record<Trouble, readonly string[]>> = {
  none: ["loading"],
  jump: ["jump"],
  "high when new": ["high when new"],
  "air or slip": ["air or slip"],
  "air or slip later": ["air or slip"],
  cold: ["cold"],
  falls: ["falls"],
  "falls slowly": ["falls"],
};

test("gauge(system, readings) names what is the matter nine times in ten", { timeout: 3_600_000 }, () => {
  const laws = Object.keys(lawConstants) as LoadingLawName[];
  const matrix = new Map<Trouble, Map<string, number>>();
  let [rightly, unsaid, all] = [0, 0, 0];
  for (const trouble of Object.keys(right) as Trouble[]) {
    const row = new Map<string, number>();
    matrix.set(trouble, row);
    for (let at = 0; at < EACH; at++) {
      const law = laws[at % laws.length] as LoadingLawName;
      const random = seeded(70_000 + 1000 * matrix.size + at);
      const given = {
        random,
        growth: (limit: number) => lawGrowth(law, limit, random),
        trouble,
        withFeed: true,
        count: 20,
      };
      const { readings } = historyOf(given);
      const answer = gauge(trouble === "falls slowly" ? heronUnknown : heron, readings);
      const names = [...new Set(answer.findings.map(({ code }) => code))];
      const said = names.length === 0 ? "cannot tell" : names.join(" + ");
      row.set(said, (row.get(said) ?? 0) + 1);
      all++;
      if (said === "cannot tell") unsaid++;
      if (names.length === 1 && right[trouble].includes(names[0] ?? "")) rightly++;
    }
  }
  const rows = [...matrix].map(([trouble, row]) => {
    const cells = [...row].sort((one, other) => other[1] - one[1]).map(([said, times]) => `${said} ${times}`);
    return `${trouble.padEnd(18)} ${cells.join(", ")}`;
  });
  console.log([...rows, `right ${rightly}, cannot tell ${unsaid}, of ${all}`].join("\n"));
  expect(all).toBe(8 * EACH);
  expect(rightly / (all - unsaid)).toBeGreaterThanOrEqual(0.9);
  expect(unsaid / all).toBeLessThan(0.1);
});
