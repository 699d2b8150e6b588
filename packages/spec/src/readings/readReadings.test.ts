import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { formatFault } from "../read/formatFault.js";
import { readingsForm } from "./readingsForm.js";
import { readReadings } from "./readReadings.js";
import { typedReadings } from "./typedReadings.js";

const demo = new URL("../../demo/readings/", import.meta.url);
const file = "r.csv";

function readingsOf(text: string) {
  const read = readReadings(text, { file });
  if ("faults" in read) throw new Error(read.faults.map(formatFault).join("\n"));
  return read.readings;
}

function faultsOf(text: string | Uint8Array): string[] {
  const read = readReadings(text, { file });
  return "faults" in read ? read.faults.map(formatFault) : [];
}

describe("readReadings(text, { file })", () => {
  test("takes units from heads and from cells, into SI", () => {
    const [one, other] = readingsOf(
      "Hours (h);Vacuum (inHg);Feed pressure;Load (%);Temperature (degF);Tank level (m);Changed;Note\n" +
        "11450;4;45 kPa;75;59;0.4;yes;all new\n11460;12 kPa;6 psi;100 %;20 degC;;;\n",
    );
    expect(one).toEqual({
      row: 1,
      line: 2,
      hours: 11450 * 3600,
      vacuum: expect.closeTo(13545.554561364, 6),
      feedPressure: 45000,
      load: 0.75,
      temperature: expect.closeTo(288.15, 9),
      depth: 0.4,
      changed: true,
      note: "all new",
    });
    expect(other).toMatchObject({ vacuum: 12000, load: 1, temperature: expect.closeTo(293.15, 9), changed: false });
    expect(other).not.toHaveProperty("depth");
  });

  test.each(["changed", "Changed", "filters changed", "changed all", "renewed"])(
    'takes the note "%s" for a change',
    (note) => {
      expect(readingsOf(`hours (h),vacuum (kPa),note\n1,2,${note}\n`)[0]?.changed).toBe(true);
    },
  );

  test('does not take the note "not changed" for one', () => {
    expect(readingsOf("hours (h),vacuum (kPa),note\n1,2,not changed\n")[0]?.changed).toBe(false);
  });

  test("tells every fault at once, with its line", () => {
    const text = "hours (h),vacuum (kPa),load,changed\n11450,14,90 %,\n11440,x,0 %,perhaps\n,14,80 %,\n11500,200,1,\n";
    expect(faultsOf(text)).toEqual([
      'r.csv:3 vacuum: "x" is not one number with one unit; write a vacuum reading such as "14 kPa"',
      'r.csv:3 load: "0 %" is not a load an engine runs at; more than 0 to 150 % makes sense',
      'r.csv:3 changed: "perhaps" does not say whether elements were changed; write yes, or leave it empty',
      "r.csv:4 hours: neither hours nor a date; write what the hour meter showed, or the day",
      'r.csv:5 vacuum: "200 kPa" is too large for a vacuum reading; -100 kPa to 101.325 kPa makes sense, such as "14 kPa"',
      'r.csv:5 load: "1" has no unit; write it as "1 %"',
    ]);
  });

  test("refuses readings that go back in time", () => {
    expect(faultsOf("hours (h),vacuum (kPa)\n100,1\n90,1\n")).toEqual([
      "r.csv:3 hours: 90 h is less than 100 h above it; put readings in order of time, and go on counting where a new hour meter was fitted",
    ]);
    expect(faultsOf("date,vacuum (kPa)\n2026-03-02,1\n2026-03-01,1\n")[0]).toContain("2026-03-01 is before 2026-03-02");
  });

  test("asks for time and for a gauge", () => {
    expect(faultsOf("load (%)\n90\n")).toEqual([
      'r.csv:1: no column "hours (h)" or "date"; the first row names the columns',
      'r.csv:1: no column "vacuum (kPa)" or "feed pressure (kPa)"; the first row names the columns',
    ]);
    expect(faultsOf("hours (h),vacuum (kPa)\n")).toEqual(["r.csv:1: no reading under the heads"]);
    expect(faultsOf("")).toHaveLength(1);
  });

  test("is bounded, and yields no figure from bytes that are no text", () => {
    const row = "1,2\n";
    const many = `hours (h),vacuum (kPa)\n${row.repeat(readingsForm.bounds.rows + 1)}`;
    expect(faultsOf(many)).toEqual([
      `r.csv:${readingsForm.bounds.rows + 2}: more than 20000 readings; leave out the oldest`,
    ]);
    expect(faultsOf("x".repeat(readingsForm.bounds.bytes + 1))[0]).toContain("more than 4 MB");
    expect(faultsOf(Uint8Array.from([0x68, 0xff, 0xfe]))[0]).toContain("not UTF-8");
    expect(faultsOf(`hours (h),vacuum (kPa)\n${"a,b\n".repeat(500)}`)).toHaveLength(101);
  });

  test("reads every demonstration", () => {
    const names = readdirSync(demo);
    expect(names.length).toBeGreaterThan(0);
    for (const name of names)
      expect(readingsOf(readFileSync(new URL(name, demo), "utf8")).length, name).toBeGreaterThan(20);
  });
});

describe("typedReadings(texts)", () => {
  test("knows each piece by its unit, and those that share one by their word", () => {
    expect(
      typedReadings([
        "11450 h, 14 kPa, feed 45 kPa, 100 %, 12 degC, level 0.4 m",
        "11460 h, flow 300 L/h, vacuum 4 inHg, changed",
      ]),
    ).toEqual({
      readings: [
        {
          row: 1,
          line: null,
          hours: 41_220_000,
          vacuum: 14000,
          feedPressure: 45000,
          load: 1,
          temperature: 285.15,
          depth: 0.4,
          changed: false,
        },
        {
          row: 2,
          line: null,
          hours: 41_256_000,
          flow: expect.closeTo(300 / 3.6e6, 12),
          vacuum: expect.closeTo(13545.55, 2),
          changed: true,
        },
      ],
    });
  });

  test.each([
    ["11450 h, 14", '"14" has no unit; write it as "11450 h, 14 kPa, feed 45 kPa, 100 %, 12 degC"'],
    ["14 kPa", '"14 kPa" has neither hours nor a date; begin with one, such as "11450 h"'],
    ["11450 h", '"11450 h" has no gauge reading; add one such as "14 kPa" or "feed 45 kPa"'],
    ["11450 h, 14 kPa, 3 kPa", '"3 kPa" is a second vacuum reading; keep one'],
    [
      "11450 h, 200 bar",
      '"200 bar" is too large for a vacuum reading; -100 kPa to 101.325 kPa makes sense, such as "14 kPa"',
    ],
    ["2026-02-30, 14 kPa", '"2026-02-30": February 2026 has days 1 to 28; write the day such as 2026-11-25'],
  ])("refuses %j and says what would be right", (text, message) => {
    expect(typedReadings([text])).toEqual({ messages: [message] });
  });

  test("refuses readings that go back in time", () => {
    expect(typedReadings(["20 h, 1 kPa", "10 h, 1 kPa"])).toHaveProperty("messages", [
      expect.stringContaining("10 h is less than 20 h"),
    ]);
  });
});
