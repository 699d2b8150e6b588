import type { System } from "@thirstline/spec/system";
import { trustedScript } from "../model/trustedScript.js";
import source from "./coldMap.worker.ts?worker&url";
import type { MapPoint, MapReply, MapRequest } from "./coldMapMessages.js";

/** Works the map out beside the page. While one is being worked out only the last of those asked for waits. */
export class MapWorker {
  private readonly worker = new Worker(trustedScript(source), { type: "module" });
  private readonly told: (points: readonly MapPoint[]) => void;
  private last = 0;
  private busy = false;
  private waiting: MapRequest | null = null;

  constructor(told: (points: readonly MapPoint[]) => void) {
    this.told = told;
    this.worker.addEventListener("message", ({ data }: MessageEvent<MapReply>) => this.take(data));
  }

  ask(system: System, temperatures: readonly number[]): void {
    this.waiting = { id: ++this.last, system, temperatures };
    if (!this.busy) this.send();
  }

  end(): void {
    this.worker.terminate();
  }

  private send(): void {
    if (this.waiting === null) return;
    this.busy = true;
    this.worker.postMessage(this.waiting);
    this.waiting = null;
  }

  private take({ id, points }: MapReply): void {
    this.busy = false;
    if (id <= this.last) this.told(points);
    this.send();
  }
}
