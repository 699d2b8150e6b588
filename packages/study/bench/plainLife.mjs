// A plain way to follow soil: fixed steps of the classical fourth order, every limit asked after each, and a straight line
// within the step that broke one. It shares the physics of one moment with the core, and none of its following.
import { CatchBalance, resistanceRatio, SupplyModel } from "@thirstline/core";

/**
 * Running time to the first limit, s, or Infinity.
 * @param {import("@thirstline/core").LifeGiven} given
 * @param {number} step s
 * @param {number} from running time and soil to start at, so that a long way need not be walked twice
 * @param {number[]} soil
 */
export function plainLife(given, step, from = 0, soil = given.elements.map((element) => element.soil)) {
  const models = given.phases.map(
    (phase) => new SupplyModel(given.supply, { fuel: phase.fuel, passage: "smooth", end: "middle" }),
  );
  const points = given.points.map(({ fuel, demand }) => ({
    model: new SupplyModel(given.supply, { fuel, passage: "early", end: "middle" }),
    demand,
  }));
  const efficiencies = new Map(
    given.elements.flatMap(({ name, efficiency }) => (efficiency ? [[name, efficiency]] : [])),
  );
  const year = given.phases.reduce((sum, phase) => sum + phase.duration, 0);

  /** @param {readonly number[]} state */
  const restrictions = (state) =>
    new Map(given.elements.map(({ name, law }, at) => [name, law ? resistanceRatio(law, state[at] ?? 0) : 1]));

  /** @param {number} place @param {readonly number[]} state */
  const rates = (place, state) => {
    const [phase, model] = [given.phases[place], models[place]];
    if (!phase || !model) throw new Error("no such phase");
    model.restrict(restrictions(state));
    const sums = given.elements.map(() => 0);
    for (const { share, demand } of phase.loads) {
      const balance = new CatchBalance(given.delivered, efficiencies, given.held);
      balance.update(model, demand);
      given.elements.forEach(({ name }, at) => {
        sums[at] = (sums[at] ?? 0) + share * balance.rate(name);
      });
    }
    return sums;
  };

  /** @param {readonly number[]} state */
  const margin = (state) =>
    points.reduce((least, { model, demand }) => {
      model.restrict(restrictions(state));
      const { vacuum, feedPressure } = model.state(demand);
      const suction = (given.limits.vacuumAtChange ?? Infinity) - vacuum;
      const feed = (feedPressure ?? Infinity) - (given.limits.feedPressure ?? 0);
      return Math.min(least, suction, feed);
    }, Infinity);

  let time = from;
  let state = [...soil];
  let before = margin(state);
  let steps = 0;
  while (time < given.horizon) {
    let within = time % year;
    let place = 0;
    while (within >= (given.phases[place]?.duration ?? Infinity) - 1e-6) within -= given.phases[place++]?.duration ?? 0;
    const size = Math.min(step, (given.phases[place]?.duration ?? 0) - within);
    const [k1, s] = [rates(place, state), state];
    const k2 = rates(
      place,
      s.map((value, at) => value + (size / 2) * (k1[at] ?? 0)),
    );
    const k3 = rates(
      place,
      s.map((value, at) => value + (size / 2) * (k2[at] ?? 0)),
    );
    const k4 = rates(
      place,
      s.map((value, at) => value + size * (k3[at] ?? 0)),
    );
    const next = s.map(
      (v, at) => v + (size / 6) * ((k1[at] ?? 0) + 2 * (k2[at] ?? 0) + 2 * (k3[at] ?? 0) + (k4[at] ?? 0)),
    );
    const after = margin(next);
    steps++;
    if (after < 0) return { time: time + (size * before) / (before - after), steps };
    time += size;
    state = next;
    before = after;
  }
  return { time: Infinity, steps };
}
