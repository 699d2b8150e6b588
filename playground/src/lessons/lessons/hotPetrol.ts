import type { System } from "@thirstline/spec/system";
import { mapParts } from "../../model/parts.js";
import type { Lesson } from "../Lesson.js";
import { of, text } from "../words.js";
import { airOf, pointOf } from "../yard/answers.js";
import { costing, withFilters } from "../yard/changes.js";
import { verdictText } from "../yard/verdictText.js";

const FILTER = "water-separating filter W10";
const LAKE = 2000;
const SHADE = 293.15;
const LARGER = 2;

/** Vapour pressure against the air: how much pull hot petrol bears. */
export const hotPetrol: Lesson = {
  id: "hot-petrol",
  title: "Hot petrol at height",
  after: "say how much pull is left before petrol boils in the line, and what takes it away",
  tell: (yard) => {
    const boat = yard("workboat.yaml");
    const winter = yard("workboat-winter-petrol.yaml");
    const at = (altitude: number): System => ({ ...boat, altitude });
    const [sea, lake] = [pointOf(at(0)), pointOf(at(LAKE))];
    const boils = sea.fuel.vapourPressure;
    const absolute = (value: number) => of(value, "absolute pressure");
    const pressure = (value: number) => of(value, "pressure");
    const [low, right] = [marginOf(at(0)), marginOf(at(LAKE))];
    const hot = pointOf(winter);
    const runs = (system: System) => ["holds", "tight"].includes(pointOf(system).verdict);
    const larger = withFilters(winter, [FILTER], (filter) => costing(filter, 1 / LARGER));
    const hoses = withWiderHoses(winter);
    const shaded: System = { ...winter, temperature: SHADE };
    const margin = (system: System) => pressure(marginOf(system));
    return {
      machine: at(0),
      situation: [
        text`The petrol workboat lies at the landing stage in summer, its fuel at ${of(boat.temperature, "temperature")}. At that warmth this petrol boils at ${absolute(boils)}. The air presses with ${absolute(airOf(sea))}; at the worst place in the line, just before the pump, ${absolute(sea.lowest?.pressure.middle ?? Number.NaN)} are left of it. So there are ${pressure(low)} between the fuel and boiling.`,
        text`The boat goes on a trailer to a lake at ${of(LAKE, "altitude")}, on a day as hot. The air there presses with ${absolute(airOf(lake))}.`,
      ],
      first: {
        form: "number",
        ask: text`How much is left between the fuel and boiling at the lake, at the same place in the line?`,
        label: "Left before it boils",
        kind: "pressure",
        reads: "pressure",
        right,
        near: 0.2,
        because: text`The line takes the same ${pressure(airOf(sea) - (sea.lowest?.pressure.middle ?? 0))} and the fuel boils at the same pressure. What the air loses on the way up, ${pressure(airOf(sea) - airOf(lake))}, is lost from the margin in full.`,
        slips: [
          {
            value: low,
            misses: text`Line and fuel are the same, true. But it is the air that pushes the fuel up to the pump, and there is less of it.`,
          },
          {
            value: (low * airOf(lake)) / airOf(sea),
            misses: text`The margin does not shrink in proportion to the air. Boiling stays where it is, so the whole loss comes out of the margin.`,
          },
          {
            value: airOf(lake) - boils,
            misses: text`That is all there is between the air and boiling. The line has taken its part before the pump.`,
          },
        ],
        otherwise: text`Start from the air at the lake, take off what the line costs, then what the fuel needs not to boil.`,
      },
      shows: {
        caption: text`Take the boat up. The whole descent sinks with the air, and the line at which the fuel boils stays.`,
        control: {
          by: "range",
          label: "Altitude",
          kind: "altitude",
          reads: "altitude",
          min: 0,
          max: 4500,
          start: LAKE,
        },
        system: at,
        figure: (altitude) => ({ draws: "path", system: at(altitude) }),
        reads: (altitude) => [
          { label: "air", words: [absolute(airOf(pointOf(at(altitude))))] },
          { label: "the fuel boils at", words: [absolute(boils)] },
          { label: "left before it boils", words: [margin(at(altitude))] },
          { label: "says the calculation", words: verdictText(at(altitude)) },
        ],
      },
      explanation: [
        text`A suction pump does not pull fuel: it makes room, and the air pushes the fuel into it. It can push no harder than it presses, and the fuel must not be let down to the pressure at which it boils. Then vapour comes instead of fuel, and the engine stops with a full tank and a clean filter.`,
        text`Three things take the margin: height, because there is less air; warmth, because petrol boils sooner; and whatever the line costs, the climb and the filter included. Soil in the filter comes out of the same purse.`,
        text`Petrol of the winter class boils sooner than that of the summer class, so that engines start in the cold. Last winter's petrol on the first hot day is the classic case. How a petrol boils is read off its class here; the petrol of the day may differ.`,
      ],
      working: [
        text`margin = air − what the line costs − pressure at which the fuel boils`,
        text`${absolute(airOf(lake))} − ${pressure(airOf(lake) - (lake.lowest?.pressure.middle ?? 0))} − ${absolute(boils)} ≈ ${pressure(right)}`,
      ],
      explains: ["vapour margin", "air pressure", "vapour pressure"],
      second: {
        form: "choice",
        ask: text`Back at the landing stage. First hot day, ${of(winter.temperature, "temperature")}, and last winter's petrol in the tank: it boils at ${absolute(hot.fuel.vapourPressure)}, and the motor stops. What would keep it running?`,
        choices: [
          {
            label: text`A filter with twice the area`,
            right: runs(larger),
            answer: text`The filter is clean and costs little: with the larger one the margin is ${margin(larger)}, so it boils all the same. It only looks like a plugged filter.`,
          },
          {
            label: text`Hoses half as wide again`,
            right: runs(hoses),
            answer: text`The hoses cost next to nothing here. With wider ones the margin is ${margin(hoses)}: it boils all the same.`,
          },
          {
            label: text`Fuel kept in the shade, at ${of(SHADE, "temperature")}`,
            right: runs(shaded),
            answer: text`Cooler fuel boils at ${absolute(pointOf(shaded).fuel.vapourPressure)}, and the margin is ${margin(shaded)}. Fresh petrol of the season does it too.`,
          },
        ],
      },
      safety: [
        text`Petrol vapour burns at a spark and gathers low in a hull: air the place, no flame, no smoking, and never cool a hot fuel line by opening it. The outboard's manual decides.`,
      ],
      sources: [
        text`Petrol by its class: EN 228, with the vapour pressure at other temperatures after AP-42. Last winter's petrol on a hot day: common practice, no source.`,
      ],
    };
  },
};

/** What is left between the lowest pressure in the line and boiling, Pa; under 0 where it boils. */
function marginOf(system: System): number {
  const { lowest, fuel } = pointOf(system);
  return (lowest?.pressure.middle ?? Number.NaN) - fuel.vapourPressure;
}

function withWiderHoses(system: System): System {
  const { spreads: _, ...rest } = mapParts(system, (part) =>
    part.part === "line" ? { ...part, bore: part.bore * 1.5 } : part,
  );
  return rest;
}
