import { expect, test } from "vitest";
import { drawsOfFit } from "./drawsOfFit.js";
import type { Fitted, Weighed } from "./fitAll.js";
import { standardDeviates } from "./standardDeviates.js";

const MANY = 1e6;
/** So much is known of the scatter that the likelihood is a normal one. */
const weighed = { sigmas: Float64Array.of(1, 1), prior: { weight: MANY, sum: MANY } } as unknown as Weighed;

function fittedAt(
  parameters: readonly number[],
  covariance: readonly (readonly number[])[],
  misses: (parameters: readonly number[]) => readonly number[],
): Fitted {
  const problem = () => ({ misses: (given: readonly number[]) => Float64Array.from(misses(given)), starts: [] });
  return { model: { problem }, fit: { parameters, covariance } } as unknown as Fitted;
}

const meanOf = (draws: ReturnType<typeof drawsOfFit>, of: (parameters: readonly number[]) => number) =>
  draws.reduce((sum, { parameters, weight }) => sum + weight * of(parameters), 0);

// The file's own two errors, known beforehand to 1, and a third parameter of which nothing is: 2(a - 1) and 3(c - a) are
// missed. By hand: a is 0.8 with a variance of 1/5, b is 0 with 1, and c is a with 1/9 more.
const missed = ([a = 0, , c = 0]: readonly number[]) => [2 * (a - 1), 3 * (c - a), 1e3, 1e3];

test.each([
  [
    "from where they are",
    [0.8, 0, 0.8],
    [
      [0.2, 0, 0.2],
      [0, 1, 0],
      [0.2, 0, 0.2 + 1 / 9],
    ],
  ],
  [
    "from a fit that is off",
    [0.9, 0.2, 0.7],
    [
      [0.3, 0.1, 0.2],
      [0.1, 1.2, 0.1],
      [0.2, 0.1, 0.5],
    ],
  ],
] as const)(
  "drawsOfFit(weighed, fitted, seed) comes to the spread that the readings allow, drawn %s",
  (_, at, covariance) => {
    const draws = drawsOfFit(weighed, fittedAt(at, covariance, missed), 1);
    expect(draws).toHaveLength(160);
    const mean = (place: number) => meanOf(draws, (one) => one[place] as number);
    const [a, b, c] = [mean(0), mean(1), mean(2)];
    expect(Math.abs(a - 0.8)).toBeLessThan(0.05);
    expect(Math.abs(b)).toBeLessThan(0.1);
    expect(Math.abs(c - 0.8)).toBeLessThan(0.05);
    const variance = (place: number, about: number) => meanOf(draws, (one) => ((one[place] as number) - about) ** 2);
    expect(variance(0, a) / 0.2).toBeCloseTo(1, 0.7);
    expect(variance(1, b)).toBeCloseTo(1, 0.7);
    expect(variance(2, c) / (0.2 + 1 / 9)).toBeCloseTo(1, 0.7);
    const together = meanOf(draws, (one) => ((one[0] as number) - a) * ((one[2] as number) - c));
    expect(together / 0.2).toBeCloseTo(1, 0.7);
  },
);

test("drawsOfFit(weighed, fitted, seed) holds weights that add up to 1", () => {
  const draws = drawsOfFit(
    weighed,
    fittedAt(
      [0.8, 0],
      [
        [0.2, 0],
        [0, 1],
      ],
      ([a = 0]) => [2 * (a - 1), 0],
    ),
    1,
  );
  expect(draws.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
});

test("drawsOfFit(weighed, fitted, seed) moves parameters as their covariance hangs together", () => {
  // The lower triangle was chosen first, its product with itself by hand.
  const triangle = [
    [2, 0, 0, 0],
    [1, 3, 0, 0],
    [4, -1, 2, 0],
    [-2, 5, 1, 3],
  ];
  const covariance = [
    [4, 2, 8, -4],
    [2, 10, 1, 13],
    [8, 1, 21, -11],
    [-4, 13, -11, 39],
  ];
  const fit = [10, -20, 30, 5];
  const draws = drawsOfFit(
    weighed,
    fittedAt(fit, covariance, () => [0, 0]),
    7,
  );
  standardDeviates(7, 4, 5, 160).forEach((deviates, at) => {
    const moved = triangle.map((row, place) =>
      row.reduce((sum, one, inner) => sum + one * (deviates[inner] as number), fit[place] as number),
    );
    expect(draws[at]?.parameters).toEqual(moved.map((one) => expect.closeTo(one, 9)));
  });
});

test("drawsOfFit(weighed, fitted, seed) weighs draws alike but for the density drawn from, where all are as likely", () => {
  // With a likelihood that is the same everywhere each weight is 1 over Student's density: far draws count most.
  const lax = { sigmas: Float64Array.of(1), prior: { weight: 0, sum: 1 } } as unknown as Weighed;
  const fitted = fittedAt(
    [0, 0, 0],
    [
      [1e-12, 0, 0],
      [0, 1e-12, 0],
      [0, 0, 1],
    ],
    () => [0],
  );
  const draws = drawsOfFit(lax, fitted, 1);
  const deviates = standardDeviates(1, 3, 5, 160);
  const density = (one: readonly number[]) => (1 + one.reduce((sum, each) => sum + each * each, 0) / 5) ** -4;
  const first = (draws[0]?.weight ?? 0) * density(deviates[0] as readonly number[]);
  draws.forEach(({ weight }, at) => {
    expect((weight * density(deviates[at] as readonly number[])) / first).toBeCloseTo(1, 6);
  });
});

test("drawsOfFit(weighed, fitted, seed) leaves out what the model has no figure for", () => {
  const fitted = fittedAt(
    [0.8, 0],
    [
      [0.2, 0],
      [0, 1],
    ],
    ([a = 0]) => [a < 0.8 ? Number.NaN : 2 * (a - 1), 0],
  );
  const draws = drawsOfFit(weighed, fitted, 1);
  expect(draws.length).toBeGreaterThan(60);
  expect(draws.length).toBeLessThan(100);
  expect(draws.every(({ parameters }) => (parameters[0] as number) >= 0.8)).toBe(true);
  expect(draws.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
});

test.each([
  [
    [
      [1, 2],
      [2, 1],
    ],
  ],
  [
    [
      [0, 0],
      [0, 1],
    ],
  ],
  [
    [
      [1, 1],
      [1, 1],
    ],
  ],
])("drawsOfFit(weighed, fitted, seed) is the fit itself where %j is no covariance", (covariance) => {
  expect(
    drawsOfFit(
      weighed,
      fittedAt([3, 4], covariance, () => [0, 0]),
      1,
    ),
  ).toEqual([{ parameters: [3, 4], weight: 1 }]);
});
