import type { ReactiveControllerHost } from "lit";
import { AsideController } from "../aside/AsideController.js";
import { trustedScript } from "../model/trustedScript.js";
import source from "./choose.worker.ts?worker&url";
import type { Asked, Told } from "./messages.js";

/** Has something of choosing worked out for an element beside the page. */
export class ChooseController extends AsideController<Asked, Told> {
  constructor(host: ReactiveControllerHost, told: (told: Told, asked: Asked) => void) {
    super(host, () => new Worker(trustedScript(source), { type: "module" }), told);
  }
}
