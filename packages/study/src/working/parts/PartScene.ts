import type { SystemPart } from "@thirstline/spec/system";
import type { PartPath, Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, type Plain } from "../worked.js";

/** A part of the path where its drop is worked out: its place and the flow through it. */
export interface PartScene<Part extends SystemPart = SystemPart> {
  readonly scene: Scene;
  readonly part: Part;
  readonly path: PartPath;
  readonly flow: Step;
}

/** A figure of the part as its file states it. */
export function ofPart({ scene, path }: Pick<PartScene, "scene" | "path">, key: string, plain: Plain): Step {
  const place = filePlace(scene.system, path);
  return fromFile(key === "" ? place : `${place}.${key}`, { ...plain, part: path });
}
