import type { SystemFilter, SystemMedium } from "@thirstline/spec/system";

/**
 * A filter with twice the medium in the same body: the medium's own resistance is halved, what the body costs stays, and
 * it takes twice the soil before it has grown by as much again.
 */
export function twiceTheArea(filter: SystemFilter): SystemFilter {
  const { area, pleats, capacityTest, lighterCapacityTest } = filter;
  const test = (one: NonNullable<typeof capacityTest>) => ({ ...one, soil: 2 * one.soil, flow: 2 * one.flow });
  return {
    ...filter,
    medium: mediumOf(filter.medium),
    ...(area === undefined ? {} : { area: 2 * area }),
    ...(pleats === undefined ? {} : { pleats: { ...pleats, area: 2 * pleats.area } }),
    ...(capacityTest === undefined ? {} : { capacityTest: test(capacityTest) }),
    ...(lighterCapacityTest === undefined ? {} : { lighterCapacityTest: test(lighterCapacityTest) }),
  };
}

function mediumOf(medium: SystemMedium): SystemMedium {
  if (medium.by !== "flow test") return { ...medium, area: 2 * medium.area };
  const [first, second] = medium.points;
  if (!first) return medium;
  if (!second) return { ...medium, points: [{ ...first, drop: first.drop / 2 }] };
  // drop = a Q + b Q^2 through both points; only a is the medium's.
  const slope = (second.drop / second.flow - first.drop / first.flow) / (second.flow - first.flow);
  const halved = ({ drop, flow }: typeof first) => ({ flow, drop: (drop + slope * flow * flow) / 2 });
  return { ...medium, points: [halved(first), halved(second)] };
}
