import {
  type CombinedLawName,
  cakeFromLine,
  filtrateAt,
  fitCakeRun,
  fitLoadingLaw,
  loadAtRatio,
  loadingLaw,
  rescaleLaw,
  resistanceRatio,
  resistanceSlope,
} from "@thirstline/core";
import { expect, test } from "vitest";

const run = { area: 0.01, drop: 5e4, dynamicViscosity: 1e-3, solids: 20 };

test("fitCakeRun(readings on a line of time over filtrate) is cakeFromLine of that line", () => {
  const readings = [1e-4, 2e-4, 5e-4].map((filtrate) => ({ filtrate, time: (2e5 + 3e9 * filtrate) * filtrate }));
  const [fit, line] = [fitCakeRun({ ...run, readings }), cakeFromLine(run, { slope: 3e9, start: 2e5 })];
  for (const key of Object.keys(line) as (keyof typeof line)[]) {
    if (typeof line[key] === "number") expect((fit[key] as number) / (line[key] as number)).toBeCloseTo(1, 9);
  }
});

test("fitCakeRun(readings beside a line) takes the line of least squares", () => {
  // Over filtrates of 1, 2 and 3 L the ratios 3, 3 and 6 (1e5 s/m3) lie about 1 + 1.5 times the filtrate.
  const readings = [
    { filtrate: 1e-3, time: 300 },
    { filtrate: 2e-3, time: 600 },
    { filtrate: 3e-3, time: 1800 },
  ];
  expect(fitCakeRun({ ...run, readings })).toEqual(
    expect.objectContaining(
      Object.fromEntries(
        Object.entries(cakeFromLine(run, { slope: 1.5e8, start: 1e5 })).map(([key, value]) => [
          key,
          typeof value === "number" ? expect.closeTo(value, -Math.floor(Math.log10(value)) + 8) : value,
        ]),
      ),
    ),
  );
});

test("rescaleLaw(law, 1000) per new unit grows as much in a thousandth of the load", () => {
  for (const law of [
    loadingLaw("cake-standard", { cake: 2, standard: 0.3 }),
    loadingLaw("complete-standard", { complete: 0.4, standard: 0.3 }),
    loadingLaw("intermediate", { intermediate: 1.5 }),
  ]) {
    expect(resistanceRatio(rescaleLaw(law, 1000), 7e-4)).toBeCloseTo(resistanceRatio(law, 0.7), 12);
  }
});

const pairs: [CombinedLawName, Parameters<typeof loadingLaw>[1], number][] = [
  ["cake-complete", { cake: 1.2, complete: 0.2 }, 1.5],
  ["cake-intermediate", { cake: 1.2, intermediate: 0.3 }, 1.5],
  ["complete-standard", { complete: 0.3, standard: 0.2 }, 1.5],
  ["intermediate-standard", { intermediate: 0.5, standard: 0.2 }, 1.5],
  ["cake-standard", { cake: 1.2, standard: 0.2 }, 1.5],
];

test.each(pairs)("fitLoadingLaw(%s, two points of it, in either order) passes through both", (name, constants, far) => {
  const law = loadingLaw(name, constants);
  const points = [0.5, far].map((load) => ({ load, ratio: resistanceRatio(law, load) }));
  for (const given of [points, [...points].reverse()]) {
    const fit = fitLoadingLaw(name, given);
    if (!fit.known) throw new Error(fit.reason);
    for (const { load, ratio } of points) expect(resistanceRatio(fit.law, load) / ratio).toBeCloseTo(1, 9);
  }
});

test("fitLoadingLaw(cake-intermediate, points that outgrow either law alone) finds the law between, up to its top", () => {
  const [near, far] = [0.5, 1.5];
  const through = (intermediate: number) => {
    // The ratio is a straight line over the cake's constant: the one that takes it through 2 at the near load.
    const [without = 0, withOne = 0] = [0, 1].map((cake) =>
      resistanceRatio(loadingLaw("cake-intermediate", { cake, intermediate }), near),
    );
    return loadingLaw("cake-intermediate", { cake: (2 - without) / (withOne - without), intermediate });
  };
  const ratios = [0.2, 0.4, 0.6, 0.8, 1, 1.2].map((intermediate) => resistanceRatio(through(intermediate), far));
  const top = Math.max(...ratios);
  for (const ratio of [...ratios, top * 0.9999]) {
    const fit = fitLoadingLaw("cake-intermediate", [
      { load: near, ratio: 2 },
      { load: far, ratio },
    ]);
    if (!fit.known) throw new Error(`${ratio} ${fit.reason}`);
    expect(resistanceRatio(fit.law, far) / ratio).toBeCloseTo(1, 9);
  }
});

test.each(pairs)("fitLoadingLaw(%s, points its growth cannot pass) says which way they lie", (name) => {
  const reason = (ratio: number) => {
    const fit = fitLoadingLaw(name, [
      { load: 1, ratio: 2 },
      { load: 2, ratio },
    ]);
    return fit.known ? "known" : fit.reason;
  };
  expect(reason(2.01)).toBe("grows too slowly for this law");
  if (name === "cake-standard" || name === "intermediate-standard" || name === "cake-intermediate")
    expect(reason(1e9)).toBe("grows too fast for this law");
});

test.each(pairs)("a %s law without one of its constants is the other's law alone", (name, constants) => {
  for (const [kept, value] of Object.entries(constants) as [keyof typeof constants, number][]) {
    const [other] = Object.keys(constants).filter((one) => one !== kept);
    const both = loadingLaw(name, { [kept]: value, [other ?? ""]: 0 });
    const alone = loadingLaw(kept, { [kept]: value });
    for (const load of [0, 0.5, 1.2]) {
      expect(resistanceRatio(both, load)).toBeCloseTo(resistanceRatio(alone, load), 12);
      expect(resistanceSlope(both, load)).toBeCloseTo(resistanceSlope(alone, load), 12);
    }
    expect(loadAtRatio(both, 1.8)).toBeCloseTo(loadAtRatio(alone, 1.8), 12);
    for (const time of [0, 0.7, 1e9]) {
      const [one, two] = [both, alone].map((law) => filtrateAt(law, { initialVelocity: 1, time }));
      expect((one ?? 0) / (two || 1)).toBeCloseTo(time === 0 ? 0 : 1, 9);
    }
  }
});

test.each(["cake", "intermediate", "standard", "complete"] as const)(
  "a %s law of constant 0 does not grow, and lets everything through",
  (name) => {
    const law = loadingLaw(name, { [name]: 0 });
    expect([resistanceRatio(law, 5), resistanceSlope(law, 5)]).toEqual([1, 0]);
    expect(filtrateAt(law, { initialVelocity: 2, time: 3 })).toBe(6);
  },
);
