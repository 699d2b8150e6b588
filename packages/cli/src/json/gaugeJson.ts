import type {
  Finding,
  GaugeAnswer,
  GaugeCaution,
  GaugeElement,
  GaugeReason,
  HoursLeft,
  Interval,
  Outlier,
  ReadingPlace,
  SideAnswer,
} from "@thirstline/study";
import { figure } from "./figure.js";

/** An answer to `gauge` for programs: SI, every figure with its unit. */
export function gaugeJson(answer: GaugeAnswer) {
  const { question, system, pump, verdict, left, leftWithout, readings } = answer;
  return {
    question,
    system,
    pump,
    verdict,
    findings: answer.findings.map(findingJson),
    reasons: answer.reasons.map(reasonJson),
    cautions: answer.cautions.map(cautionJson),
    outliers: answer.outliers.map(outlierJson),
    left: left && leftJson(left),
    leftWithout: leftWithout && leftJson(leftWithout),
    sides: answer.sides.map(sideJson),
    readings: { all: count(readings.all), used: count(readings.used) },
  };
}

const count = (value: number) => figure(value, "1", "none");
const pressure = (value: number | null) => figure(value, "Pa", "not known");
const seconds = (value: number | null) => figure(value, "s", "no end to it");

function placeJson({ row, line }: ReadingPlace) {
  return { row: count(row), line: figure(line, "1", "typed by itself") };
}

function intervalJson({ low, middle, high }: Interval, unit: string) {
  const end = (value: number) => figure(value, unit, "no end to it");
  return { low: end(low), middle: end(middle), high: end(high) };
}

function leftJson(left: HoursLeft) {
  return {
    ...intervalJson(left, "s"),
    by: left.by,
    pointTemperature: figure(left.pointTemperature, "K", "not known"),
    hourMeter: figure(left.hourMeter, "s", "readings have dates only"),
    sinceStart: seconds(left.sinceStart),
  };
}

function findingJson(finding: Finding) {
  const by = "by" in finding ? { by: pressure(finding.by) } : {};
  const from = "from" in finding ? { from: finding.from && placeJson(finding.from) } : {};
  const weakBy = "weakBy" in finding ? { weakBy: pressure(finding.weakBy) } : {};
  const coldest = "coldest" in finding ? { coldest: figure(finding.coldest, "K", "not known") } : {};
  return { ...finding, ...by, ...from, ...weakBy, ...coldest };
}

function outlierJson({ side, read, expected, deviations, ...place }: Outlier) {
  return {
    ...placeJson(place),
    side,
    read: pressure(read),
    expected: pressure(expected),
    deviations: count(deviations),
  };
}

function sideJson(side: SideAnswer) {
  const column = (value: readonly number[], unit: string) => ({ value, unit });
  return {
    side: side.side,
    readings: count(side.readings),
    elements: side.elements.map(elementJson),
    scatter: pressure(side.scatter),
    gaugeError: { ...pressure(side.gaugeError.value), by: side.gaugeError.by },
    demand: count(side.demand),
    zero: pressure(side.zero),
    laws: side.laws.map(({ law, mix, weight }) => ({
      law,
      mix: figure(mix, "1", "a law of one constant"),
      weight: count(weight),
    })),
    trend: side.trend,
    trace: {
      time: column(side.trace.time, "s"),
      read: column(side.trace.read, "Pa"),
      reckoned: column(side.trace.reckoned, "Pa"),
    },
  };
}

function elementJson({ name, ratio, dropClean, drop, roomUsed }: GaugeElement) {
  return {
    name,
    ratio: intervalJson(ratio, "1"),
    dropClean: pressure(dropClean),
    drop: pressure(drop),
    roomUsed: figure(roomUsed, "1", "no limit is met"),
  };
}

function reasonJson(reason: GaugeReason) {
  switch (reason.code) {
    case "too few readings":
      return { ...reason, count: count(reason.count), needed: count(reason.needed) };
    case "no trend":
      return { ...reason, count: count(reason.count) };
    case "too wide":
      return { ...reason, low: seconds(reason.low), high: seconds(reason.high) };
    default:
      return reason;
  }
}

function cautionJson(caution: GaugeCaution) {
  switch (caution.code) {
    case "earlier readings":
    case "load taken":
      return { ...caution, count: count(caution.count) };
    case "temperature taken":
      return { ...caution, count: count(caution.count), temperature: figure(caution.temperature, "K", "not known") };
    case "level taken":
      return { ...caution, count: count(caution.count), range: pressure(caution.range) };
    case "after the jump":
      return { ...caution, from: placeJson(caution.from), count: count(caution.count) };
    case "file and machine apart":
      return { ...caution, share: count(caution.share) };
    default:
      return caution;
  }
}
