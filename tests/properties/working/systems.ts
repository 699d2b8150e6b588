import { readdirSync, readFileSync } from "node:fs";
import { readSystem, type System } from "@thirstline/spec";

const folders = {
  demo: new URL("../../../packages/spec/demo/", import.meta.url),
  files: new URL("../../journeys/cli/files/", import.meta.url),
};

/** A system of a file, by the file's name. */
export interface Named {
  readonly name: string;
  readonly system: System;
}

/** Every system file of a folder that has no fault. */
export function systemsIn(folder: keyof typeof folders): Named[] {
  const names = readdirSync(folders[folder]).filter((name) => name.endsWith(".yaml"));
  return names.flatMap((name): Named[] => {
    const read = readSystem(readFileSync(new URL(name, folders[folder]), "utf8"), { file: name });
    return "system" in read ? [{ name, system: read.system }] : [];
  });
}
