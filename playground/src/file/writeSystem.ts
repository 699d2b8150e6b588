import type { System, SystemDeliveredFuel, SystemDuty, SystemService, SystemTank } from "@thirstline/spec/system";
import { degrees } from "./degrees.js";
import { Pen, type Readers } from "./Pen.js";
import { writeFuel } from "./writeFuel.js";
import { writePath } from "./writeParts.js";
import { writePump } from "./writePump.js";
import { type Block, yamlOf } from "./yaml.js";

/**
 * A system as a file: what `readSystem` makes of the text is the very same system, to the last bit.
 *
 * @param system as on the page
 * @param readers read figures back; one is written in its usual unit only where that gives it back unchanged
 */
export function writeSystem(system: System, readers: Readers): string {
  const pen = new Pen(readers, system.spreads ?? []);
  const { limits, duty, deliveredFuel: delivered, service, delivery } = system;
  const [tank, ...more] = system.tanks;
  const tankPen = (at: number) => pen.in("tanks", at);
  const most = (value: number | undefined, key: string) =>
    pen.in("limits").maybe(value, { key, unit: "pressure", kind: key === "feedPressure" ? "pressure" : "vacuum" });
  return yamlOf({
    format: system.format,
    name: system.name,
    fuel: writeFuel(system.fuel, system.temperature, pen),
    place: { altitude: pen.write(system.altitude, { key: "altitude", unit: "length", kind: "altitude" }) },
    demand: demandBlock(system, pen.in("demand")),
    tank: tank && more.length === 0 ? tankBlock(tank, tankPen(0)) : undefined,
    tanks:
      more.length === 0
        ? undefined
        : system.tanks.map((one, at) => ({
            ...tankBlock(one, tankPen(at)),
            path: writePath(one.path, tankPen(at).in("path")),
          })),
    suction: writePath(system.suction, pen.in("suction")),
    pump: writePump(system.pump, pen.in("pump")),
    delivery: delivery && writePath(delivery, pen.in("delivery")),
    limits: some({
      "vacuum clean": most(limits.vacuumClean, "vacuumClean"),
      "vacuum at change": most(limits.vacuumAtChange, "vacuumAtChange"),
      "feed pressure": most(limits.feedPressure, "feedPressure"),
      source: limits.source,
    }),
    protection: system.protection && { code: system.protection.code },
    duty: duty && dutyBlock(duty, pen.in("duty")),
    "delivered fuel": delivered && deliveredBlock(delivered, pen.in("deliveredFuel")),
    service: service && serviceBlock(service, pen.in("service")),
  });
}

/** A block, or nothing where nothing stands in it. */
function some(block: Block): Block | undefined {
  return Object.values(block).some((value) => value !== undefined) ? block : undefined;
}

function dutyBlock(duty: SystemDuty, pen: Pen): Block {
  return {
    "hours a day": duty.hoursADay,
    "days a year": duty.daysAYear,
    distance: pen.maybe(duty.distance, { key: "distance", unit: "distance", kind: "distance" }),
    starts: duty.starts,
    loads: duty.loads?.map((one, at) => ({
      load: pen.in("loads", at).share(one.load, "load"),
      share: pen.in("loads", at).share(one.share, "share"),
    })),
    seasons: duty.seasons?.map(({ name, share, temperature }, at) => ({
      name,
      ...lengthOf(share, pen.in("seasons", at)),
      temperature: pen.in("seasons", at).write(temperature, degrees("temperature")),
    })),
  };
}

/** In months, as people say it, where that gives the very same share; else as a share of the year. */
function lengthOf(share: number, pen: Pen): Block {
  const written = pen.share(share, "share");
  const months = Number((share * 12).toPrecision(12));
  return typeof written === "number" && months / 12 === share ? { months } : { share: written };
}

function deliveredBlock({ dirtyDelivery: dirty, held, water, ...solids }: SystemDeliveredFuel, pen: Pen): Block {
  const dirtyPen = pen.in("dirtyDelivery");
  return {
    ...solidsBlock(solids, pen),
    water: pen.maybe(water, { key: "water", unit: "concentration", kind: "concentration" }),
    held: held === "delivered fuel" ? "delivered" : held,
    "dirty delivery": dirty && {
      after: dirtyPen.write(dirty.after, { key: "after", unit: "time", kind: "runningTime" }),
      volume: dirtyPen.write(dirty.volume, { key: "volume", unit: "volume", kind: "volume" }),
      ...solidsBlock(dirty, dirtyPen),
    },
  };
}

function solidsBlock({ code, solids, dust, counts }: SystemDeliveredFuel, pen: Pen): Block {
  return {
    code,
    solids: pen.maybe(solids, { key: "solids", unit: "concentration", kind: "concentration" }),
    dust,
    counts: counts && { "4 um": counts.at4, "6 um": counts.at6, "14 um": counts.at14 },
  };
}

function serviceBlock(service: SystemService, pen: Pen): Block {
  const { interval, atMost, distance, calendar, last, primer, source } = service;
  const time = { unit: "time", kind: "duration" } as const;
  return {
    interval: pen.write(interval, { key: "interval", ...time }),
    "at most": pen.maybe(atMost, { key: "atMost", ...time }),
    distance: pen.maybe(distance, { key: "distance", unit: "distance", kind: "distance" }),
    calendar: pen.maybe(calendar, { key: "calendar", unit: "calendar", kind: "calendar" }),
    last: last && {
      date: last.date,
      hours: pen.in("last").maybe(last.hours, { key: "hours", unit: "time", kind: "runningTime" }),
      distance: pen.in("last").maybe(last.distance, { key: "distance", unit: "distance", kind: "odometer" }),
    },
    primer: pen.maybe(primer, { key: "primer", unit: "water", kind: "stroke" }),
    source,
  };
}

function demandBlock({ demand }: System, pen: Pen): Block {
  const back = pen.write(demand.return, { key: "return", unit: "flow", kind: "flowOrNone" });
  if ("burn" in demand)
    return { burn: pen.write(demand.burn, { key: "burn", unit: "flow", kind: "flow" }), return: back };
  return {
    power: pen.write(demand.power, { key: "power", unit: "power", kind: "power" }),
    "specific consumption": pen.write(demand.specificConsumption, {
      key: "specificConsumption",
      unit: "consumption",
      kind: "specificConsumption",
    }),
    return: back,
  };
}

function tankBlock({ name, fullDepth, lowDepth, vent, volume }: SystemTank, pen: Pen): Block {
  return {
    name,
    "full depth": pen.write(fullDepth, { key: "fullDepth", unit: "length", kind: "depth" }),
    "low depth": pen.write(lowDepth, { key: "lowDepth", unit: "length", kind: "depth" }),
    vent:
      vent.kind === "spring"
        ? { opening: pen.in("vent").write(vent.opening, { key: "opening", unit: "pressure", kind: "opening" }) }
        : vent.kind,
    volume: pen.maybe(volume, { key: "volume", unit: "volume", kind: "volume" }),
  };
}
