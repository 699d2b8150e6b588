import type { SystemAbsorber, SystemCapacityTest, SystemFilter, SystemMedium } from "@thirstline/spec/system";
import type { Pen } from "./Pen.js";
import type { Block, Written } from "./yaml.js";

/** Density of water, kg/m3, by which absorbed water is a volume in a file and a mass in a system. */
const WATER = 998;

/** A filter as a file has it. */
export function writeFilter(filter: SystemFilter, pen: Pen): Block {
  const { medium, housing, pleats, betas, statedRating: rating, separation, absorbs } = filter;
  const ownArea = medium.by === "flow test" || medium.by === "air test" ? filter.area : undefined;
  const size = { key: "size", unit: "size" } as const;
  return {
    name: filter.name,
    style: filter.style,
    thread: filter.thread,
    "flow direction": filter.direction,
    ...mediumBlock(medium, pen.in("medium")),
    area: pen.maybe(ownArea, { key: "area", unit: "area", kind: "area" }),
    housing: housing && {
      k: housing.k,
      port: pen.in("housing").write(housing.port, { key: "port", unit: "bore", kind: "bore" }),
    },
    pleats: pleats && {
      depth: pen.in("pleats").write(pleats.depth, { key: "depth", unit: "bore", kind: "pleatDepth" }),
      gap: pen.in("pleats").write(pleats.gap, { key: "gap", unit: "bore", kind: "gap" }),
    },
    betas: betas?.map((one, at) => ({
      size: pen.in("betas", at).write(one.size, { ...size, kind: "betaSize" }),
      beta: one.beta,
    })),
    "stated rating": rating && {
      size: pen.in("statedRating").write(rating.size, { ...size, kind: "size" }),
      kind: rating.kind,
    },
    leak: filter.leak === undefined ? undefined : pen.share(filter.leak, "leak"),
    "capacity test": capacityTests(filter, pen),
    "loading law": filter.loadingLaw,
    make: filter.make,
    bowl: pen.maybe(filter.bowl, { key: "bowl", unit: "volume", kind: "bowl" }),
    body: pen.maybe(filter.body, { key: "body", unit: "volume", kind: "body" }),
    prefill: filter.prefill,
    water: separation && {
      efficiency: pen.in("separation").share(separation.efficiency, "efficiency"),
      at: pen.in("separation").write(separation.flow, { key: "flow", unit: "flow", kind: "flow" }),
    },
    absorbs: absorbs && absorber(absorbs, pen.in("absorbs")),
    "terminal drop": pen.maybe(filter.terminalDrop, { key: "terminalDrop", unit: "pressure", kind: "pressure" }),
    restriction: filter.restriction,
    blocked: filter.blocked || undefined,
    reversed: filter.reversed || undefined,
  };
}

function capacityTests({ capacityTest, lighterCapacityTest: lighter }: SystemFilter, pen: Pen): Written | undefined {
  if (capacityTest === undefined) return undefined;
  const main = test(capacityTest, pen.in("capacityTest"));
  return lighter === undefined ? main : [test(lighter, pen.in("lighterCapacityTest")), main];
}

function test({ soil, ...rest }: SystemCapacityTest, pen: Pen): Block {
  return { soil: pen.write(soil, { key: "soil", unit: "mass", kind: "mass" }), ...riseBlock(rest, pen) };
}

interface Rise {
  readonly rise: number;
  readonly flow: number;
  readonly dynamicViscosity: number;
  readonly density?: number;
}

function riseBlock({ rise, flow, dynamicViscosity, density }: Rise, pen: Pen): Block {
  const unit = "dynamicViscosity";
  return {
    rise: pen.write(rise, { key: "rise", unit: "pressure", kind: "pressure" }),
    flow: pen.write(flow, { key: "flow", unit: "flow", kind: "flow" }),
    viscosity: pen.write(dynamicViscosity, { key: unit, unit, kind: unit }),
    density: pen.maybe(density, { key: "density", unit: "density", kind: "density" }),
  };
}

function absorber(absorbs: SystemAbsorber, pen: Pen): Block {
  const water = pen.write(absorbs.water, { key: "water", unit: "water", kind: "absorbedWater", times: WATER });
  return "restriction" in absorbs ? { water, restriction: absorbs.restriction } : { water, ...riseBlock(absorbs, pen) };
}

function mediumBlock(medium: SystemMedium, pen: Pen): Block {
  const area = { key: "area", kind: "area" } as const;
  const thickness = { key: "thickness", unit: "bore", kind: "thickness" } as const;
  const mat = ({ area: of, thickness: deep }: { readonly area: number; readonly thickness: number }) => ({
    area: pen.write(of, { ...area, unit: "screen" }),
    thickness: pen.write(deep, thickness),
  });
  switch (medium.by) {
    case "flow test": {
      const unit = "dynamicViscosity";
      const fluid = {
        viscosity: pen.write(medium.dynamicViscosity, { key: unit, unit, kind: unit }),
        density: pen.maybe(medium.density, { key: "density", unit: "density", kind: "density" }),
      };
      const points = medium.points.map(({ drop, flow }, at) => ({
        drop: pen.in("points", at).write(drop, { key: "drop", unit: "pressure", kind: "drop" }),
        flow: pen.in("points", at).write(flow, { key: "flow", unit: "flow", kind: "flow" }),
        ...fluid,
      }));
      return { "flow test": points };
    }
    case "medium":
      return {
        medium: {
          area: pen.write(medium.area, { ...area, unit: "area" }),
          thickness: pen.write(medium.thickness, thickness),
          permeability: pen.write(medium.permeability, {
            key: "permeability",
            unit: "permeability",
            kind: "permeability",
          }),
          inertia: pen.maybe(medium.inertia, { key: "inertia", unit: "inertia", kind: "inertia" }),
        },
      };
    case "air test":
      return {
        "air test": {
          flow: pen.write(medium.flow, { key: "flow", unit: "flow", kind: "airFlow" }),
          area: pen.write(medium.sampleArea, { key: "sampleArea", unit: "screen", kind: "area" }),
          pressure: pen.write(medium.pressure, { key: "pressure", unit: "pressure", kind: "pressure" }),
        },
      };
    case "rating":
      return {
        rating: {
          size: pen.write(medium.size, { key: "size", unit: "size", kind: "size" }),
          kind: medium.kind,
          ...mat(medium),
        },
      };
    case "fibre":
      return {
        fibre: {
          diameter: pen.write(medium.diameter, { key: "diameter", unit: "size", kind: "fibre" }),
          solidity: medium.solidity,
          ...mat(medium),
        },
      };
  }
}
