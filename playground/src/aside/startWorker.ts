import { trustedScript } from "../model/trustedScript.js";
import source from "./sheet.worker.ts?worker&url";

/** Starts the worker that does the sheet's long work. */
export function startWorker(): Worker {
  return new Worker(trustedScript(source), { type: "module" });
}
