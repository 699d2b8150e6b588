/** Steps kept; older ones are forgotten. */
const MOST = 200;
/** Changes of one kind that follow within this time are one step, ms. */
const TOGETHER = 1200;

/** What was, what is and what was undone. */
export class History<State> {
  private past: State[] = [];
  private future: State[] = [];
  private last: { readonly merge: string; readonly at: number } | null = null;

  private now: State;

  constructor(start: State) {
    this.now = start;
  }

  get present(): State {
    return this.now;
  }

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Takes a new state; one that follows at once under the same `merge` takes the place of the step before it. */
  push(next: State, merge: string | null, at: number): void {
    const same = merge !== null && this.last?.merge === merge && at - this.last.at < TOGETHER;
    if (!same) this.past = [...this.past, this.now].slice(-MOST);
    this.last = merge === null ? null : { merge, at };
    this.now = next;
    this.future = [];
  }

  undo(): void {
    const before = this.past.at(-1);
    if (before === undefined) return;
    this.future = [this.now, ...this.future];
    this.past = this.past.slice(0, -1);
    this.now = before;
    this.last = null;
  }

  redo(): void {
    const [after, ...rest] = this.future;
    if (after === undefined) return;
    this.past = [...this.past, this.now];
    this.future = rest;
    this.now = after;
    this.last = null;
  }
}
