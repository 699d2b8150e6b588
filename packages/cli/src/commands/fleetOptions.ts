import type { System } from "@thirstline/spec/system";
import { type FleetOptions, isUncertain } from "@thirstline/study";
import type { Request } from "../args/Request.js";
import { drawShown } from "../draw/drawShown.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import type { FleetRead } from "./readFleet.js";

/** What `fleet` goes by besides its machines and their log, with lives drawn where that was asked for. */
export async function fleetOptions(read: FleetRead, { given }: Request, io: Io, err: Output): Promise<FleetOptions> {
  const { on, within } = read.asked;
  return {
    on,
    ...(given.has("within") ? { within } : {}),
    shelf: read.yard.shelf,
    lives: await livesOf(read, io, err),
  };
}

/** How long the elements of each system last in many draws, where that was asked for and anything is uncertain. */
async function livesOf(
  { yard: { machines }, asked: { draws }, query }: FleetRead,
  io: Io,
  err: Output,
): Promise<(system: System) => Float64Array | null> {
  const drawn = new Map<System, Float64Array>();
  if (draws > 0) {
    const systems = new Set(machines.flatMap(({ system }) => (system === null ? [] : [system])));
    for (const system of systems) {
      if (isUncertain(system)) drawn.set(system, await drawShown({ question: "life", system }, query, io, err));
    }
  }
  return (system) => drawn.get(system) ?? null;
}
