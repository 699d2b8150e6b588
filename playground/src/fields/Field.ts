import type { KindName } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import type { QuantityKind } from "@thirstline/study";

type Change<Value> = (value: Value) => (system: System) => System;

/** A box of the editor: what it is called, what it holds, and the change an entry makes. */
export type Field =
  | {
      readonly type: "quantity";
      readonly label: string;
      /** SI; null where it is not stated */
      readonly value: number | null;
      readonly shown: QuantityKind;
      readonly reads: KindName;
      readonly optional?: boolean;
      readonly change: Change<number | null>;
    }
  | {
      readonly type: "number";
      readonly label: string;
      readonly value: number;
      readonly least: number;
      readonly most: number;
      readonly whole?: boolean;
      readonly change: Change<number>;
    }
  | { readonly type: "text"; readonly label: string; readonly value: string; readonly change: Change<string> }
  | {
      readonly type: "choice";
      readonly label: string;
      readonly value: string;
      readonly among: readonly (readonly [value: string, words: string])[];
      readonly change: Change<string>;
    }
  | { readonly type: "flag"; readonly label: string; readonly value: boolean; readonly change: Change<boolean> };

/** How a quantity is shown and read. */
export interface Sort {
  readonly shown: QuantityKind;
  readonly reads: KindName;
}

/** The sorts of quantity the editor holds. */
export const sorts = {
  length: { shown: "length", reads: "length" },
  height: { shown: "length", reads: "height" },
  depth: { shown: "length", reads: "depth" },
  bore: { shown: "bore", reads: "bore" },
  diameter: { shown: "bore", reads: "diameter" },
  roughness: { shown: "bore", reads: "roughness" },
  thickness: { shown: "bore", reads: "thickness" },
  size: { shown: "particle size", reads: "size" },
  aperture: { shown: "particle size", reads: "aperture" },
  wire: { shown: "particle size", reads: "wire" },
  fibre: { shown: "particle size", reads: "fibre" },
  area: { shown: "area", reads: "area" },
  flow: { shown: "flow", reads: "flow" },
  flowOrNone: { shown: "flow", reads: "flowOrNone" },
  airFlow: { shown: "flow", reads: "airFlow" },
  kv: { shown: "flow", reads: "kv" },
  drop: { shown: "pressure", reads: "drop" },
  opening: { shown: "pressure", reads: "opening" },
  pressure: { shown: "pressure", reads: "pressure" },
  vacuum: { shown: "vacuum", reads: "vacuum" },
  dynamicViscosity: { shown: "dynamic viscosity", reads: "dynamicViscosity" },
  density: { shown: "density", reads: "density" },
  power: { shown: "power", reads: "power" },
  consumption: { shown: "specific consumption", reads: "specificConsumption" },
} as const satisfies Record<string, Sort>;
