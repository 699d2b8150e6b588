import type { System, SystemFilter, SystemFlowPoint, SystemMedium, SystemPart } from "@thirstline/spec/system";
import { setPart } from "../edit/edits.js";
import { partAt } from "../edit/lists.js";
import type { Place } from "../model/Place.js";
import type { SheetFilter } from "../trial/Tried.js";
import { type Field, type Sort, sorts } from "./Field.js";

/** The boxes of one part; none for a bank, whose branches have their own. */
export function partFields(system: System, place: Place): Field[] {
  const part = partAt(system, place);
  if (part === undefined || part.part === "bank") return [];
  return own(part, place);
}

/** Fields to put on a part; undefined takes one off. */
type Change<Part> = { readonly [Key in keyof Part]?: Part[Key] | undefined };

/** Makes boxes whose entries change fields of the part at a place, as it stands when the entry is made. */
function boxes<Part extends SystemPart>(place: Place, part: Part) {
  const put = (fields: Change<Part>) => (system: System) => {
    const now = partAt(system, place);
    if (now === undefined) return system;
    const stated = Object.entries({ ...now, ...fields }).filter(([, value]) => value !== undefined);
    return setPart(system, place, Object.fromEntries(stated) as unknown as SystemPart);
  };
  const of = (label: string, key: keyof Part & string, sort: Sort): Field => ({
    type: "quantity",
    label,
    value: part[key] as number,
    ...sort,
    change: (value) => put({ [key]: value } as Change<Part>),
  });
  const name: Field = {
    type: "text",
    label: "Name",
    value: part.name,
    change: (value) => put({ name: value } as Change<Part>),
  };
  return { put, of, name };
}

function own(part: SystemPart, place: Place): Field[] {
  switch (part.part) {
    case "line": {
      const { of, put, name } = boxes(place, part);
      const rough = (value: number | null) => put({ roughness: value ?? 0, surface: undefined });
      const label = part.surface === undefined ? "Roughness" : `Roughness, of ${part.surface}`;
      const wall: Field = { type: "quantity", label, value: part.roughness, ...sorts.roughness, change: rough };
      return [name, of("Length", "length", sorts.length), of("Bore", "bore", sorts.bore), wall];
    }
    case "fitting": {
      const { of, put, name } = boxes(place, part);
      const { loss } = part;
      const count = (value: number) => put({ count: value });
      const k = (value: number) => put({ loss: { by: "k", k: value } });
      return [
        name,
        of("Bore", "bore", sorts.bore),
        { type: "number", label: "How many", value: part.count, least: 1, most: 100, whole: true, change: count },
        ...(loss.by === "k" ? [number("Loss coefficient K", loss.k, [0, 10_000], k)] : []),
      ];
    }
    case "rise": {
      const { of, name } = boxes(place, part);
      return [name, of("Climbs by (less than 0 where it falls)", "height", sorts.height)];
    }
    case "valve": {
      const { of, put, name } = boxes(place, part);
      const oneWay = (value: boolean) => put(value ? { oneWay: true } : { oneWay: false, opening: 0 });
      return [
        name,
        of("Flow coefficient Kv", "kv", sorts.kv),
        ...(part.oneWay ? [of("Opens at", "opening", sorts.opening)] : []),
        { type: "flag", label: "Shuts against backward flow", value: part.oneWay, change: oneWay },
      ];
    }
    case "orifice": {
      const { of, put, name } = boxes(place, part);
      const coefficient = (value: number) => put({ dischargeCoefficient: value });
      const discharge = number("Discharge coefficient", part.dischargeCoefficient, [0.01, 1], coefficient);
      return [name, of("Diameter", "diameter", sorts.diameter), discharge];
    }
    case "strainer": {
      const { of, name } = boxes(place, part);
      const screen = of("Area of the screen", "area", sorts.area);
      return [name, of("Aperture", "aperture", sorts.aperture), of("Wire", "wire", sorts.wire), screen];
    }
    case "filter":
      return filterFields(part, place);
    case "bank":
      return [];
  }
}

