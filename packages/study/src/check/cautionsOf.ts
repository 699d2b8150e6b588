import { type FuelState, freedAir, LAMINAR_END, type Supply } from "@thirstline/core";
import type { Caution, CheckPoint } from "./CheckAnswer.js";
import type { Row, Rows } from "./rows.js";

/** What the figures of a point are to be read with. */
export interface PointFacts {
  readonly supply: Supply;
  readonly altitude: number;
  readonly fuel: FuelState;
  readonly densityAt15: number;
  readonly returned: number;
  readonly rows: Rows;
  readonly lowest: CheckPoint["lowest"];
  readonly vacuum: number;
  readonly hasBore: boolean;
}

/** Less than this over the vapour pressure is worth a word, Pa; common practice, no source. */
const SLIM_VAPOUR_MARGIN = 10e3;
/** Share of gas freed from the fuel that is worth a word; common practice, no source. */
const MUCH_AIR = 0.02;
/** Height from which the thinner air is worth a word, m; common practice, no source. */
const HIGH_PLACE = 300;

/** Everything worth a word, in the order it should be read. */
export function cautionsOf(facts: PointFacts): Caution[] {
  return [
    ...facts.fuel.cautions.map((caution): Caution => ({ code: "fuel", caution })),
    ...tankCautions(facts),
    ...[...facts.rows.suction, ...facts.rows.delivery].flatMap(partCautions),
    ...placeCautions(facts),
    ...pumpCautions(facts),
  ];
}

function tankCautions({ supply, rows }: PointFacts): Caution[] {
  const blocked = supply.tanks.flatMap((tank, at): Caution[] =>
    tank.vent.kind === "blocked" ? [{ code: "vent blocked", tank: tank.name ?? `tank ${at + 1}` }] : [],
  );
  const backward = rows.suction.flatMap((row): Caution[] =>
    row.kind === "tank" && row.flow < 0 ? [{ code: "tank runs backwards", tank: row.name, flow: -row.flow }] : [],
  );
  return [...blocked, ...backward];
}

function partCautions(row: Row): Caution[] {
  const { part, name, reynolds, regime } = row;
  if (part === null) return [];
  const found: Caution[] = [];
  if (regime === "transitional") found.push({ code: "transitional", part: name, reynolds: reynolds ?? 0 });
  if (part.kind === "fitting" && part.loss.by === "k" && reynolds !== null && reynolds < LAMINAR_END && reynolds > 0) {
    found.push({ code: "constant K in laminar flow", part: name, reynolds });
  }
  if (part.kind === "orifice" && reynolds !== null && reynolds > 0 && reynolds < 1e4) {
    found.push({ code: "orifice at low Reynolds number", part: name, reynolds });
  }
  if (part.kind === "strainer") found.push({ code: "strainer laws", part: name });
  if (part.kind === "filter") {
    const { low, high } = part.medium.linear;
    if (high > low) {
      found.push({ code: "estimated medium", part: name, source: part.medium.source, factor: Math.sqrt(high / low) });
    }
    if (part.reversed) found.push({ code: "reversed", part: name });
    if (part.restriction > 1 && part.medium.source === "one-point flow test" && part.housing === null) {
      found.push({ code: "housing share unknown", part: name });
    }
  }
  return found;
}

function placeCautions({ supply, altitude, fuel, lowest, vacuum, densityAt15 }: PointFacts): Caution[] {
  const found: Caution[] = [];
  if (altitude >= HIGH_PLACE) found.push({ code: "altitude", altitude, ambientPressure: supply.ambientPressure });
  if (lowest) {
    const margin = lowest.pressure.low - fuel.vapourPressure;
    if (margin < SLIM_VAPOUR_MARGIN) found.push({ code: "vapour margin", margin, part: lowest.part });
    const inlet = supply.ambientPressure - vacuum;
    // Under the air's pressure too: with the tank above, the highest point of a path without a pump is no low point.
    if (lowest.pressure.middle < Math.min(inlet, supply.ambientPressure) - 1000) {
      found.push({ code: "low point in the path", pressure: lowest.pressure.middle, part: lowest.part });
    }
  }
  const air = freedShare(fuel, densityAt15, supply.ambientPressure, vacuum);
  if (air > MUCH_AIR) found.push({ code: "freed air", share: air, vacuum });
  return found;
}

function pumpCautions({ supply, returned, hasBore }: PointFacts): Caution[] {
  const found: Caution[] = [];
  if (!hasBore) found.push({ code: "no bore at the pump" });
  if (supply.delivery === null && supply.pump.kind !== "none") found.push({ code: "delivery not judged" });
  if (returned > 0) found.push({ code: "return heat ignored" });
  return found;
}

/** Gas over fuel by volume at the pump's inlet; 0 where the method does not reach. */
function freedShare(fuel: FuelState, densityAt15: number, ambient: number, vacuum: number): number {
  const { temperature } = fuel;
  const pressure = ambient - vacuum;
  const reached = densityAt15 >= 630 && densityAt15 <= 900 && pressure > 0 && vacuum > 0;
  if (temperature === undefined || temperature < 228 || temperature > 423 || !reached) return 0;
  return freedAir({ densityAt15, temperature, saturatedAt: ambient, pressure });
}
