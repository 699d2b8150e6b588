import type { LogEntry } from "@thirstline/spec/system";
import { dateOf, dayOf, fleet, fleetCalendar } from "@thirstline/study";
import fc from "fast-check";
import { expect, test } from "vitest";
import { demoSystem, machineOf, unpredicted } from "../../support/fleets.js";
import { calendarText, readCalendar } from "../../support/readCalendar.js";

const system = unpredicted(demoSystem("heron"));
const ON = "2026-11-25";

/** Names as people give them, and as nobody should. */
const aName = fc
  .oneof(
    fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 }),
    fc.string({
      unit: fc.constantFrom("ä", "船", "🚢", ",", ";", "\\", ":", '"', " ", "n", "%"),
      minLength: 1,
      maxLength: 90,
    }),
  )
  .filter((name) => name.trim() !== "");

const aYard = fc
  .uniqueArray(fc.record({ name: aName, days: fc.integer({ min: 0, max: 200 }) }), {
    minLength: 1,
    maxLength: 8,
    selector: ({ name }) => name,
  })
  .map((all) => ({
    machines: all.map(({ name }) => machineOf(name, system)),
    log: all.map(
      ({ name, days }): LogEntry => ({
        machine: name,
        date: dateOf(dayOf(ON) - days),
        hours: 3600 * 1000,
        event: { kind: "changed", element: null },
      }),
    ),
  }));

const bytesOf = (text: string) => new TextEncoder().encode(text);

test("fleetCalendar(answer) keeps the rules of RFC 5545 (from memory) and reads back as what is due", async () => {
  let events = 0;
  await fc.assert(
    fc.asyncProperty(aYard, async ({ machines, log }) => {
      const answer = fleet(machines, log, { on: ON });
      const calendar = readCalendar(bytesOf(await fleetCalendar(answer)));
      expect(calendar.name).toBe("VCALENDAR");
      const of = (name: string) => calendar.lines.filter((line) => line.name === name).map(({ value }) => value);
      expect([of("VERSION"), of("PRODID").length]).toEqual([["2.0"], 1]); // both once, as the rules demand
      const due = answer.entries.filter(({ group }) => group !== "later" && group !== "cannot say");
      expect(calendar.parts).toHaveLength(due.length);
      const names = new Set<string>();
      for (const [at, { name, lines }] of calendar.parts.entries()) {
        const one = (property: string) => {
          const found = lines.filter((line) => line.name === property);
          expect(found).toHaveLength(1);
          return found[0] as (typeof lines)[number];
        };
        const entry = due[at] as (typeof due)[number];
        const day = entry.due && entry.due.days > 0 ? entry.due.date : ON;
        expect(name).toBe("VEVENT");
        expect(one("DTSTAMP")).toEqual({ name: "DTSTAMP", parameters: [], value: "20261125T000000Z" });
        expect(one("DTSTART")).toMatchObject({ parameters: ["VALUE=DATE"], value: day.replaceAll("-", "") });
        expect(one("DTEND").value).toBe(dateOf(dayOf(day) + 1).replaceAll("-", ""));
        const shown = entry.machine.replace(/\p{Cc}+/gu, " ");
        expect(calendarText(one("SUMMARY").value)).toBe(`${shown}: change prefilter A, prefilter B and fine filter`);
        expect(calendarText(one("DESCRIPTION").value)).toContain(`Due ${entry.due?.date} by`);
        names.add(one("UID").value);
      }
      expect(names.size).toBe(due.length);
      events += due.length;
    }),
    { numRuns: 60 },
  );
  expect(events).toBeGreaterThan(60);
});

test("fleetCalendar(answer) keeps an event's name while its day moves, and gives a new one after a change", async () => {
  const entry = (date: string, h: number, kind: "changed" | "reading"): LogEntry => ({
    machine: "Heron",
    date,
    hours: h * 3600,
    event: kind === "changed" ? { kind, element: null } : { kind },
  });
  const uidOf = async (log: LogEntry[], on: string) => {
    const text = await fleetCalendar(fleet([machineOf("Heron", system)], log, { on }));
    return readCalendar(bytesOf(text)).parts[0]?.lines.find(({ name }) => name === "UID")?.value;
  };
  const log = [entry("2026-11-01", 1000, "changed")];
  const first = await uidOf(log, ON);
  expect(first).toBe("Heron-2026-11-01@thirstline");
  expect(await uidOf([...log, entry("2026-11-25", 1200, "reading")], "2026-11-26")).toBe(first);
  expect(await uidOf([...log, entry("2026-11-25", 1200, "changed")], "2026-11-26")).not.toBe(first);
});

test("fleetCalendar(answer) of nothing due is a calendar without events", async () => {
  const text = await fleetCalendar(fleet([], [], { on: ON }));
  expect(readCalendar(bytesOf(text)).parts).toEqual([]);
});

test("readCalendar(bytes) refuses what breaks the rules", () => {
  const refused = (text: string) => () => readCalendar(bytesOf(text));
  expect(refused("BEGIN:VCALENDAR\nEND:VCALENDAR\n")).toThrow("control character");
  expect(refused(`BEGIN:VCALENDAR\r\nX:${"ä".repeat(37)}\r\nEND:VCALENDAR\r\n`)).toThrow("line 2: 76 octets");
  expect(refused("BEGIN:VCALENDAR\r\n")).toThrow("no end");
  expect(refused("BEGIN:VCALENDAR\r\nEND:VEVENT\r\n")).toThrow("END:VEVENT for VCALENDAR");
  expect(() => calendarText("a, b")).toThrow("bare");
  expect(calendarText("a\\, b\\\\\\; c\\n")).toBe("a, b\\; c\n");
});
