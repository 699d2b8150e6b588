import type { ReactiveControllerHost } from "lit";
import { AsideController } from "../aside/AsideController.js";
import { trustedScript } from "../model/trustedScript.js";
import source from "./field.worker.ts?worker&url";
import type { Asked, Told } from "./messages.js";

/** Has something of the machine's side worked out for an element beside the page. */
export class FieldController extends AsideController<Asked, Told> {
  constructor(host: ReactiveControllerHost, told: (told: Told, asked: Asked) => void) {
    super(host, () => new Worker(trustedScript(source), { type: "module" }), told);
  }
}
