import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { elementAt } from "./elementAt.js";
import { filterPlaces } from "./places.js";
import { sizeNamed } from "./sizeNamed.js";
import { temperaturesOf } from "./temperaturesOf.js";

const { spreads: _, ...heron } = demoSystem("heron");
const [first, second] = filterPlaces(heron);
const spread = (place: typeof first, key: string, group?: number) => ({
  path: [...(place?.path ?? []), key],
  low: 0.9,
  high: 1.1,
  ...(group === undefined ? {} : { group }),
});

test("elementAt(system, name) is the filter at the place, and null where there is none of that name", () => {
  expect(elementAt(heron, "prefilter B")).toEqual({ name: "prefilter B", filter: second?.part, spreads: [] });
  expect(elementAt(heron, "prefilter C")).toBeNull();
});

test("elementAt(system, name) takes the element's own spreads along, by where they stand in it", () => {
  const spreads = [spread(second, "restriction"), spread(first, "restriction")];
  const found = elementAt({ ...heron, spreads } as typeof heron, "prefilter B");
  expect(found?.spreads).toEqual([{ path: ["restriction"], low: 0.9, high: 1.1 }]);
});

test("elementAt(system, name) keeps together what is drawn together in it, and lets go of what it was drawn with elsewhere", () => {
  const spreads = [spread(first, "a", 7), spread(first, "b", 3), spread(first, "c", 7), spread(second, "d", 3)];
  const found = elementAt({ ...heron, spreads } as typeof heron, first?.part.name ?? "");
  expect(found?.spreads?.map((one) => ("group" in one ? one.group : null))).toEqual([0, null, 0]);
});

test("sizeNamed(answer, of) finds an arrangement by the name that workings give it", () => {
  const answer = { arrangements: ["A", "B"], failed: [{ example: "F" }], nearest: "N" } as unknown as Parameters<
    typeof sizeNamed
  >[0];
  const found = ["arrangement 1", "arrangement 2", "failed 0", "failed 1", "nearest", "search"];
  expect(found.map((of) => sizeNamed(answer, of))).toEqual(["B", null, "F", null, "N", null]);
});

test("temperaturesOf(system) has each temperature once, coldest first", () => {
  const seasons = [{ temperature: 300 }, { temperature: 260 }, { temperature: 280 }];
  expect(temperaturesOf({ temperature: 280, duty: { seasons } } as unknown as typeof heron)).toEqual([260, 280, 300]);
  expect(temperaturesOf({ temperature: 280 } as typeof heron)).toEqual([280]);
});
