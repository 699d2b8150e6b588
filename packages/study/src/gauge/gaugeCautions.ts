import type { Finding, GaugeCaution, GaugeSide } from "./GaugeAnswer.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import type { SideFit } from "./SideFit.js";

/** The file's demand and resistances off by so much are worth a word; half as much again as is usual. */
const APART = 0.15;

/** What the figures rest on, in the order it should be read. */
export function gaugeCautions(
  facts: GaugeFacts,
  fits: Readonly<Record<GaugeSide, SideFit | null>>,
  findings: readonly Finding[],
): GaugeCaution[] {
  const { run, suction, delivery, built } = facts;
  const readings = run.readings.map(({ reading }) => reading);
  const count = (missing: (reading: (typeof readings)[number]) => boolean) => readings.filter(missing).length;
  const found: GaugeCaution[] = [{ code: "start", by: run.start.known ? run.start.by : "not known" }];
  if (run.earlier > 0) found.push({ code: "earlier readings", count: run.earlier });
  for (const side of ["suction", "delivery"] as const) {
    const path = facts[side];
    if (fits[side] === null || path.names.length < 2) continue;
    if (path.by === "equal soil") found.push({ code: "equal soil", side, elements: path.names });
    else found.push({ code: "one gauge", elements: path.names });
  }
  if (fits.suction !== null && fits.delivery === null && delivery.names.length > 0) {
    found.push({ code: "no feed pressure", elements: delivery.names });
  }
  if (fits.suction === null && suction.names.length > 0) found.push({ code: "no vacuum readings" });
  const loads = count(({ load, flow }) => load === undefined && flow === undefined);
  if (loads > 0) found.push({ code: "load taken", count: loads });
  const temperatures = count(({ temperature }) => temperature === undefined);
  if (temperatures > 0) found.push({ code: "temperature taken", count: temperatures, temperature: built.temperature });
  const levels = count(({ depth }) => depth === undefined);
  if (levels > 0 && facts.levelRange > 500) found.push({ code: "level taken", count: levels, range: facts.levelRange });
  for (const one of findings) {
    if (one.code !== "jump") continue;
    found.push({ code: "after the jump", from: one.from, count: fits[one.side]?.weighed.run.instants.length ?? 0 });
  }
  // Where something else than soil is in the readings, what they say of the file is no matter.
  const fit = findings.every(({ code }) => code === "loading") ? (fits.suction ?? fits.delivery) : null;
  const share = fit ? fit.soil.best.model.stateAt(fit.soil.best.fit.parameters).demand - 1 : 0;
  if (Math.abs(share) > APART) found.push({ code: "file and machine apart", share });
  return found;
}
