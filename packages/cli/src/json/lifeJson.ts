import type {
  CleanlinessRow,
  ElementRow,
  LifeAnswer,
  LifeCaution,
  LifeReason,
  LifeSpread,
  Measures,
  PartialChange,
  WaterAnswer,
} from "@thirstline/study";
import { figure } from "./figure.js";

const BEYOND = "no limit met within ten years of duty";

/** An answer to `life` for programs: SI, every figure with its unit. */
export function lifeJson(answer: LifeAnswer) {
  const { question, system, pump, verdict, end, range, interval, change, spread, protection, water, trace } = answer;
  return {
    question,
    system,
    pump,
    verdict,
    reasons: answer.reasons.map(reasonJson),
    cautions: answer.cautions.map(cautionJson),
    horizon: seconds(answer.horizon, "not worked out"),
    year: seconds(answer.year, "not stated"),
    end: end && {
      ...measuresJson(end),
      by: end.by,
      pointTemperature: figure(end.pointTemperature, "K", "not known"),
    },
    range: range && { early: seconds(range.early, BEYOND), late: seconds(range.late, BEYOND) },
    interval: interval && {
      time: seconds(interval.time, "not stated"),
      atMost: seconds(interval.atMost, "not stated"),
      source: interval.source,
    },
    change: change && { ...measuresJson(change), by: change.by },
    spread: spread && spreadJson(spread),
    elements: answer.elements.map(elementJson),
    partial: answer.partial.map(partialJson),
    cleanliness: answer.cleanliness.map(cleanlinessJson),
    protection,
    water: water && waterJson(water),
    trace: {
      time: { value: trace.time, unit: "s" },
      vacuum: column(trace.vacuum, "Pa", "shut"),
      feed: column(trace.feed, "Pa", "not known for this pump, or shut"),
    },
  };
}

function seconds(value: number | null, reason: string) {
  return figure(value, "s", reason);
}

function measuresJson({ time, burnt, distance, years, date, hourMeter, distanceMeter }: Measures) {
  return {
    time: seconds(time, "not known"),
    burnt: figure(burnt, "m3", "not known"),
    distance: figure(distance, "m", "no distance a year is stated"),
    years: figure(years, "1", "not known"),
    date,
    hourMeter: seconds(hourMeter, "no reading is stated"),
    distanceMeter: figure(distanceMeter, "m", "no reading, or no distance a year, is stated"),
  };
}

function spreadJson({ low, middle, high, atMost, draws, ...own }: LifeSpread) {
  const chance = (one: { readonly chance: number; readonly chanceError: number }) => ({
    chance: figure(one.chance, "1", "not known"),
    chanceError: figure(one.chanceError, "1", "not known"),
  });
  return {
    low: seconds(low, BEYOND),
    middle: seconds(middle, BEYOND),
    high: seconds(high, BEYOND),
    ...chance(own),
    atMost: atMost && chance(atMost),
    draws: figure(draws, "1", "none"),
  };
}

function elementJson(row: ElementRow) {
  return {
    name: row.name,
    soilAtStart: figure(row.soilAtStart, "kg", "plugged"),
    soil: figure(row.soil, "kg", "plugged"),
    water: figure(row.water, "kg", "not known"),
    restriction: figure(row.restriction, "1", "plugged"),
    dropClean: figure(row.dropClean, "Pa", "nothing flows"),
    drop: figure(row.drop, "Pa", "nothing flows"),
    share: figure(row.share, "1", "not known"),
  };
}

function partialJson({ element, time, shares }: PartialChange) {
  return {
    element,
    time: seconds(time, BEYOND),
    shares: shares.map((share) => ({
      element: share.element,
      before: figure(share.before, "1", "nothing flows"),
      after: figure(share.after, "1", "nothing flows"),
    })),
  };
}

function cleanlinessJson({ place, code, solids, counts: [at4, at6, at14] }: CleanlinessRow) {
  // Counts are per mL in the standard; SI has them per m3.
  const count = (value: number) => figure(value * 1e6, "1/m3", "not known");
  return {
    place,
    code,
    solids: figure(solids, "kg/m3", "not known"),
    counts: { at4: count(at4), at6: count(at6), at14: count(at14) },
  };
}

function waterJson({ season, temperature, total, dissolved, free, carriedOn, stages }: WaterAnswer) {
  return {
    season,
    temperature: figure(temperature, "K", "not known"),
    total: figure(total, "kg/m3", "not stated"),
    dissolved: figure(dissolved, "kg/m3", "how much this fuel dissolves is not known"),
    free: figure(free, "kg/m3", "not known"),
    carriedOn: figure(carriedOn, "kg/m3", "not known"),
    stages: stages.map((row) => ({
      element: row.element,
      kind: row.kind,
      efficiency: figure(row.efficiency, "1", "not known"),
      rate: figure(row.rate, "kg/s", "not known"),
      drainEvery: seconds(row.drainEvery, "no bowl that fills"),
      shutAfter: seconds(row.shutAfter, "water alone never shuts it"),
    })),
  };
}

function column(given: readonly (number | null)[], unit: string, reason: string) {
  const value = given.map((one) => (one !== null && Number.isFinite(one) ? one : null));
  return value.includes(null) ? { value, unit, reason } : { value, unit };
}

export function reasonJson(reason: LifeReason) {
  if (reason.code !== "unsettled") return reason;
  return { code: reason.code, early: seconds(reason.early, BEYOND), late: seconds(reason.late, BEYOND) };
}

function cautionJson(caution: LifeCaution) {
  switch (caution.code) {
    case "dirty delivery":
      return {
        code: caution.code,
        after: seconds(caution.after, "not known"),
        volume: figure(caution.volume, "m3", "not known"),
      };
    case "extrapolated":
      return { ...caution, share: figure(caution.share, "1", "not known") };
    case "judged at the worst":
      return { ...caution, coldest: figure(caution.coldest, "K", "not known") };
    case "season not judged":
      return { ...caution, temperature: figure(caution.temperature, "K", "not known") };
    case "capture":
      return { ...caution, caution: captureJson(caution.caution) };
    default:
      return caution;
  }
}

function captureJson(caution: Extract<LifeCaution, { code: "capture" }>["caution"]) {
  if (caution.code !== "beta moved") return caution;
  return {
    ...caution,
    size: figure(caution.size, "m", "not known"),
    stated: figure(caution.stated, "1", "not known"),
    held: figure(caution.held, "1", "not known"),
  };
}
