import type { Lesson } from "./Lesson.js";
import { airOut } from "./lessons/airOut.js";
import { coarseThenFine } from "./lessons/coarseThenFine.js";
import { cold } from "./lessons/cold.js";
import { finerPores } from "./lessons/finerPores.js";
import { finerSubstitute } from "./lessons/finerSubstitute.js";
import { hotPetrol } from "./lessons/hotPetrol.js";
import { nominalAndAbsolute } from "./lessons/nominalAndAbsolute.js";
import { readingTheGauge } from "./lessons/readingTheGauge.js";
import { twoInParallel } from "./lessons/twoInParallel.js";

/**
 * Every lesson, in the order they are taught.
 *
 * To add one: a file in `lessons/` that exports a `Lesson`, and its line here. `tell` gets the demonstration machines and
 * works everything out from them with the study; text is written with `text` and holds its figures as `of(value, kind)`,
 * so that they follow the units of the page. A figure is never typed, nor is which choice is right: both come of an
 * answer, and `lessons.test.ts` fails where they do not. What `Told` asks for is all there is; the elements, the printed
 * sheets, the contents and the kept progress take it from there.
 */
export const lessons: readonly Lesson[] = [
  finerPores,
  nominalAndAbsolute,
  coarseThenFine,
  twoInParallel,
  cold,
  finerSubstitute,
  readingTheGauge,
  hotPetrol,
  airOut,
];
