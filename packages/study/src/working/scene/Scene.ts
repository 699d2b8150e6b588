import {
  type BandEnd,
  cleaned,
  type FuelState,
  fuelState,
  type Passage,
  type Supply,
  SupplyModel,
} from "@thirstline/core";
import { type Built, build, type System } from "@thirstline/spec/system";
import { demandAt } from "../../check/demandAt.js";
import { filterFlows } from "../../check/filterFlows.js";
import { supplyOf } from "../../check/supplyOf.js";
import { dueAt } from "../../curve/Due.js";
import { dueSupply } from "../../curve/dueSupply.js";
import { terminalDrops } from "../../curve/terminalDrops.js";
import type { Step } from "../Step.js";

/** State of the elements: without soil, with the soil the file states, or at their stated terminal drops. */
export type Elements = "clean" | "now" | "at change";

/** Under what a figure is worked out. */
export interface Setting {
  /** of the fuel, K; null for the file's own */
  readonly temperature: number | null;
  /** burn and return asked for, m3/s; null for the file's own */
  readonly demand: number | null;
  /** another demand put in by a search or a curve, m3/s; what elements due are due at stays as it is */
  readonly at: number | null;
  /** a flow of the suction line put in by a search, m3/s; null for what the pump makes of the demand */
  readonly pumped: number | null;
  readonly elements: Elements;
  readonly end: BandEnd;
  readonly passage: Passage;
  /** resistance over clean by the element's name, where a life has filled them; null for what `elements` says */
  readonly restrictions: ReadonlyMap<string, number> | null;
}

/** Scenes of one system that are kept. */
const MOST = 400;

const roots = new WeakMap<System, Scene>();

/** A system's scene of a setting; all scenes of a system share what they have worked out. */
export function sceneOf(system: System, change: Partial<Setting>): Scene {
  const root = roots.get(system) ?? new Scene(system, usualSetting);
  roots.set(system, root);
  return root.at(change);
}

/** A system under a setting, with core's own model of it. Steps are made once and shared. */
export class Scene {
  readonly system: System;
  readonly setting: Setting;
  readonly built: Built;
  readonly temperature: number;
  readonly fuel: FuelState;
  readonly supply: Supply;
  readonly model: SupplyModel;
  /** burn, return and both together, m3/s, by the file or as asked for */
  readonly asked: { readonly burn: number; readonly return: number; readonly total: number };
  private readonly steps = new Map<string, unknown>();
  private readonly family: Map<string, Scene>;

  constructor(system: System, setting: Setting, family = new Map<string, Scene>()) {
    this.system = system;
    this.setting = setting;
    this.family = family;
    this.built = build(system);
    this.temperature = setting.temperature ?? this.built.temperature;
    this.fuel = fuelState(this.built.fuel, { temperature: this.temperature });
    this.asked = demandAt(this.built, this.fuel, setting.demand);
    this.supply = this.suppliedBy(setting);
    const { passage, end } = setting;
    this.model = new SupplyModel(this.supply, { fuel: this.fuel, passage, end });
    if (setting.restrictions) this.model.restrict(setting.restrictions);
  }

  /** The same system under another setting. */
  at(change: Partial<Setting>): Scene {
    const setting = { ...this.setting, ...change };
    const { restrictions, ...rest } = setting;
    const key = JSON.stringify([rest, restrictions && [...restrictions]]);
    const found = this.family.get(key) ?? new Scene(this.system, setting, this.family);
    // Bounded: a page that moves a slider asks for ever new ones.
    if (this.family.size >= MOST) this.family.clear();
    this.family.set(key, found);
    return found;
  }

  /** Demand the path is worked out at, m3/s. */
  get demand(): number {
    return this.setting.at ?? this.asked.total;
  }

  /** Flow of the suction line there, m3/s. */
  get suctionFlow(): number {
    return this.setting.pumped ?? this.model.suctionFlow(this.demand);
  }

  /** Flow through a filter at the demand asked for, m3/s; null for a name that is none. */
  flowThrough(name: string): number | null {
    return filterFlows(this.model, this.asked.total).get(name) ?? null;
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

  private suppliedBy({ elements, end, demand }: Setting): Supply {
    const supply = supplyOf(this.built);
    if (elements === "clean") return cleaned(supply);
    const drops = terminalDrops(this.system);
    return elements === "now" || drops.size === 0 ? supply : dueSupply(supply, dueAt(this.built, drops, demand), end);
  }
}

/** The setting of what `check` shows first: clean elements, the likely figures, the smooth passage. */
const usualSetting: Setting = {
  temperature: null,
  demand: null,
  at: null,
  pumped: null,
  elements: "clean",
  end: "middle",
  passage: "smooth",
  restrictions: null,
};
