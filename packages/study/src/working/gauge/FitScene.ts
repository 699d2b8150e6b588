import type { Fitted, Weighed } from "../../gauge/fitAll.js";
import type { GaugeFacts } from "../../gauge/gaugeFacts.js";
import type { Instant } from "../../gauge/Instant.js";
import type { GaugeSide } from "../../gauge/instantsOf.js";
import type { Term } from "../../gauge/Term.js";
import type { Step } from "../Step.js";
import type { GaugeGiven } from "./GaugeGiven.js";

/** One law fitted to one gauge's readings; steps are made once and shared. */
export class FitScene {
  readonly given: GaugeGiven;
  readonly facts: GaugeFacts;
  readonly side: GaugeSide;
  readonly weighed: Weighed;
  readonly fitted: Fitted;
  /** names of what is fitted, in the fit's order */
  readonly names: readonly string[];
  private readonly steps = new Map<string, unknown>();

  constructor(
    given: GaugeGiven,
    { facts, side, weighed, fitted }: Pick<FitScene, "facts" | "side" | "weighed" | "fitted">,
  ) {
    this.given = given;
    this.facts = facts;
    this.side = side;
    this.weighed = weighed;
    this.fitted = fitted;
    const { growing, shape, terms } = fitted.model;
    const grown = ["logarithm of the growth", "logarithm of the soil at the start"];
    this.names = [
      "demand off, in standard deviations",
      "zero off, in standard deviations",
      ...(shape.law === "none" ? grown.slice(1) : grown).slice(0, growing),
      ...terms.map((term) => `size of ${termName(term, this.instants)}`),
    ];
  }

  get instants(): readonly Instant[] {
    return this.weighed.run.instants;
  }

  /** Something made once and kept, by its name. */
  kept<T>(name: string, make: () => T): T {
    if (!this.steps.has(name)) this.steps.set(name, make());
    return this.steps.get(name) as T;
  }

  /** A step made once and kept, by its name. */
  step(name: string, make: () => Step): Step {
    return this.kept(name, make);
  }
}

const scenes = new WeakMap<GaugeGiven, Map<Fitted, FitScene>>();

/** The scene of a fit; one for each, so that its figures share what they have worked out. */
export function fitScene(given: GaugeGiven, plain: Pick<FitScene, "facts" | "side" | "weighed" | "fitted">): FitScene {
  const known = scenes.get(given) ?? new Map<Fitted, FitScene>();
  scenes.set(given, known);
  const scene = known.get(plain.fitted) ?? new FitScene(given, plain);
  known.set(plain.fitted, scene);
  return scene;
}

/** What a term is, in words. */
function termName(term: Term, instants: readonly Instant[]): string {
  const row = "at" in term ? ` ${instants[term.at]?.reading.row}` : "";
  switch (term.kind) {
    case "outlier":
      return `what stands off at reading${row}, in standard deviations`;
    case "step":
      return `the step from reading${row} on, in resistance over clean`;
    case "thin":
      return `the flow that is missing from reading${row} on, as a share`;
    case "cold":
      return "what cold adds, as a share of the resistance every 10 K";
    case "fall":
      return "what is lost from the first reading to the last, in resistance over clean";
  }
}
