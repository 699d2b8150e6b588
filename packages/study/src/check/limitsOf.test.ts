import type { Built } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { limitsOf } from "./limitsOf.js";

const INCH_OF_MERCURY = 3386.388640341;
const [CLEAN, AT_CHANGE] = [6 * INCH_OF_MERCURY, 12 * INCH_OF_MERCURY];
const built = (limits: object, kind = "fixed", composition: object = { diesel: 1 }) =>
  ({ limits, pump: { kind }, fuel: { composition } }) as unknown as Built;
const found = (...given: Parameters<typeof built>) => limitsOf(built(...given));
const known = (limits: object) => ({ limits, cautions: [], complete: true });

test("limitsOf(built) is what the file states, where it states both limits of vacuum", () => {
  const limits = { vacuumClean: 20e3, vacuumAtChange: 40e3, feedPressure: 25e3 };
  expect(found(limits)).toEqual(known(limits));
  expect(found({ vacuumClean: 20e3, vacuumAtChange: 40e3 })).toEqual(
    known({ vacuumClean: 20e3, vacuumAtChange: 40e3 }),
  );
});

test.each([
  [{}],
  [{ vacuumClean: 20e3 }],
  [{ vacuumAtChange: 40e3 }],
  [{ vacuumClean: 20e3, vacuumAtChange: 40e3, feedPressure: 2e3 }],
])("limitsOf(built) without a pump is %j and no more: the head spent is limit enough", (limits) => {
  const answer = found(limits, "none");
  expect(answer).toEqual(known(limits));
  expect(Object.keys(answer.limits)).toEqual(Object.keys(limits));
});

describe("limitsOf(built) of diesel lifted by a mechanical pump takes published guidance for what is not stated", () => {
  test.each([
    [{}, "both", CLEAN, AT_CHANGE],
    [{ vacuumAtChange: 30e3 }, "clean", CLEAN, 30e3],
    [{ vacuumAtChange: 15e3 }, "clean", 15e3, 15e3],
    [{ vacuumClean: 15e3 }, "at change", 15e3, AT_CHANGE],
    [{ vacuumClean: 45e3 }, "at change", 45e3, 45e3],
  ])("%j: %s", (limits, which, vacuumClean, vacuumAtChange) => {
    const answer = found(limits);
    expect(answer.limits).toEqual({ vacuumClean, vacuumAtChange });
    expect(answer).toMatchObject({ complete: true, cautions: [{ code: "limit assumed", which }] });
  });

  test("with the feed pressure beside it, as stated", () => {
    expect(found({ feedPressure: 25e3 }).limits).toMatchObject({ feedPressure: 25e3 });
  });

  test.each([
    [{ biodiesel: 1 }],
    [{ paraffinic: 1 }],
    [{ diesel: 0.4, biodiesel: 0.3, paraffinic: 0.3 }],
    [{ diesel: 0.995, petrol: 0.005 }],
  ])("and so of %j", (composition) => expect(found({}, "fixed", composition).cautions).toHaveLength(1));
});

describe("limitsOf(built) of petrol, or of a pulse pump, has no guidance to take", () => {
  test.each([
    ["fixed", { petrol: 1 }],
    ["fixed", { diesel: 0.9, petrol: 0.1 }],
    ["fixed", {}],
    ["pulse", { diesel: 1 }],
    ["curve", { diesel: 1 }],
  ])("%s %j", (kind, composition) => {
    expect(found({ feedPressure: 25e3 }, kind, composition)).toEqual({
      limits: { feedPressure: 25e3 },
      cautions: [],
      complete: false,
    });
    expect(found({ vacuumAtChange: 13e3 }, kind, composition)).toEqual(known({ vacuumAtChange: 13e3 }));
    expect(found({ vacuumClean: 10e3 }, kind, composition)).toEqual({
      limits: { vacuumClean: 10e3, vacuumAtChange: 10e3 },
      cautions: [{ code: "clean limit used at change" }],
      complete: true,
    });
  });
});
