import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { StoreTrouble } from "../store/StoreTrouble.js";
import type { YardState } from "../store/shelf.js";
import { type KeptYard, keepYard, keptYard, logBefore, writeLog } from "../store/yard.js";
import { LOG, type YardFile } from "./YardFile.js";

/** The yard that is open, and what is kept of it on the device. */
export class YardController implements ReactiveController {
  files: readonly YardFile[] = [];
  state: YardState | null = null;
  /** whether it is the invented one, of which nothing is kept */
  invented = false;
  trouble: StoreTrouble | null = null;
  /** the log before the last entry; null where there is none */
  before: YardFile | null = null;
  private readonly host: ReactiveControllerHost;
  private own: KeptYard | null = null;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {
    if (!this.invented) void this.bringBack();
  }

  /** Takes what is kept on the device, as it stands there now. */
  async bringBack(): Promise<void> {
    const kept = await keptYard();
    this.before = await logBefore();
    this.trouble = typeof kept === "string" ? kept : null;
    if (typeof kept !== "string") this.show(kept);
    else this.host.requestUpdate();
  }

  /** Opens other files in place of those there. */
  async open(name: string, files: readonly YardFile[]): Promise<void> {
    const yard = { state: { revision: (this.own?.state.revision ?? 0) + 1, name, unsaved: 0 }, files };
    this.trouble = await keepYard(yard);
    this.before = null;
    this.show(yard);
  }

  /** Adds files to those there; one of the same path takes the other's place, but the log only where nothing is lost. */
  async add(more: readonly YardFile[]): Promise<void> {
    const paths = new Set(more.map(({ path }) => path));
    const files = [...this.files.filter(({ path }) => !paths.has(path)), ...more];
    const { name = "files", unsaved = 0, revision = 0 } = this.state ?? {};
    const yard = { state: { revision: revision + 1, name, unsaved: paths.has(LOG) ? 0 : unsaved }, files };
    this.trouble = await keepYard(yard);
    this.show(yard);
  }

  /** Looks at the invented yard; the own one stays kept. */
  look(files: readonly YardFile[]): void {
    this.invented = true;
    this.files = files;
    this.state = { revision: 0, name: "the invented yard", unsaved: 0 };
    this.host.requestUpdate();
  }

  /** Puts a log with new rows in the old one's place: on the device first, and here where it is written, or cannot be kept. */
  async write(log: YardFile, rows: number): Promise<StoreTrouble | null> {
    const { state } = this;
    if (state === null) return null;
    const next = { ...state, revision: state.revision + 1, unsaved: state.unsaved + rows };
    const before = this.files.find(({ path }) => path === LOG) ?? null;
    const trouble = this.invented ? null : await writeLog(log, next);
    if (trouble === "changed elsewhere") return trouble;
    this.trouble = trouble;
    this.before = before;
    this.files = [...this.files.filter(({ path }) => path !== LOG), log];
    this.state = next;
    if (!this.invented) this.own = { state: next, files: this.files };
    this.host.requestUpdate();
    return null;
  }

  /** The log stands in a file of its own now. */
  async saved(): Promise<void> {
    const log = this.files.find(({ path }) => path === LOG);
    if (this.state === null || log === undefined || this.state.unsaved === 0) return;
    const next = { ...this.state, revision: this.state.revision + 1, unsaved: 0 };
    if (!this.invented && (await writeLog(log, next)) === "changed elsewhere") return;
    this.state = next;
    if (!this.invented) this.own = { state: next, files: this.files };
    this.host.requestUpdate();
  }

  /** From the invented yard back to the own one. */
  back(): void {
    this.show(this.own);
  }

  async forget(): Promise<void> {
    this.trouble = await keepYard(null);
    this.before = null;
    this.show(null);
  }

  private show(yard: KeptYard | null): void {
    this.own = yard;
    this.invented = false;
    this.files = yard?.files ?? [];
    this.state = yard?.state ?? null;
    this.host.requestUpdate();
  }
}
