import type { System, SystemLimits, SystemPump, SystemTank, SystemVent } from "@thirstline/spec/system";
import { type Field, type Sort, sorts } from "./Field.js";

/** The boxes of a tank. */
export function tankFields(system: System, index: number): Field[] {
  const tank = system.tanks[index];
  if (tank === undefined) return [];
  const put = (fields: Partial<SystemTank>) => (now: System) => ({
    ...now,
    tanks: now.tanks.map((one, at) => (at === index ? { ...one, ...fields } : one)),
  });
  const depth = (label: string, key: "fullDepth" | "lowDepth"): Field =>
    quantity(label, tank[key], sorts.depth, (value) => put({ [key]: value ?? 0 }));
  const { vent } = tank;
  const opening = vent.kind === "spring" ? vent.opening : 1000;
  const vents: Readonly<Record<string, SystemVent>> = {
    open: { kind: "open" },
    spring: { kind: "spring", opening },
    blocked: { kind: "blocked" },
  };
  return [
    { type: "text", label: "Name", value: tank.name, change: (name) => put({ name }) },
    depth("Fuel over the pick-up when full", "fullDepth"),
    depth("Fuel over the pick-up when low", "lowDepth"),
    {
      type: "choice",
      label: "Vent",
      value: vent.kind,
      among: [
        ["open", "open"],
        ["spring", "with a spring"],
        ["blocked", "blocked"],
      ],
      change: (value) => put({ vent: vents[value] ?? vent }),
    },
    ...(vent.kind === "spring"
      ? [
          quantity("Vent opens at", vent.opening, sorts.opening, (value) =>
            put({ vent: { kind: "spring", opening: value ?? 0 } }),
          ),
        ]
      : []),
  ];
}

/** The boxes of the lift pump. */
export function pumpFields({ pump }: System): Field[] {
  const put = (fields: object) => (system: System) => ({
    ...system,
    pump: { ...system.pump, ...fields } as SystemPump,
  });
  switch (pump.kind) {
    case "fixed":
      return [
        quantity("Swept flow", pump.flow, sorts.flow, (flow) => put({ flow })),
        quantity("Relief opens at", pump.relief, sorts.pressure, (relief) => put({ relief })),
        {
          type: "choice",
          label: "Relief goes to",
          value: pump.reliefTo,
          among: [
            ["inlet", "the pump's inlet"],
            ["tank", "the tank"],
          ],
          change: (reliefTo) => put({ reliefTo }),
        },
      ];
    case "pulse":
      return [
        quantity("Most flow", pump.flow, sorts.flow, (flow) => put({ flow })),
        quantity("Most vacuum", pump.suction, sorts.vacuum, (suction) => put({ suction })),
      ];
    case "curve":
      return pump.points.flatMap((point, at) => {
        const change = (fields: object) =>
          put({ points: pump.points.map((one, index) => (index === at ? { ...one, ...fields } : one)) });
        return [
          quantity(`Point ${at + 1}: flow`, point.flow, sorts.flowOrNone, (flow) => change({ flow })),
          quantity(`Point ${at + 1}: rise`, point.rise, sorts.opening, (rise) => change({ rise })),
        ];
      });
    case "none":
      return [];
  }
}

/** The boxes of the engine: what it asks for, and the limits to keep to. */
export function engineFields(system: System): Field[] {
  const { demand, limits } = system;
  const ask = (fields: object) => (now: System) => ({
    ...now,
    demand: { ...now.demand, ...fields } as System["demand"],
  });
  const burn =
    "burn" in demand
      ? [quantity("Burns", demand.burn, sorts.flow, (value) => ask({ burn: value }))]
      : [
          quantity("Power", demand.power, sorts.power, (power) => ask({ power })),
          quantity("Specific consumption", demand.specificConsumption, sorts.consumption, (value) =>
            ask({ specificConsumption: value }),
          ),
        ];
  const limit = (
    label: string,
    key: keyof SystemLimits & ("vacuumClean" | "vacuumAtChange" | "feedPressure"),
    sort: Sort,
  ): Field => ({
    type: "quantity",
    label,
    value: limits[key] ?? null,
    ...sort,
    optional: true,
    change: (value) => (now) => {
      const { [key]: _, ...rest } = now.limits;
      return { ...now, limits: value === null ? rest : { ...rest, [key]: value } };
    },
  });
  return [
    ...burn,
    quantity("Sends back", demand.return, sorts.flowOrNone, (value) => ask({ return: value })),
    ...(system.pump.kind === "none"
      ? []
      : [
          limit("Most vacuum, clean", "vacuumClean", sorts.vacuum),
          limit("Most vacuum, at change", "vacuumAtChange", sorts.vacuum),
        ]),
    ...(system.pump.kind === "pulse" ? [] : [limit("Least feed pressure", "feedPressure", sorts.pressure)]),
  ];
}

function quantity(
  label: string,
  value: number,
  sort: Sort,
  change: (value: number | null) => (system: System) => System,
): Field {
  return { type: "quantity", label, value, ...sort, change };
}
