import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { asked, fromFile, fromSource } from "../worked.js";

/** Temperature of the fuel, from the file or as asked for. */
export function temperature(scene: Scene): Step {
  const plain = { name: "temperature", value: scene.temperature, unit: "K", kind: "temperature" } as const;
  return scene.setting.temperature === null ? fromFile("fuel.temperature", plain) : asked("temperature", plain);
}

/** A temperature that a law or table has. */
export function knownTemperature(source: string, name: string, value: number): Step {
  return fromSource(source, { name, value, unit: "K", kind: "temperature" });
}

/** One kelvin, in which laws of logarithms count. */
export const oneKelvin = fromSource("definition", { name: "one kelvin", value: 1, unit: "K", kind: "plain" });
