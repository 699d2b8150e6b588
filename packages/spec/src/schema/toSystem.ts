import type { System } from "../system/index.js";
import { toDeliveredFuel } from "./deliveredFuel.js";
import { toDemand } from "./demand.js";
import { toDuty } from "./duty.js";
import { type FileData, formatName } from "./file.js";
import { toFuel } from "./fuel.js";
import { given } from "./given.js";
import { toLimits } from "./limits.js";
import { naming } from "./parts/naming.js";
import { toPath } from "./parts/toPath.js";
import { toPump } from "./pump.js";
import { toService } from "./service.js";
import { toTank } from "./tank.js";

/** A faultless file's data as a system: names in camel case, every part named. */
export function toSystem(data: FileData): System {
  const name = naming(data);
  const tanks = data.tanks ?? (data.tank === undefined ? [] : [{ ...data.tank, path: [] }]);
  const { duty, service, protection } = data;
  const delivered = data["delivered fuel"];
  return given({
    format: formatName,
    name: data.name,
    fuel: toFuel(data.fuel),
    temperature: data.fuel.temperature,
    altitude: data.place?.altitude ?? 0,
    demand: toDemand(data.demand),
    tanks: tanks.map((tank) => toTank(tank, tank.name ?? "tank", toPath(tank.path, name))),
    suction: toPath(data.suction, name),
    pump: toPump(data.pump),
    delivery: data.delivery === undefined ? undefined : toPath(data.delivery, name),
    limits: data.limits === undefined ? {} : toLimits(data.limits),
    protection,
    duty: duty === undefined ? undefined : toDuty(duty),
    deliveredFuel: delivered === undefined ? undefined : toDeliveredFuel(delivered),
    service: service === undefined ? undefined : toService(service),
  });
}
