import type { FleetQuery } from "../args/FleetQuery.js";
import type { Query } from "../args/Query.js";
import type { Request } from "../args/Request.js";
import { readFleetQuery } from "../args/readFleetQuery.js";
import { readQuery } from "../args/readQuery.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { readYard, type Yard } from "./readYard.js";

/** What a fleet was asked, with its yard at hand. */
export interface FleetRead {
  readonly query: Query;
  readonly asked: FleetQuery;
  readonly folder: string;
  readonly yard: Yard;
}

/** Understands the options of `fleet` and reads its folder; null, with all faults told, where there is no machine. */
export async function readFleet(request: Request, io: Io, out: Output, err: Output): Promise<FleetRead | null> {
  const json = request.given.has("json");
  const query = await readQuery(request);
  const asked = readFleetQuery(request, "faults" in query ? { draws: 0 } : query);
  if ("faults" in query || "faults" in asked) {
    const faults = [query, asked].flatMap((one) => ("faults" in one ? one.faults : []));
    await complain(argumentFaults(faults), json, out, err);
    return null;
  }
  const [folder = "."] = request.files;
  const yard = await readYard(folder, io);
  if ("machines" in yard && yard.machines.length > 0) return { query, asked, folder, yard };
  await complain(yard.faults, json, out, err);
  return null;
}
