import type { System } from "@thirstline/spec/system";
import { carrySpreads } from "../edit/carrySpreads.js";
import { sheetFault } from "../edit/sheetFault.js";
import { type Answers, answersOf } from "./answersOf.js";
import { History } from "./History.js";
import { freeLetter, type Pin } from "./Pin.js";

/**
 * What is on the sheet: the system with its steps to undo, its answers, and the variants set aside. One for the page;
 * every view shows it and asks for changes.
 * @fires changed - after every change of any of it
 */
export class Sheet extends EventTarget {
  /** Why the last change was refused, or "". */
  refusal = "";
  private history: History<System>;
  private present: Answers;
  private set: readonly Pin[] = [];

  /** @throws InputError of the core for a system that has no answer */
  constructor(system: System) {
    super();
    this.present = answersOf(system);
    this.history = new History(system);
  }

  get system(): System {
    return this.history.present;
  }

  get answers(): Answers {
    return this.present;
  }

  get pins(): readonly Pin[] {
    return this.set;
  }

  get canUndo(): boolean {
    return this.history.canUndo;
  }

  get canRedo(): boolean {
    return this.history.canRedo;
  }

  /** Changes the system, keeping the spreads of what stays; see `take`. */
  edit(change: (system: System) => System, merge: string | null): boolean {
    return this.take(carrySpreads(this.system, change(this.system)), merge);
  }

  /** Takes another system where it can be answered; else says why not in `refusal` and leaves everything as it is. */
  take(next: System, merge: string | null = null): boolean {
    const fault = sheetFault(next);
    try {
      if (fault !== null) throw new Error(fault);
      this.present = answersOf(next);
    } catch (error) {
      this.refusal = error instanceof Error ? error.message : "it has no answer";
      this.tell();
      return false;
    }
    this.refusal = "";
    this.history.push(next, merge, performance.now());
    this.tell();
    return true;
  }

  step(way: "undo" | "redo"): void {
    this.history[way]();
    this.present = answersOf(this.system);
    this.refusal = "";
    this.tell();
  }

  pin(): void {
    this.set = [...this.set, { name: freeLetter(this.set), system: this.system, answers: this.answers }];
    this.tell();
  }

  unpin(letter: string): void {
    this.set = this.set.filter(({ name }) => name !== letter);
    this.tell();
  }

  private tell(): void {
    this.dispatchEvent(new Event("changed"));
  }
}