function number(
  label: string,
  value: number,
  [least, most]: [number, number],
  change: Extract<Field, { type: "number" }>["change"],
): Field {
  return { type: "number", label, value, least, most, change };
}

function filterFields(filter: SheetFilter, place: Place): Field[] {
  const { put, name } = boxes(place, filter);
  const restriction = (value: number) => put({ restriction: value === 1 ? undefined : value });
  const terminal = (value: number | null) => put({ terminalDrop: value ?? undefined });
  return [
    name,
    // What is entered by hand is stated, whatever was tried before.
    ...mediumFields(filter.medium, (medium) => put({ medium, ...areasOf(filter, medium), tried: undefined })),
    number("Soiled to, times its clean resistance", filter.restriction ?? 1, [1, 1e6], restriction),
    {
      type: "quantity",
      label: "Change it at a drop of",
      value: filter.terminalDrop ?? null,
      ...sorts.pressure,
      optional: true,
      change: terminal,
    },
    { type: "flag", label: "Shut off", value: filter.blocked, change: (value) => put({ blocked: value }) },
    {
      type: "flag",
      label: "Fitted against its arrow",
      value: filter.reversed,
      change: (value) => put({ reversed: value }),
    },
  ];
}

/** A medium that states its area gives it to the filter and its pleats, which have no other. */
function areasOf({ pleats }: SystemFilter, medium: SystemMedium): Pick<SystemFilter, "area" | "pleats"> {
  if (medium.by === "flow test") return {};
  return { area: medium.area, ...(pleats === undefined ? {} : { pleats: { ...pleats, area: medium.area } }) };
}

function mediumFields(medium: SystemMedium, put: (medium: SystemMedium) => (system: System) => System): Field[] {
  const of = (label: string, key: string, sort: Sort): Field => ({
    type: "quantity",
    label,
    value: (medium as unknown as Record<string, number>)[key] ?? null,
    ...sort,
    change: (value) => put({ ...medium, [key]: value } as SystemMedium),
  });
  switch (medium.by) {
    case "flow test":
      return medium.points
        .flatMap((point, at) =>
          pointFields(point, pointName(at, medium.points.length), (one) =>
            put({ ...medium, points: medium.points.map((old, index) => (index === at ? one : old)) }),
          ),
        )
        .concat([of("Viscosity of the test fluid", "dynamicViscosity", sorts.dynamicViscosity)]);
    case "medium":
      return [of("Area", "area", sorts.area), of("Thickness", "thickness", sorts.thickness)];
    case "air test":
      return [of("Air flow in the test", "flow", sorts.airFlow), of("At a pressure of", "pressure", sorts.pressure)];
    case "rating":
      return [
        of("Rated size", "size", sorts.size),
        of("Area", "area", sorts.area),
        of("Thickness", "thickness", sorts.thickness),
      ];
    case "fibre":
      return [
        of("Fibre diameter", "diameter", sorts.fibre),
        of("Area", "area", sorts.area),
        of("Thickness", "thickness", sorts.thickness),
      ];
  }
}

function pointName(at: number, of: number): string {
  return of === 1 ? "Flow test" : `Flow test ${at + 1}`;
}

function pointFields(
  point: SystemFlowPoint,
  name: string,
  put: (point: SystemFlowPoint) => (system: System) => System,
): Field[] {
  return [
    {
      type: "quantity",
      label: `${name}: drop, clean`,
      value: point.drop,
      ...sorts.drop,
      change: (value) => put({ ...point, drop: value ?? point.drop }),
    },
    {
      type: "quantity",
      label: `${name}: at a flow of`,
      value: point.flow,
      ...sorts.flow,
      change: (value) => put({ ...point, flow: value ?? point.flow }),
    },
  ];
}
