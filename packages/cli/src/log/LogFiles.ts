/** What writing a log takes of a file system; the process's own, or a test's that fails when it is told to. */
export interface LogFiles {
  /** a file's bytes; null when there is none */
  readonly read: (path: string) => Promise<Uint8Array | null>;
  /** writes a whole file and waits until it is on the disk; its rights are those of another where that exists */
  readonly write: (path: string, bytes: Uint8Array, like: string) => Promise<void>;
  /** puts a file in another's place, all at once */
  readonly rename: (from: string, to: string) => Promise<void>;
  /** removes a file; none is as good */
  readonly remove: (path: string) => Promise<void>;
  /** waits until a folder's names are on the disk */
  readonly syncFolder: (path: string) => Promise<void>;
  /** keeps other writers out until the lock is given back; waits for them a while first */
  readonly lock: (path: string) => Promise<Lock>;
}

/** A lock held. */
interface Lock {
  /** whether it is still held: a process that stood still for long loses it */
  readonly isHeld: () => boolean;
  readonly release: () => Promise<void>;
}
