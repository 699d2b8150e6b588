import { expect, test } from "vitest";
import type { GroundReason } from "../check/ground.js";
import { groundWords } from "./groundWords.js";
import { plain } from "./words.js";

const ICE = 273.15;
const waxed = { code: "below cloud point", cloudPoint: ICE - 16 } as const;

const said: readonly (readonly [GroundReason, string])[] = [
  [{ code: "shut", by: "tank cock" } as GroundReason, "nothing can pass tank cock"],
  [
    { ...waxed, starvesAnyway: false } as GroundReason,
    "the fuel is below its cloud point of -16 °C, where wax plugs filters whatever the viscosity",
  ],
  [
    { ...waxed, starvesAnyway: true } as GroundReason,
    "the fuel is below its cloud point of -16 °C, where wax plugs filters whatever the viscosity; even free of wax it would starve",
  ],
  [
    { code: "cloud point not known", limit: ICE + 5 } as GroundReason,
    "the cloud point is not given, and fuel of this kind may carry wax below 5 °C",
  ],
  [
    { code: "fuel out of range", from: ICE - 20, to: Infinity } as GroundReason,
    "no data back this fuel's figures below -20 °C",
  ],
  [
    { code: "fuel out of range", from: 0, to: ICE + 60 } as GroundReason,
    "no data back this fuel's figures above 60 °C",
  ],
];

test.each(said)("groundWords(%j, 'metric') says why no figure is a promise", (reason, words) => {
  expect(plain(groundWords(reason, "metric"))).toBe(words);
});
